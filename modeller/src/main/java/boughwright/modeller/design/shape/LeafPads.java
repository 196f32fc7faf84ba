// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.shape;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PadShape;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a tree wears in leaf: the pads a person gave, or, where there are none, a guess.
 *
 * @param pads the pads that the cuts leave
 * @param guessed whether nobody gave them
 */
public record LeafPads(List<Pad> pads, boolean guessed) {
  /** Share of a limb without side shoots that is in leaf. Common practice, no source. */
  private static final double LEAFY = 0.6;

  /** A pad is at least this many calipers of the tip long. Common practice, no source. */
  private static final double LEAST_CALIPERS = 6;

  /** Length of a pad over the outer end it sits on. Common practice, no source. */
  private static final double LENGTH = 1.5;

  /** Width of a pad over its length. Common practice, no source. */
  private static final double WIDTH = 2 / 3.0;

  /** Thickness of a pad over its length. Common practice, no source. */
  private static final double THICKNESS = 1 / 3.0;

  /** Share of its thickness by which a pad stands above its branch. Common practice, no source. */
  private static final double RAISED = 0.25;

  /** Steeper than this a limb ends in a top, as wide one way as the other. */
  private static final double STEEP = Math.toRadians(60);

  public LeafPads {
    pads = List.copyOf(pads);
  }

  /** What the wood that is left wears. */
  public static LeafPads of(WoodLeft wood) {
    List<Pad> given = wood.skeleton().tree().foliage().pads();
    return given.isEmpty()
        ? new LeafPads(grown(wood), true)
        : new LeafPads(given.stream().filter(pad -> isLeft(wood, pad)).toList(), false);
  }

  private static boolean isLeft(WoodLeft wood, Pad pad) {
    int i = wood.skeleton().indexOf(pad.segment());
    return !wood.cutting().isGone(i) && pad.along() <= wood.cutting().left(i);
  }

  /** A pad for the outer end of every live limb that no cut takes. A guess. */
  public static List<Pad> grown(WoodLeft wood) {
    List<Pad> out = new ArrayList<>();
    for (Limb limb : wood.limbs()) {
      if (isInLeaf(wood, limb)) {
        out.add(pad("f" + (out.size() + 1), wood, limb));
      }
    }
    return out;
  }

  /** Where the pads are on the tree as measured. */
  public List<PadShape> shapes(Skeleton skeleton) {
    return pads.stream().map(pad -> PadShape.of(pad, skeleton)).toList();
  }

  private static boolean isInLeaf(WoodLeft wood, Limb limb) {
    Skeleton skeleton = wood.skeleton();
    Cutting cutting = wood.cutting();
    int last = limb.last();
    Kind kind = skeleton.segment(last).kind();
    boolean whole = cutting.left(last) == 1 && !isStump(cutting, last);
    boolean live = skeleton.segment(last).live().orElse(true);
    return whole && live && kind != Kind.ROOT && kind != Kind.DEADWOOD;
  }

  /** Whether what went on at the end of a segment is cut away. */
  private static boolean isStump(Cutting cutting, int last) {
    Skeleton skeleton = cutting.skeleton();
    return skeleton.children(last).stream()
        .anyMatch(child -> skeleton.segment(child).along() == 1 && cutting.isGone(child));
  }

  private static Pad pad(String id, WoodLeft wood, Limb limb) {
    Skeleton skeleton = wood.skeleton();
    double outer =
        Math.max(outerEnd(wood, limb), LEAST_CALIPERS * skeleton.caliper(limb.last(), 1));
    double length = LENGTH * outer;
    double back = outer / 2;
    int n = limb.segments().size() - 1;
    while (n > 0 && back > skeleton.length(limb.segments().get(n))) {
      back -= skeleton.length(limb.segments().get(n));
      n--;
    }
    int at = limb.segments().get(n);
    double along = Math.max(0, 1 - back / skeleton.length(at));
    boolean top = skeleton.direction(at).z() > Math.sin(STEEP);
    double thickness = (top ? WIDTH : THICKNESS) * length;
    return new Pad(
        id,
        skeleton.segment(at).id(),
        along,
        length,
        WIDTH * length,
        thickness,
        top ? 0 : RAISED * thickness,
        Map.of());
  }

  /** Length of a limb beyond its last side shoot; of one without any, its leafy share [m]. */
  private static double outerEnd(WoodLeft wood, Limb limb) {
    Skeleton skeleton = wood.skeleton();
    double whole = limb.segments().stream().mapToDouble(skeleton::length).sum();
    double bare = whole;
    double passed = 0;
    for (int i : limb.segments()) {
      for (int child : skeleton.children(i)) {
        boolean side = !limb.segments().contains(child) && !wood.cutting().isGone(child);
        if (side && skeleton.segment(child).kind() != Kind.ROOT) {
          bare = whole - passed - skeleton.segment(child).along() * skeleton.length(i);
        }
      }
      passed += skeleton.length(i);
    }
    return Math.min(bare, LEAFY * whole);
  }
}
