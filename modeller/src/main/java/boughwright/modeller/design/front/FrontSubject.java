// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.design.sight.Ellipsoid;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Wound;
import java.util.List;
import java.util.Objects;

/**
 * What is looked at when a front is judged.
 *
 * @param wood the wood that the cuts leave
 * @param trunk the line from the trunk base to the apex, on wood that is left
 * @param wounds wounds still on the tree
 * @param foliage pads of foliage; none in winter
 */
public record FrontSubject(
    WoodLeft wood, TrunkLine trunk, List<Wound> wounds, List<Ellipsoid> foliage) {
  public FrontSubject {
    Objects.requireNonNull(wood, "wood");
    Objects.requireNonNull(trunk, "trunk");
    wounds = List.copyOf(wounds);
    foliage = List.copyOf(foliage);
    for (int segment : trunk.segments()) {
      if (wood.cutting().isGone(segment)) {
        throw new IllegalArgumentException("the trunk line runs on wood that is cut away");
      }
    }
    for (Wound wound : wounds) {
      if (!wood.cutting().holds(place(wound))) {
        throw new IllegalArgumentException("wound " + wound.id() + " is cut away");
      }
    }
  }

  /** The tree without leaves, with those of its wounds that the cuts leave. */
  public static FrontSubject bare(WoodLeft wood, TrunkLine trunk) {
    List<Wound> left =
        wood.skeleton().tree().wounds().stream()
            .filter(wound -> wood.cutting().holds(place(wound)))
            .toList();
    return new FrontSubject(wood, trunk, left, List.of());
  }

  /** The same tree clothed. */
  public FrontSubject withFoliage(List<Ellipsoid> pads) {
    return new FrontSubject(wood, trunk, wounds, pads);
  }

  private static Spot place(Wound wound) {
    return new Spot(wound.segment(), wound.along());
  }
}
