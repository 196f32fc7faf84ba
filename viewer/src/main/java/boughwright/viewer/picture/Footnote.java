// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.VisibleText;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words at the foot of a picture: what its numbers rest on. */
final class Footnote {
  /** What the wood is taken as, and how stiff: the first two assumptions of a trial. */
  private static final int SHOWN = 2;

  private Footnote() {}

  private static String sentence(String words) {
    String text = words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    return text.endsWith(".") ? text : text + ".";
  }

  /** One text for each line. */
  static List<String> of(Optional<TrialResult> trial) {
    if (trial.isEmpty()) {
      return List.of("Lengths square to the line of sight are true to the scale bar.");
    }
    return trial.get().assumptions().stream()
        .limit(SHOWN)
        .filter(words -> !words.isBlank())
        .map(VisibleText::of)
        .map(Footnote::sentence)
        .toList();
  }
}
