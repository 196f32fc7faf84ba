// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.work;

import boughwright.modeller.problem.VisibleText;

/** How a defect of the program is told. */
public final class Defect {
  private static final String OWN = "boughwright.";

  private Defect() {}

  /** A defect in a line, with its place in the program. */
  public static String words(Throwable e) {
    String message = e.getMessage() == null ? "" : ": " + e.getMessage();
    return VisibleText.of(
        "this is a defect of Boughwright, not of what you did ("
            + e.getClass().getSimpleName()
            + message
            + place(e)
            + "). What you made is still here; please report it");
  }

  private static String place(Throwable e) {
    for (StackTraceElement element : e.getStackTrace()) {
      String name = element.getClassName();
      if (name.startsWith(OWN)) {
        return ", " + name.substring(name.lastIndexOf('.') + 1) + ":" + element.getLineNumber();
      }
    }
    return "";
  }
}
