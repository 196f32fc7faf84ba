// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

/**
 * Places that stand for equal shares of the outline of a shape, lengthwise and across. They are
 * fixed to the shape and the same on both its sides. Scratch.
 */
final class OutlinePlaces {
  private static final int MOST_ACROSS = 6;
  private static final int LEAST_ACROSS = 2;
  private static final int LEAST_ALONG = 3;
  private static final int MOST_ALONG = 48;
  private static final int PAD_RINGS = 4;

  /** How far rows are shifted against each other, so that edges do not meet many places at once. */
  private static final double SHIFT = (Math.sqrt(5) - 1) / 2;

  private final Sight sight;

  /** Shape: one per piece; places along it. */
  private final int[] along;

  /** Shape: one per piece; rows of places side by side. */
  private final int[] across;

  private final double[] x;
  private final double[] y;
  private final double[] weight;
  private final double size;
  private int count;

  OutlinePlaces(Sight sight, int fineness) {
    this.sight = sight;
    Shapes shapes = sight.shapes;
    along = new int[shapes.pieces];
    across = new int[shapes.pieces];
    size = size(shapes);
    int most = 1;
    for (int i = 0; i < along.length; i++) {
      double asked = Math.rint(fineness * length(shapes, i) / size);
      along[i] = (int) Math.max(LEAST_ALONG, Math.min(MOST_ALONG, asked));
      double wide = Math.rint(2 * fineness * thickness(shapes, i) / size);
      across[i] = (int) Math.max(LEAST_ACROSS, Math.min(MOST_ACROSS, wide));
      most = Math.max(most, along[i]);
    }
    int room = Math.max(MOST_ACROSS * most, 3 * PAD_RINGS * (PAD_RINGS + 1));
    x = new double[room];
    y = new double[room];
    weight = new double[room];
  }

  private static double length(Shapes shapes, int i) {
    double[] wood = shapes.wood;
    int at = Shapes.PIECE * i;
    return Math.sqrt(
        wood[at + 3] * wood[at + 3] + wood[at + 4] * wood[at + 4] + wood[at + 5] * wood[at + 5]);
  }

  private static double thickness(Shapes shapes, int i) {
    int at = Shapes.PIECE * i;
    return 2 * shapes.wood[at + 6] + shapes.wood[at + 7];
  }

  /** Twice the largest distance of an end from the mean of all ends [m]. */
  private static double size(Shapes shapes) {
    double[] mean = new double[3];
    for (int i = 0; i < shapes.pieces; i++) {
      for (int k = 0; k < 3; k++) {
        double start = shapes.wood[Shapes.PIECE * i + k];
        mean[k] += (start + shapes.wood[Shapes.PIECE * i + 3 + k] / 2) / shapes.pieces;
      }
    }
    double far = 0;
    for (int i = 0; i < shapes.pieces; i++) {
      double squared = 0;
      for (int k = 0; k < 3; k++) {
        double end =
            shapes.wood[Shapes.PIECE * i + k] + shapes.wood[Shapes.PIECE * i + 3 + k] - mean[k];
        squared += end * end;
      }
      far = Math.max(far, squared);
    }
    return far > 0 ? 2 * Math.sqrt(far) : 1;
  }

  /** How big all pieces of wood together are [m]. */
  double size() {
    return size;
  }

  int count() {
    return count;
  }

  double x(int k) {
    return x[k];
  }

  double y(int k) {
    return y[k];
  }

  /** The share of the outline a place stands for, in any unit: the same for all of a shape. */
  double weight(int k) {
    return weight[k];
  }

  /** Lays the places of a shape as it is seen now. */
  void lay(int i) {
    count = 0;
    if (i < along.length) {
      layPiece(i);
    } else {
      layPad(i);
    }
  }

  private void layPiece(int i) {
    int at = Sight.SEEN * i;
    double[] seen = sight.seen;
    double length = sight.length(i);
    double start = seen[at + Sight.RADIUS];
    double end = start + seen[at + Sight.GROWTH];
    double alongX = length > 0 ? seen[at + Sight.AXIS_X] / length : 1;
    double alongY = length > 0 ? seen[at + Sight.AXIS_Y] / length : 0;
    double fromX = seen[at + Sight.X];
    double fromY = seen[at + Sight.Y];
    if (length <= Math.abs(end - start)) {
      fromX += end > start ? seen[at + Sight.AXIS_X] : 0;
      fromY += end > start ? seen[at + Sight.AXIS_Y] : 0;
      start = Math.max(start, end);
      end = start;
      length = 0;
    }
    for (int row = 0; row < across[i]; row++) {
      double beside = (2 * row + 1.0) / across[i] - 1;
      double bulge = Math.sqrt(1 - beside * beside);
      double whole = length + (start + end) * bulge;
      double shift = SHIFT * Math.min(row, across[i] - 1 - row) + 0.5;
      shift -= Math.floor(shift);
      for (int k = 0; k < along[i]; k++) {
        double part = (k + shift) / along[i];
        double radius = start + part * (end - start);
        double forward = part * whole - start * bulge;
        double aside = beside * radius;
        x[count] = fromX + forward * alongX - aside * alongY;
        y[count] = fromY + forward * alongY + aside * alongX;
        weight[count++] = whole * radius;
      }
    }
  }

  private void layPad(int i) {
    int at = Sight.SEEN * i;
    double xx = sight.seen[at + Sight.OUTLINE_XX];
    double yy = sight.seen[at + Sight.OUTLINE_YY];
    double determinant =
        1
            / (sight.seen[at + Sight.INVERSE_XX] * sight.seen[at + Sight.INVERSE_YY]
                - sight.seen[at + Sight.INVERSE_XY] * sight.seen[at + Sight.INVERSE_XY]);
    double xy = -sight.seen[at + Sight.INVERSE_XY] * determinant;
    // The square root of the outline's matrix brings the unit disc onto the outline.
    double root = Math.sqrt(determinant);
    double scale = 1 / Math.sqrt(xx + yy + 2 * root);
    for (int ring = 0; ring < PAD_RINGS; ring++) {
      int round = 6 * (ring + 1);
      double radius = (ring + 0.5) / PAD_RINGS;
      for (int k = 0; k < round; k++) {
        double angle = 2 * Math.PI * (k + 0.5) / round;
        double discX = radius * Math.sin(angle);
        double discY = radius * Math.cos(angle);
        x[count] = sight.seen[at + Sight.X] + scale * ((xx + root) * discX + xy * discY);
        y[count] = sight.seen[at + Sight.Y] + scale * (xy * discX + (yy + root) * discY);
        weight[count++] = (2 * ring + 1.0) / round;
      }
    }
  }
}
