// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Option;

/** How many leaders are bent, and what is done with one of them. */
final class ApexOptions {
  @Option(
      names = "--leaders",
      paramLabel = "N",
      order = 11,
      description = "Bend so many leaders, the thickest; 6 by default.")
  String leaders;

  @Option(
      names = "--choice",
      paramLabel = "N",
      order = 13,
      description = {
        "Tell this one in full: its risk drawn more often, its line, its stages. The one",
        "that is pictured or kept; 1 then by default."
      })
  String choice;

  @Option(
      names = "--add-to-plan",
      paramLabel = "ID",
      order = 22,
      description = {
        "Keep the choice in the file, in a new plan of that id: cuts, apex and line. The",
        "old file is kept with a ~."
      })
  String addTo;
}
