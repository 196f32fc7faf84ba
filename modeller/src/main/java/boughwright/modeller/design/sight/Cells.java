// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import java.util.Arrays;

/** The picture cut into cells, each with the shapes that may cover a part of it. Scratch. */
final class Cells {
  private static final int MOST_ACROSS = 128;

  private final Sight sight;
  private final double margin;
  private final int across;

  /** Shape: one per cell and one more; where its shapes start in the list. */
  private final int[] starts;

  private int[] list = new int[64];
  private double left;
  private double low;
  private double perWidth;
  private double perHeight;

  /**
   * Makes room.
   *
   * @param margin how far outside a shape it still counts as covering [m]
   */
  Cells(Sight sight, double margin) {
    this.sight = sight;
    this.margin = margin;
    across = Math.min(MOST_ACROSS, 4 + (int) Math.sqrt(2.0 * sight.shapes.count));
    starts = new int[across * across + 1];
  }

  /** Sorts the shapes into cells as they are seen now. */
  void fill() {
    frame();
    Arrays.fill(starts, 0);
    int count = sight.shapes.count;
    for (int i = 0; i < count; i++) {
      int at = Sight.SEEN * i;
      for (int row = row(at, Sight.LOW, -margin); row <= row(at, Sight.HIGH, margin); row++) {
        for (int column = column(at, Sight.LEFT, -margin);
            column <= column(at, Sight.RIGHT, margin);
            column++) {
          starts[row * across + column + 1]++;
        }
      }
    }
    for (int cell = 0; cell < across * across; cell++) {
      starts[cell + 1] += starts[cell];
    }
    int total = starts[across * across];
    if (list.length < total) {
      list = new int[2 * total];
    }
    // Filling moves each start to its cell's end; moving all along by one puts them back.
    for (int i = count - 1; i >= 0; i--) {
      int at = Sight.SEEN * i;
      for (int row = row(at, Sight.LOW, -margin); row <= row(at, Sight.HIGH, margin); row++) {
        for (int column = column(at, Sight.LEFT, -margin);
            column <= column(at, Sight.RIGHT, margin);
            column++) {
          int cell = row * across + column;
          starts[cell + 1]--;
          list[starts[cell + 1]] = i;
        }
      }
    }
    System.arraycopy(starts, 1, starts, 0, across * across);
    starts[across * across] = total;
  }

  private void frame() {
    left = Double.POSITIVE_INFINITY;
    low = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int at = 0; at < sight.seen.length; at += Sight.SEEN) {
      left = Math.min(left, sight.seen[at + Sight.LEFT] - margin);
      right = Math.max(right, sight.seen[at + Sight.RIGHT] + margin);
      low = Math.min(low, sight.seen[at + Sight.LOW] - margin);
      high = Math.max(high, sight.seen[at + Sight.HIGH] + margin);
    }
    perWidth = across / (right - left);
    perHeight = across / (high - low);
  }

  private int row(int at, int edge, double beyond) {
    return bound((sight.seen[at + edge] + beyond - low) * perHeight);
  }

  private int column(int at, int edge, double beyond) {
    return bound((sight.seen[at + edge] + beyond - left) * perWidth);
  }

  private int bound(double place) {
    return Math.max(0, Math.min(across - 1, (int) place));
  }

  /** The cell of a place of the picture. */
  int cell(double x, double y) {
    return bound((y - low) * perHeight) * across + bound((x - left) * perWidth);
  }

  /** Where the shapes of a cell start in the list; they end where the next cell's start. */
  int start(int cell) {
    return starts[cell];
  }

  int shape(int place) {
    return list[place];
  }
}
