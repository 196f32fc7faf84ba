// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.LineOfSight;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.TreeStand;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether wood stands in the way of lines, as measured and bent. */
final class Sights {
  /** Beyond the bark this much more of a line is not looked at, at both ends [m] (a choice). */
  private static final double AT_ENDS = 0.002;

  /** Pieces that a bent segment is taken as. */
  private static final int PIECES = 2;

  private final TreeStand stand;
  private final Skeleton skeleton;
  private final List<LineOfSight.Limb> measured;

  Sights(TreeStand stand) {
    this.stand = stand;
    skeleton = stand.skeleton();
    measured =
        LineOfSight.limbs(stand.cutting()).stream()
            .filter(limb -> Math.max(limb.fromRadius(), limb.toRadius()) >= LineLimits.TWIG / 2)
            .toList();
  }

  /** What counts as wood in the measured pose. */
  List<LineOfSight.Limb> measured() {
    return measured;
  }

  /** Whether wood stands in the way in the measured pose. */
  boolean isBlocked(TiePlace place, AnchorPlace anchor) {
    Spot spot = place.spot();
    Point3 from = skeleton.point(skeleton.indexOf(spot.segment()), spot.along());
    return isBlocked(measured, sight(place, anchor, from, anchor.at()));
  }

  /** Whether wood stands in the way of any of the lines of a pose. */
  boolean isBlocked(Tried tried) {
    List<LineOfSight.Limb> bent = bent(tried.stood());
    return tried.ties().stream()
        .anyMatch(
            tie ->
                isBlocked(
                    bent,
                    sight(
                        tie.place(),
                        tie.anchor(),
                        tried.stood().point(tie.place().spot()),
                        Probe.anchorIn(tried.stood(), tie.anchor()))));
  }

  private static boolean isBlocked(List<LineOfSight.Limb> limbs, LineOfSight.Sight sight) {
    return LineOfSight.deepest(limbs, sight).isPresent();
  }

  private LineOfSight.Sight sight(TiePlace place, AnchorPlace anchor, Point3 from, Point3 to) {
    Set<String> leftOut = new HashSet<>();
    double clearFrom = leaveOut(place.spot(), leftOut);
    double clearTo = 0;
    if (anchor.anchor() instanceof Anchor.OnTree tree) {
      clearTo = leaveOut(tree.spot(), leftOut);
    }
    return new LineOfSight.Sight(from, to, leftOut, clearFrom, clearTo);
  }

  /** Leaves out the segment of an end; what goes on from it is cleared by the length given back. */
  private double leaveOut(Spot spot, Set<String> leftOut) {
    leftOut.add(spot.segment());
    int i = skeleton.indexOf(spot.segment());
    double away = skeleton.length(i) * Math.min(spot.along(), 1 - spot.along());
    double radius = skeleton.caliper(i, spot.along()) / 2;
    if (away < 2 * radius) {
      int parent = skeleton.parent(i);
      if (spot.along() < 0.5 && parent != Skeleton.NONE) {
        leftOut.add(skeleton.segment(parent).id());
      }
      if (spot.along() > 0.5) {
        skeleton.children(i).stream()
            .filter(child -> skeleton.segment(child).along() == 1)
            .forEach(child -> leftOut.add(skeleton.segment(child).id()));
      }
    }
    return radius + AT_ENDS;
  }

  private List<LineOfSight.Limb> bent(TreeStand.Stood stood) {
    List<LineOfSight.Limb> limbs = new ArrayList<>();
    for (LineOfSight.Limb limb : measured) {
      int i = skeleton.indexOf(limb.segment());
      double left = stand.cutting().left(i);
      Point3 from = stood.point(new Spot(limb.segment(), 0));
      for (int k = 1; k <= PIECES; k++) {
        double along = left * k / PIECES;
        Point3 to = stood.point(new Spot(limb.segment(), along));
        double before = left * (k - 1) / PIECES;
        limbs.add(
            new LineOfSight.Limb(
                limb.segment(),
                from,
                to,
                skeleton.caliper(i, before) / 2,
                skeleton.caliper(i, along) / 2));
        from = to;
      }
    }
    return limbs;
  }
}
