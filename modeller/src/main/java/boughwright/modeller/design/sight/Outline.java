// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

/**
 * The tightest outline without hollows round shapes in the picture, by how far their ends reach to
 * many sides. Scratch.
 *
 * <p>The polygon of straight edges laid against the ends changes evenly as they move; it is larger
 * than the outline by less than a twelfth of the angle between sides times each edge squared. A
 * coarse round says which ends can be outermost between two of its sides; the fine one asks those
 * alone.
 */
final class Outline {
  private static final int COARSE = 64;
  private static final int FINE = 16;
  private static final int SIDES = COARSE * FINE;
  private static final double[] COSINE = new double[SIDES];
  private static final double[] SINE = new double[SIDES];

  static {
    for (int k = 0; k < SIDES; k++) {
      COSINE[k] = Math.cos(2 * Math.PI * k / SIDES);
      SINE[k] = Math.sin(2 * Math.PI * k / SIDES);
    }
  }

  /** How far the reach of two ends can cross and cross back between coarse sides, in sizes. */
  private static final double BULGE = Math.pow(2 * Math.PI / COARSE, 2) / 8;

  private final Sight sight;

  /** The shapes of the ends that are counted: first those that are round in the picture. */
  private final int[] shape;

  /** How many are round, and how many there are. */
  private int round;

  private int count;

  /** Shape: one per end; its middle in the picture, and its radius where it is round [m]. */
  private final double[] x;

  private final double[] y;
  private final double[] radius;

  /** Shape: for each coarse side one per end [m]. */
  private final double[] coarse;

  /** Shape: one per coarse side; the end that reaches farthest. */
  private final int[] outermost = new int[COARSE];

  /** Shape: one per side [m]. */
  private final double[] reach = new double[SIDES];

  private final int[] between;

  Outline(Sight sight) {
    this.sight = sight;
    shape = new int[2 * sight.shapes.count];
    x = new double[shape.length];
    y = new double[shape.length];
    radius = new double[shape.length];
    between = new int[shape.length];
    coarse = new double[COARSE * shape.length];
  }

  /** Area of the outline round the shapes that are counted [m2]. */
  double area(boolean[] counted) {
    layEnds(counted);
    if (count == 0) {
      return 0;
    }
    double slack = BULGE * layCoarse();
    for (int side = 0; side < COARSE; side++) {
      layFine(side, (side + 1) % COARSE, slack);
    }
    double sum = 0;
    double before = reach[SIDES - 1];
    for (int k = 0; k < SIDES; k++) {
      double after = reach[k + 1 < SIDES ? k + 1 : 0];
      // Twice the triangle from the origin to the edge, times the sine of the angle between sides.
      sum += reach[k] * (before + after - 2 * reach[k] * COSINE[1]);
      before = reach[k];
    }
    return sum / (2 * SINE[1]);
  }

  private void layEnds(boolean[] counted) {
    count = 0;
    for (int i = 0; i < sight.shapes.pieces; i++) {
      if (counted[i]) {
        int at = Sight.SEEN * i;
        add(i, sight.seen[at + Sight.AXIS_X], sight.seen[at + Sight.AXIS_Y], 1);
        if (!sight.shapes.inSoil[i]) {
          add(i, 0, 0, 0);
        }
      }
    }
    round = count;
    for (int i = 0; i < counted.length; i++) {
      if (counted[i] && (i >= sight.shapes.pieces || sight.shapes.inSoil[i])) {
        add(i, 0, 0, 0);
      }
    }
  }

  private void add(int i, double aside, double up, double along) {
    int at = Sight.SEEN * i;
    shape[count] = i;
    x[count] = sight.seen[at + Sight.X] + aside;
    y[count] = sight.seen[at + Sight.Y] + up;
    radius[count++] = sight.seen[at + Sight.RADIUS] + along * sight.seen[at + Sight.GROWTH];
  }

  /** The reach of every end to the coarse sides; gives the size of the whole [m]. */
  private double layCoarse() {
    double size = 0;
    for (int side = 0; side < COARSE; side++) {
      int best = 0;
      for (int n = 0; n < count; n++) {
        double far = reach(n, COSINE[side * FINE], SINE[side * FINE]);
        coarse[side * count + n] = far;
        best = far > coarse[side * count + best] ? n : best;
      }
      outermost[side] = best;
      if (side >= COARSE / 2) {
        int back = side - COARSE / 2;
        double across = coarse[side * count + best] + coarse[back * count + outermost[back]];
        size = Math.max(size, across);
      }
    }
    return size;
  }

  /** The reach to the sides from one coarse side to the next, by the ends that can be outermost. */
  private void layFine(int side, int next, double slack) {
    double least = coarse[side * count + outermost[next]] - slack;
    double leastNext = coarse[next * count + outermost[side]] - slack;
    int found = 0;
    for (int n = 0; n < count; n++) {
      if (coarse[side * count + n] >= least && coarse[next * count + n] >= leastNext) {
        between[found++] = n;
      }
    }
    for (int k = side * FINE; k < (side + 1) * FINE; k++) {
      double most = Double.NEGATIVE_INFINITY;
      for (int n = 0; n < found; n++) {
        most = Math.max(most, reach(between[n], COSINE[k], SINE[k]));
      }
      reach[k] = most;
    }
  }

  private double reach(int end, double cosine, double sine) {
    double middle = x[end] * cosine + y[end] * sine;
    return middle + (end < round ? radius[end] : otherReach(end, cosine, sine));
  }

  private double otherReach(int end, double cosine, double sine) {
    int i = shape[end];
    return i < sight.shapes.pieces
        ? levelReach(radius[end], sine)
        : padReach(sight.seen, Sight.SEEN * i, cosine, sine);
  }

  /** How far a level disc reaches: where wood goes into the soil it has no round end. */
  private double levelReach(double radius, double sine) {
    double steep = sine * sight.height(0, 1, 0);
    return radius * Math.sqrt(Math.max(0, 1 - steep * steep));
  }

  private static double padReach(double[] seen, int at, double cosine, double sine) {
    double xy =
        -seen[at + Sight.INVERSE_XY]
            / (seen[at + Sight.INVERSE_XX] * seen[at + Sight.INVERSE_YY]
                - seen[at + Sight.INVERSE_XY] * seen[at + Sight.INVERSE_XY]);
    return Math.sqrt(
        seen[at + Sight.OUTLINE_XX] * cosine * cosine
            + 2 * xy * cosine * sine
            + seen[at + Sight.OUTLINE_YY] * sine * sine);
  }
}
