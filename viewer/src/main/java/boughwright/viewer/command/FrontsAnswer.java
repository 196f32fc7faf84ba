// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontDoubt;
import boughwright.modeller.design.front.FrontRange;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.front.FrontScore;
import boughwright.modeller.design.front.Fronts;
import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.Plan;
import java.util.Optional;

/**
 * What a look for fronts gave.
 *
 * @param asked what was asked
 * @param found the fronts; empty where one pose was to be explained
 * @param at the pose that was to be explained
 * @param kept what was done with the answer
 */
record FrontsAnswer(Asked asked, Optional<Found> found, Optional<FrontScore> at, Kept kept) {

  /**
   * The tree and by what it is judged.
   *
   * @param file the tree
   * @param plan whose cuts are made
   * @param wishes style, eye and weights, as the person and the file say
   * @param tree what is looked at, and from where
   * @param rules what is wanted of each measure
   * @param range how far it may be tilted
   */
  record Asked(
      TreeFile file,
      Optional<Plan> plan,
      FrontWishes wishes,
      FrontCase tree,
      FrontRules rules,
      FrontRange range) {}

  /** Fronts, and how far measuring tells them apart. */
  record Found(Fronts fronts, FrontDoubt doubt) {
    /** Whether there is a front to choose: some side is better than another. */
    boolean hasChoice() {
      return doubt.tellsSides(fronts);
    }
  }

  /**
   * What was done with the answer.
   *
   * @param choice the front that was kept, counted from 1
   * @param picture the picture of the fronts that was written
   * @param map the picture of the map that was written
   * @param plan the plan that was written into the file
   */
  record Kept(int choice, Optional<String> picture, Optional<String> map, Optional<Plan> plan) {
    static final Kept NOTHING = new Kept(1, Optional.empty(), Optional.empty(), Optional.empty());
  }
}
