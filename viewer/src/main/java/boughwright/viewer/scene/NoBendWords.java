// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.apex.NoBend;
import boughwright.physics.reach.Reason;

/** Why no bend helps a leader, in plain words. */
public final class NoBendWords {
  private NoBendWords() {}

  /** The main reason, said once, without counts. */
  public static String of(NoBend noBend) {
    if (!noBend.why().kind().equals("no-line")) {
      return noBend.why().found();
    }
    return noBend
        .mainly()
        .map(
            main ->
                "from nowhere could a line pull the tip there; "
                    + (main.most() ? "most " : "many ")
                    + words(main.reason()))
        .orElse("there is nothing to tie a line to");
  }

  private static String words(Reason reason) {
    return switch (reason) {
      case NOT_STIFF -> "anchors would give way";
      case TOO_SHORT -> "anchors are too near for a line";
      case TOO_LONG -> "anchors are too far away for a line";
      case BLOCKED -> "lines would run into other wood";
      case BLOCKED_BENT -> "lines would run into other wood once it is bent";
      case WRONG_WAY -> "lines would pull the wrong way";
      case SLIDES -> "lines would slide along it";
      case NO_POSE -> "lines would snap it over first";
      case TOO_RISKY -> "lines would bring it near breaking first";
    };
  }
}
