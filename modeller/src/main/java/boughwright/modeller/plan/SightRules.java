// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.LineOfSight.Block;
import boughwright.modeller.plan.LineOfSight.Limb;
import boughwright.modeller.plan.LineOfSight.Sight;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Skeleton;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Whether a guy-line sees its anchor in the measured pose, and where it would. */
final class SightRules {
  /** Length at each end that is left out, in calipers: pads are bulky. Assumption. */
  private static final double NEIGHBOURHOOD = 2;

  /** Clearance of an anchor that is proposed instead [m]. Assumption. */
  private static final double SPARE = 5e-3;

  private static final double STEP = 0.1;

  private final Cutting cutting;
  private final Skeleton skeleton;
  private final GuyLine line;
  private final List<Limb> limbs;

  SightRules(Cutting cutting, GuyLine line) {
    this.cutting = cutting;
    this.line = line;
    skeleton = cutting.skeleton();
    limbs = LineOfSight.limbs(cutting);
  }

  /** A warning if the straight line from pad to anchor runs through other wood. */
  Optional<Finding> finding(Point3 tie, Point3 anchor) {
    return LineOfSight.deepest(limbs, sight(line.at(), tie, anchor))
        .map(
            block ->
                Finding.warning(
                    List.of(line.id(), block.segment()),
                    line.anchor() instanceof Anchor.Fixed ? "anchor_mm" : "anchor",
                    new Words(
                        "no-line-of-sight",
                        String.format(
                            Locale.ROOT,
                            "the straight line to the anchor runs through \"%s\", %s from the pad"
                                + " and %s deep, as the tree was measured",
                            block.segment(),
                            Amount.millimetres(round(block.part() * tie.distance(anchor))),
                            Amount.millimetres(round(block.depth()))),
                        remedy(block, tie, anchor))));
  }

  private Sight sight(Spot at, Point3 tie, Point3 anchor) {
    Set<String> own = new HashSet<>();
    double clearFrom = neighbourhood(at, own);
    double clearTo =
        line.anchor() instanceof Anchor.OnTree onTree ? neighbourhood(onTree.spot(), own) : 0;
    return new Sight(tie, anchor, own, clearFrom, clearTo);
  }

  /** Notes the segments a place is inside, and gives the length of line that is left out there. */
  private double neighbourhood(Spot spot, Set<String> own) {
    int i = skeleton.indexOf(spot.segment());
    Point3 axis = skeleton.point(i, spot.along());
    own.add(spot.segment());
    for (int j = 0; j < skeleton.size(); j++) {
      if (skeleton.encloses(j, axis, cutting.left(j))) {
        own.add(skeleton.segment(j).id());
      }
    }
    return NEIGHBOURHOOD * skeleton.caliper(i, spot.along());
  }

  private String remedy(Block block, Point3 tie, Point3 anchor) {
    if (line.anchor() instanceof Anchor.Fixed) {
      Optional<Point3> beside = beside(block, tie, anchor);
      if (beside.isPresent()) {
        return "Clear of it is an anchor at "
            + words(beside.get())
            + " mm; or tie the line elsewhere, or lead it past a second branch";
      }
    }
    return place(anchor)
        .map(
            along ->
                String.format(
                    Locale.ROOT,
                    "Clear of it is the line from %s of \"%s\"; or choose another anchor",
                    Amount.number(along),
                    line.at().segment()))
        .orElse("Choose another anchor, or tie the line elsewhere");
  }

  /** The anchor moved aside just so far that the line clears the limb, if that is clear of all. */
  private Optional<Point3> beside(Block block, Point3 tie, Point3 anchor) {
    Vector3 pull = anchor.minus(tie).direction().vector();
    Vector3 away = block.away().minus(pull.times(block.away().dot(pull)));
    if (!(away.norm() > 0) || !(block.part() > 0)) {
      return Optional.empty();
    }
    double step = (block.depth() + SPARE) / block.part();
    Vector3 out = away.direction().vector();
    for (double side : new double[] {1, -1}) {
      double reach = side > 0 ? step : step + 2 * block.away().norm() / block.part();
      Point3 there = rounded(anchor.plus(out.times(side * reach)));
      boolean free =
          LineOfSight.blocks(limbs, sight(line.at(), tie, there)).isEmpty() && !isInWood(there);
      if (free) {
        return Optional.of(there);
      }
    }
    return Optional.empty();
  }

  private boolean isInWood(Point3 point) {
    for (int i = 0; i < skeleton.size(); i++) {
      if (!cutting.isGone(i) && skeleton.encloses(i, point, cutting.left(i))) {
        return true;
      }
    }
    return false;
  }

  /** The nearest place along the same segment, in tenths, from which the line is clear. */
  private Optional<Double> place(Point3 anchor) {
    int i = skeleton.indexOf(line.at().segment());
    double best = Double.NaN;
    for (int k = 1; k * STEP <= cutting.left(i) + 1e-9; k++) {
      double along = Math.min(k * STEP, cutting.left(i));
      Spot spot = new Spot(line.at().segment(), along);
      Point3 tie = LineRules.tie(skeleton, line, along);
      boolean clear = LineOfSight.blocks(limbs, sight(spot, tie, anchor)).isEmpty();
      double off = Math.abs(along - line.at().along());
      if (clear && !(off >= Math.abs(best - line.at().along()))) {
        best = along;
      }
    }
    return Double.isNaN(best) ? Optional.empty() : Optional.of(best);
  }

  private static Point3 rounded(Point3 point) {
    return new Point3(round(point.x()), round(point.y()), round(point.z()));
  }

  private static double round(double metres) {
    return Math.round(metres * 1e3) / 1e3;
  }

  private static String words(Point3 point) {
    return String.format(
        Locale.ROOT, "[%.0f, %.0f, %.0f]", 1e3 * point.x(), 1e3 * point.y(), 1e3 * point.z());
  }
}
