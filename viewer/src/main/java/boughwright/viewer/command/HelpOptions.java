// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Option;

/** What the program and every verb of it have: a page of help, a version. */
final class HelpOptions {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      order = 91,
      description = "Show this page.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      order = 92,
      description = "Show the version.")
  private boolean version;
}
