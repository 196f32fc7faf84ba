// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.ArrayList;
import java.util.List;

/**
 * Tries the proposals of a plan in stages: drawn in, let out, drawn in again. Wood that has flowed
 * in one stage remembers it in the next; time between the stages is not counted.
 */
public final class StagedTrial {
  private StagedTrial() {}

  /**
   * Tries the stages one after another.
   *
   * @param request what to try
   * @param parts part of the plan's loads at the end of each stage: 0 is let out (lines as long as
   *     measured, or without tension, weights taken down), 1 is all of them [1]
   * @return a result for each stage, up to the first whose pose does not hold
   */
  public static List<TrialResult> run(TrialRequest request, List<Double> parts) {
    List<HeldTree.Grip> grips = parts.stream().map(part -> new HeldTree.Grip(part, part)).toList();
    List<TrialResult> results = new ArrayList<>();
    HeldTree tree = null;
    for (HeldTree.Grip grip : grips) {
      tree = tree == null ? HeldTree.of(request, grip) : tree.then(0, grip);
      results.add(tree.result());
      if (!tree.holds()) {
        break;
      }
    }
    return results;
  }
}
