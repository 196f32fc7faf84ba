// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

/** How a command ends. */
final class ExitCode {
  static final int DONE = 0;

  /** A defect of the program. */
  static final int DEFECT = 1;

  /** Bad input or usage, which the person can mend. */
  static final int REFUSED = 2;

  private ExitCode() {}
}
