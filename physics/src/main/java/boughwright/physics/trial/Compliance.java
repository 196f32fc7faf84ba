// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Skeleton;

/**
 * How far places give way to a small force: the sum of distance squared over bending stiffness
 * along the wood that carries the place (Castigliano; Gere and Timoshenko, Mechanics of Materials;
 * from memory).
 */
final class Compliance {
  /** Pieces that a stretch of a segment is summed over. */
  private static final int PIECES = 8;

  private Compliance() {}

  /** Sideways movement per force at a place of a segment [m/N]. */
  static double of(TreeRods rods, int segment, double s) {
    Skeleton skeleton = rods.timber().skeleton();
    Point3 force = skeleton.point(segment, s / skeleton.length(segment));
    double sum = 0;
    int span = rods.isRigid(segment, s) ? rods.spanOfBody(segment, s) : rods.spanAt(segment, s);
    double to =
        span < 0 ? 0 : rods.isRigid(segment, s) ? length(rods, span) : rods.run(span).toSpan(s);
    while (span >= 0) {
      sum += along(rods, span, to, force);
      span = rods.spans().get(span).parent();
      to = span < 0 ? 0 : length(rods, span);
    }
    return sum;
  }

  private static double length(TreeRods rods, int span) {
    return rods.spans().get(span).length();
  }

  private static double along(TreeRods rods, int span, double to, Point3 force) {
    TreeRods.Run run = rods.run(span);
    Timber timber = rods.timber();
    Skeleton skeleton = timber.skeleton();
    int i = run.piece().segment();
    double sum = 0;
    for (int k = 0; k < PIECES; k++) {
      double s = run.toSegment(to * (k + 0.5) / PIECES);
      double arm = skeleton.point(i, s / skeleton.length(i)).distance(force);
      double radius = timber.woodRadius(i, s);
      double stiffness = timber.wood(i).moe() * Math.PI / 4 * Math.pow(radius, 4);
      sum += to / PIECES * arm * arm / stiffness;
    }
    return sum;
  }
}
