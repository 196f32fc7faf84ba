// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

/**
 * The tightest outline without hollows round shapes in the picture: a polygon through the points
 * where straight edges touch it, laid against it from many sides.
 */
final class Outline {
  /** Sides an edge is laid against. */
  private static final int SIDES = 128;

  private static final double[] COSINE = new double[SIDES];
  private static final double[] SINE = new double[SIDES];

  static {
    for (int k = 0; k < SIDES; k++) {
      COSINE[k] = Math.cos(2 * Math.PI * (k + 0.5) / SIDES);
      SINE[k] = Math.sin(2 * Math.PI * (k + 0.5) / SIDES);
    }
  }

  private Outline() {}

  /** Area of the outline round the shapes that are counted [m2]. */
  static double area(Sight sight, boolean[] counted) {
    double twice = 0;
    double firstX = 0;
    double firstY = 0;
    double beforeX = 0;
    double beforeY = 0;
    for (int k = 0; k < SIDES; k++) {
      int best = -1;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < counted.length; i++) {
        double reach = counted[i] ? reach(sight, i, COSINE[k], SINE[k]) : most;
        if (reach > most) {
          most = reach;
          best = i;
        }
      }
      if (best < 0) {
        return 0;
      }
      double touchX = touch(sight, best, k, true);
      double touchY = touch(sight, best, k, false);
      if (k == 0) {
        firstX = touchX;
        firstY = touchY;
      } else {
        twice += beforeX * touchY - beforeY * touchX;
      }
      beforeX = touchX;
      beforeY = touchY;
    }
    return (twice + beforeX * firstY - beforeY * firstX) / 2;
  }

  private static double reach(Sight sight, int i, double cosine, double sine) {
    double[] seen = sight.seen;
    int at = Sight.SEEN * i;
    double middle = seen[at + Sight.X] * cosine + seen[at + Sight.Y] * sine;
    if (i >= sight.shapes.pieces) {
      return middle + Math.sqrt(squared(sight, at, cosine, sine));
    }
    double on = axis(seen, at, cosine, sine);
    double start = sight.shapes.inSoil[i] ? levelRadius(sight, at, sine) : seen[at + Sight.RADIUS];
    return middle + Math.max(start, on + seen[at + Sight.RADIUS] + seen[at + Sight.GROWTH]);
  }

  private static double axis(double[] seen, int at, double cosine, double sine) {
    return seen[at + Sight.AXIS_X] * cosine + seen[at + Sight.AXIS_Y] * sine;
  }

  /** How far a level disc reaches: where wood goes into the soil it has no round end. */
  private static double levelRadius(Sight sight, int at, double sine) {
    double steep = sine * sight.height(0, 1, 0);
    return sight.seen[at + Sight.RADIUS] * Math.sqrt(Math.max(0, 1 - steep * steep));
  }

  private static double touch(Sight sight, int i, int k, boolean isX) {
    double[] seen = sight.seen;
    int at = Sight.SEEN * i;
    double cosine = COSINE[k];
    double sine = SINE[k];
    double middle = seen[at + (isX ? Sight.X : Sight.Y)];
    if (i >= sight.shapes.pieces) {
      double xy = outlineXy(sight, at);
      double step =
          isX
              ? seen[at + Sight.OUTLINE_XX] * cosine + xy * sine
              : xy * cosine + seen[at + Sight.OUTLINE_YY] * sine;
      return middle + step / Math.sqrt(squared(sight, at, cosine, sine));
    }
    double end = seen[at + Sight.RADIUS] + seen[at + Sight.GROWTH];
    double on = axis(seen, at, cosine, sine) + end;
    boolean soil = sight.shapes.inSoil[i];
    double start = soil ? levelRadius(sight, at, sine) : seen[at + Sight.RADIUS];
    if (on >= start) {
      return middle + seen[at + (isX ? Sight.AXIS_X : Sight.AXIS_Y)] + end * (isX ? cosine : sine);
    }
    if (!soil) {
      return middle + start * (isX ? cosine : sine);
    }
    double up = sight.height(0, 1, 0);
    double radius = seen[at + Sight.RADIUS];
    double step = isX ? cosine : sine * (1 - up * up);
    return start > 0 ? middle + radius * radius * step / start : middle;
  }

  private static double outlineXy(Sight sight, int at) {
    double[] seen = sight.seen;
    return -seen[at + Sight.INVERSE_XY]
        / (seen[at + Sight.INVERSE_XX] * seen[at + Sight.INVERSE_YY]
            - seen[at + Sight.INVERSE_XY] * seen[at + Sight.INVERSE_XY]);
  }

  private static double squared(Sight sight, int at, double cosine, double sine) {
    return sight.seen[at + Sight.OUTLINE_XX] * cosine * cosine
        + 2 * outlineXy(sight, at) * cosine * sine
        + sight.seen[at + Sight.OUTLINE_YY] * sine * sine;
  }
}
