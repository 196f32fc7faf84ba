// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import java.util.Arrays;

/**
 * The tightest outline without hollows round shapes in the picture, by how far the shapes reach to
 * many sides. Scratch.
 *
 * <p>A coarse round finds the shapes that reach farthest anywhere, a fine one measures with those
 * alone. The polygon of straight edges laid against them changes evenly as they move; it is larger
 * than the outline by less than a twelfth of the angle between sides times each edge squared.
 */
final class Outline {
  private static final int SIDES = 1024;
  private static final int COARSE_STEP = 16;
  private static final double BETWEEN = 2 * Math.PI / SIDES;
  private static final double[] COSINE = new double[SIDES];
  private static final double[] SINE = new double[SIDES];

  static {
    for (int k = 0; k < SIDES; k++) {
      COSINE[k] = Math.cos(BETWEEN * k);
      SINE[k] = Math.sin(BETWEEN * k);
    }
  }

  private final Sight sight;
  private final boolean[] outer;
  private final int[] shapes;
  private final double[] reach = new double[SIDES];

  Outline(Sight sight) {
    this.sight = sight;
    outer = new boolean[sight.shapes.count];
    shapes = new int[outer.length];
  }

  /** Area of the outline round the shapes that are counted [m2]. */
  double area(boolean[] counted) {
    int count = findOuter(counted);
    if (count == 0) {
      return 0;
    }
    for (int k = 0; k < SIDES; k++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int n = 0; n < count; n++) {
        most = Math.max(most, reach(shapes[n], COSINE[k], SINE[k]));
      }
      reach[k] = most;
    }
    double sum = 0;
    double before = reach[SIDES - 1];
    for (int k = 0; k < SIDES; k++) {
      double after = reach[k + 1 < SIDES ? k + 1 : 0];
      // Twice the triangle from the origin to the edge, over the sine of the angle between sides.
      sum += reach[k] * (before + after - 2 * reach[k] * COSINE[1]);
      before = reach[k];
    }
    return sum / (2 * SINE[1]);
  }

  private int findOuter(boolean[] counted) {
    Arrays.fill(outer, false);
    int count = 0;
    for (int k = 0; k < SIDES; k += COARSE_STEP) {
      int best = -1;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < outer.length; i++) {
        double far = counted[i] ? reach(i, COSINE[k], SINE[k]) : Double.NEGATIVE_INFINITY;
        if (far > most) {
          most = far;
          best = i;
        }
      }
      if (best >= 0 && !outer[best]) {
        outer[best] = true;
        shapes[count++] = best;
      }
    }
    return count;
  }

  private double reach(int i, double cosine, double sine) {
    double[] seen = sight.seen;
    int at = Sight.SEEN * i;
    double middle = seen[at + Sight.X] * cosine + seen[at + Sight.Y] * sine;
    if (i >= sight.shapes.pieces) {
      return middle + Math.sqrt(padSquared(seen, at, cosine, sine));
    }
    double radius = seen[at + Sight.RADIUS];
    double end =
        seen[at + Sight.AXIS_X] * cosine
            + seen[at + Sight.AXIS_Y] * sine
            + radius
            + seen[at + Sight.GROWTH];
    return middle + Math.max(sight.shapes.inSoil[i] ? levelReach(radius, sine) : radius, end);
  }

  /** How far a level disc reaches: where wood goes into the soil it has no round end. */
  private double levelReach(double radius, double sine) {
    double steep = sine * sight.height(0, 1, 0);
    return radius * Math.sqrt(Math.max(0, 1 - steep * steep));
  }

  private static double padSquared(double[] seen, int at, double cosine, double sine) {
    double xy =
        -seen[at + Sight.INVERSE_XY]
            / (seen[at + Sight.INVERSE_XX] * seen[at + Sight.INVERSE_YY]
                - seen[at + Sight.INVERSE_XY] * seen[at + Sight.INVERSE_XY]);
    return seen[at + Sight.OUTLINE_XX] * cosine * cosine
        + 2 * xy * cosine * sine
        + seen[at + Sight.OUTLINE_YY] * sine * sine;
  }
}
