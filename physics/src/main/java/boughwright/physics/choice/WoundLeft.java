// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.choice;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Wound;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A wound that is on the tree once a plan is done.
 *
 * @param at where it is
 * @param isNew whether a cut of the plan makes it
 * @param area of its face [m2]
 * @param closure its width and the years until it is closed
 */
public record WoundLeft(Spot at, boolean isNew, double area, WoundClosure closure) {
  public WoundLeft {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(closure, "closure");
    if (!(area > 0)) {
      throw new IllegalArgumentException("a wound of area " + area);
    }
  }

  /**
   * What the cuts of a plan leave, square to the wood, then what is there already and stays; dead
   * wood has no callus and is left out.
   *
   * @param time when the cuts are made
   */
  static List<WoundLeft> all(Skeleton skeleton, Plan plan, CutTime time) {
    Cutting cutting = new Cutting(skeleton, plan.cuts());
    YearlyRing ring = YearlyRing.of(skeleton.tree().setting());
    List<WoundLeft> all = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      if (skeleton.segment(i).kind() != Kind.DEADWOOD && hasFace(cutting, i)) {
        double along = cutting.left(i);
        double width = skeleton.caliper(i, along);
        all.add(
            new WoundLeft(
                new Spot(skeleton.segment(i).id(), along),
                true,
                ellipse(width, width),
                WoundClosure.of(width, ring, time)));
      }
    }
    for (Wound wound : skeleton.tree().wounds()) {
      Spot at = new Spot(wound.segment(), wound.along());
      if (cutting.holds(at)) {
        all.add(
            new WoundLeft(
                at,
                false,
                ellipse(wound.width(), wound.height()),
                WoundClosure.of(wound.width(), ring, CutTime.BEFORE_MIDSUMMER)));
      }
    }
    return all;
  }

  /** Whether a segment itself is cut, not only taken with what it sits on. */
  private static boolean hasFace(Cutting cutting, int i) {
    if (!cutting.isGone(i)) {
      return cutting.left(i) < 1;
    }
    int parent = cutting.skeleton().parent(i);
    if (parent == Skeleton.NONE || cutting.isGone(parent)) {
      return false;
    }
    return cutting.left(parent) == 1
        || cutting.skeleton().segment(i).along() < cutting.left(parent);
  }

  private static double ellipse(double width, double height) {
    return Math.PI / 4 * width * height;
  }
}
