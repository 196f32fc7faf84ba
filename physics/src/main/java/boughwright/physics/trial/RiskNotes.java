// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Tree;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a risk rests on besides what the pose rests on, in words. */
final class RiskNotes {
  private static final int MOST_NAMES = 6;

  private RiskNotes() {}

  /**
   * The assumptions.
   *
   * @param tree the tree
   * @param state what was ticked on it
   * @param bent indices of the segments that are bent
   * @param lines whether a guy-line pulls
   */
  static List<String> of(Tree tree, WoodState state, List<Integer> bent, boolean lines) {
    List<String> out = new ArrayList<>();
    out.add(
        String.format(
            Locale.ROOT,
            "Calipers are taken to be read within %.1f mm nine times in ten%s (common practice, no"
                + " source).",
            1000 * tree.caliperError().orElse(Tree.USUAL_CALIPER_ERROR),
            lines
                ? String.format(
                    Locale.ROOT,
                    ", lines tied within %.0f mm and anchored within %.0f mm of the plan",
                    1000 * Placement.TIE_ERROR,
                    1000 * Placement.ANCHOR_ERROR)
                : ""));
    List<String> knotty =
        bent.stream()
            .filter(i -> state.features(i).knots().isEmpty() && state.weakening(i) < 1)
            .filter(state::carriesThickBranch)
            .map(i -> state.skeleton().segment(i).id())
            .toList();
    if (!knotty.isEmpty()) {
      out.add(
          "Thick side branches count as some knots on "
              + names(knotty)
              + "; say \"knots\" on a segment where that is wrong.");
    }
    if (!tree.pullTests().isEmpty()) {
      out.add(
          "What pull tests say of this tree's wood is counted for all its limbs: "
              + names(tree.pullTests().stream().map(PullTest::id).toList())
              + ".");
    }
    return out;
  }

  private static String names(List<String> ids) {
    String some = ids.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
    return ids.size() > MOST_NAMES ? some + " and " + (ids.size() - MOST_NAMES) + " more" : some;
  }
}
