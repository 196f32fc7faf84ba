// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

/**
 * How far shapes hide places of the picture, with soft edges, so that what is seen changes evenly
 * as the tree turns. An edge is as soft to one side as to the other: on the whole nothing is hidden
 * that is not, and where two shapes cross, what one loses the other gains.
 */
final class Cover {
  private final Sight sight;

  /** Width of an edge, in the picture and in depth [m]. */
  private final double width;

  private final double half;

  Cover(Sight sight, double width) {
    this.sight = sight;
    this.width = width;
    half = width / 2;
  }

  /** How far outside a shape it still hides a little [m]. */
  double margin() {
    return half;
  }

  /**
   * How far a shape hides a place of the picture: 0 not at all, 1 wholly [1].
   *
   * @param i the shape
   * @param depth how near to the viewer the place is [m]
   */
  double of(int i, double x, double y, double depth) {
    if (sight.seen[Sight.SEEN * i + Sight.NEAREST] <= depth - half) {
      return 0;
    }
    return i < sight.shapes.pieces ? piece(i, x, y, depth) : pad(i, x, y, depth);
  }

  /**
   * The same for a piece and a place on the piece it goes on from: they share an outline, whose
   * edge must not count as half open.
   */
  double sharp(int i, double x, double y, double depth) {
    double front = sight.front(i, x, y);
    return front == Sight.NOTHING ? 0 : before(i, x, y, front, depth);
  }

  /** How far a place on a shape is above the soil: 1 where soil hides nothing of the shape [1]. */
  double shown(int i, double x, double y, double front) {
    boolean soil = i < sight.shapes.pieces && sight.shapes.inSoil[i];
    return soil ? ramp(sight.top(i, x, y, front)) : 1;
  }

  private double before(int i, double x, double y, double front, double depth) {
    double shown = shown(i, x, y, front);
    return shown == 0 ? 0 : shown * ramp(surface(i, x, y, front) - depth);
  }

  /**
   * How near to the viewer what soil leaves of a shape comes. The soil's edge is soft: what shows
   * of a shape just below it must be as near seen from a little below the level as from a little
   * above.
   */
  double surface(int i, double x, double y, double front) {
    boolean soil = i < sight.shapes.pieces && sight.shapes.inSoil[i];
    return soil ? sight.aboveSoil(x, y, front, half) : front;
  }

  private double piece(int i, double x, double y, double depth) {
    double[] seen = sight.seen;
    int at = Sight.SEEN * i;
    double dx = x - seen[at + Sight.X];
    double dy = y - seen[at + Sight.Y];
    double start = seen[at + Sight.RADIUS];
    double growth = seen[at + Sight.GROWTH];
    double spread = seen[at + Sight.SPREAD];
    double c = start * start - dx * dx - dy * dy;
    double d = start * growth + dx * seen[at + Sight.AXIS_X] + dy * seen[at + Sight.AXIS_Y];
    // The ball whose outline the place is farthest inside of, or least outside.
    double t;
    if (spread > 0) {
      t = d <= 0 ? 0 : d >= spread ? 1 : d / spread;
    } else {
      t = 2 * d > spread ? 1 : 0;
    }
    double inside = c + t * (2 * d - spread * t);
    double radius = start + t * growth;
    if (inside <= -half * (2 * radius + half)) {
      return 0;
    }
    double edge = edge(inside, radius);
    double front = inside >= 0 ? sight.front(i, x, y) : Sight.NOTHING;
    if (front != Sight.NOTHING) {
      return edge * before(i, x, y, front, depth);
    }
    double axis = seen[at + Sight.DEPTH] + t * seen[at + Sight.AXIS_DEPTH];
    double above = sight.shapes.inSoil[i] ? ramp(sight.height(x, y, axis)) : 1;
    return edge * above * ramp(axis - depth);
  }

  /** Part of an edge's width that is covered, for a ball and how far inside of it a place is. */
  private double edge(double inside, double radius) {
    if (radius >= half && inside >= half * (2 * radius - half)) {
      return 1;
    }
    double within = radius - Math.sqrt(Math.max(0, radius * radius - inside));
    double part = 0.5 + within / width;
    // Wood thinner than the edge is wide would hide too much.
    double thin = radius + half;
    return radius >= half ? part : part * 2 * radius * width / (thin * thin);
  }

  /** 0 to 1 over the width of an edge, half at 0. */
  double ramp(double out) {
    return Math.min(1, Math.max(0, 0.5 + out / width));
  }

  private double pad(int i, double x, double y, double depth) {
    double[] seen = sight.seen;
    int at = Sight.SEEN * i;
    double dx = x - seen[at + Sight.X];
    double dy = y - seen[at + Sight.Y];
    double slopeX = seen[at + Sight.INVERSE_XX] * dx + seen[at + Sight.INVERSE_XY] * dy;
    double slopeY = seen[at + Sight.INVERSE_XY] * dx + seen[at + Sight.INVERSE_YY] * dy;
    double inside = 1 - slopeX * dx - slopeY * dy;
    // First order in the distance from the outline, which is all an edge is wide.
    double edge = ramp(inside / (2 * Math.sqrt(slopeX * slopeX + slopeY * slopeY)));
    double front = inside >= 0 ? sight.front(i, x, y) : Sight.NOTHING;
    if (front == Sight.NOTHING) {
      front =
          seen[at + Sight.DEPTH] + seen[at + Sight.SLOPE_X] * dx + seen[at + Sight.SLOPE_Y] * dy;
    }
    return edge * ramp(front - depth);
  }
}
