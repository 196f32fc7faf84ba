// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.SpanWeight;
import java.util.ArrayList;
import java.util.List;

/** The weight of the tree's own wood and bark, foliage left out. */
final class OwnWeight {
  static final double GREEN_DENSITY = Standing.GREEN_DENSITY;

  private final TreeRods rods;
  private final Timber timber;
  private final Skeleton skeleton;

  OwnWeight(TreeRods rods) {
    this.rods = rods;
    timber = rods.timber();
    skeleton = timber.skeleton();
  }

  /** Weight of what the cuts leave, spread along the spans. */
  List<SpanWeight> left(Vector3 gravity) {
    List<SpanWeight> weights = new ArrayList<>();
    for (int span = 0; span < rods.spans().size(); span++) {
      TreeRods.Run run = rods.run(span);
      int i = run.piece().segment();
      double length = rods.spans().get(span).length();
      double start = timber.barkRadius(i, run.startOnSegment());
      double slope = (timber.barkRadius(i, run.endOnSegment()) - start) / length;
      double scale = GREEN_DENSITY * Math.PI;
      weights.add(
          new SpanWeight(
              span,
              gravity,
              scale * start * start,
              2 * scale * start * slope,
              scale * slope * slope));
    }
    return weights;
  }

  /**
   * What the tree as measured carried: what is left, and what the cuts took, from where it hung.
   */
  RodLoads measured(Vector3 gravity) {
    List<RodLoads.DeadForce> taken = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      double from = timber.isGone(i) ? 0 : timber.end(i);
      double to = skeleton.length(i);
      if (to - from > 1e-9) {
        taken.add(lost(i, from, to, gravity));
      }
    }
    return new RodLoads(taken, List.of(), left(gravity), List.of());
  }

  private RodLoads.DeadForce lost(int i, double from, double to, Vector3 gravity) {
    double a = timber.barkRadius(i, from);
    double b = timber.barkRadius(i, to);
    double sum = a * a + a * b + b * b;
    double mass = GREEN_DENSITY * Math.PI * (to - from) * sum / 3;
    double centre = from + (to - from) * (a * a + 2 * a * b + 3 * b * b) / (4 * sum);
    int carrier = i;
    while (timber.isGone(carrier)) {
      carrier = skeleton.parent(carrier);
    }
    double end = timber.end(carrier);
    Point3 at = skeleton.start(carrier).plus(skeleton.direction(carrier).times(end));
    Point3 heavy = skeleton.start(i).plus(skeleton.direction(i).times(centre));
    return new RodLoads.DeadForce(rods.place(carrier, end, heavy.minus(at)), gravity.times(mass));
  }
}
