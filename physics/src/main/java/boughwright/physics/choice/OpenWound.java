// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.choice;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Wound;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A wound that is open on the tree once a plan is done.
 *
 * @param at where it is, on wood that stays
 * @param isNew whether a cut of the plan makes it
 * @param area of its face [m2]
 * @param closure its width and the years until it is closed
 */
public record OpenWound(Spot at, boolean isNew, double area, WoundClosure closure) {
  public OpenWound {
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(closure, "closure");
    if (!(area > 0)) {
      throw new IllegalArgumentException("a wound of area " + area);
    }
  }

  /**
   * What the cuts leave, square to the wood where it goes on, then what is there already and stays;
   * dead wood has no callus and is left out.
   *
   * @param time when the cuts are made
   */
  static List<OpenWound> all(WoodLeft wood, CutTime time) {
    YearlyRing ring = YearlyRing.of(wood.skeleton().tree().setting());
    List<OpenWound> all = new ArrayList<>();
    for (CutFace face : wood.faces()) {
      WoundClosure closure = WoundClosure.of(face.width(), ring, time);
      all.add(new OpenWound(face.on(), true, face.area(), closure));
    }
    for (Wound wound : wood.skeleton().tree().wounds()) {
      Spot at = new Spot(wound.segment(), wound.along());
      if (wood.cutting().holds(at)) {
        all.add(
            new OpenWound(
                at,
                false,
                Math.PI / 4 * wound.width() * wound.height(),
                WoundClosure.of(wound.width(), ring, CutTime.BEFORE_MIDSUMMER)));
      }
    }
    return all;
  }
}
