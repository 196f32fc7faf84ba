// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.trial.InputShare;
import boughwright.physics.trial.Risk;
import java.util.List;

/** What the doubt about cracking comes from, and what a person can do about it. */
final class ShareText {
  private static final int MOST = 4;

  /** Smaller parts of the doubt are not worth a walk to the bench [1]. */
  private static final double LEAST = 0.03;

  private ShareText() {}

  static void write(TextPage page, Risk risk) {
    List<InputShare> told =
        risk.shares().stream().filter(share -> share.share() >= LEAST).limit(MOST).toList();
    if (told.isEmpty()) {
      return;
    }
    page.heading("What decides most");
    told.forEach(share -> page.point(words(share)));
  }

  private static String words(InputShare share) {
    String part = share.input() + ", " + Shown.fixed(100 * share.share(), 0) + " % of the doubt";
    return share.advice().isBlank() ? part + "." : part + ": " + sentence(share.advice());
  }

  private static String sentence(String advice) {
    return advice.endsWith(".") ? advice : advice + ".";
  }
}
