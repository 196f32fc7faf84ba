// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

/** Moves places on a line apart, as little as need be. */
final class Spread {
  private static final int ROUNDS = 200;

  private Spread() {}

  /**
   * The room there is.
   *
   * @param low least place
   * @param high greatest place
   */
  record Room(double low, double high) {}

  /**
   * Places at least so far from each other, in the same order; where there is too little room for
   * that, evenly spread.
   *
   * @param wanted places in rising order
   * @param gap least distance
   */
  static double[] apart(double[] wanted, double gap, Room room) {
    double[] places = wanted.clone();
    double step =
        places.length < 2 ? gap : Math.min(gap, (room.high() - room.low()) / (places.length - 1));
    for (int round = 0; round < ROUNDS; round++) {
      for (int n = 0; n + 1 < places.length; n++) {
        double lack = step - (places[n + 1] - places[n]);
        if (lack > 0) {
          places[n] -= lack / 2;
          places[n + 1] += lack / 2;
        }
      }
      for (int n = 0; n < places.length; n++) {
        double least = room.low() + n * step;
        double most = room.high() - (places.length - 1 - n) * step;
        places[n] = Math.max(least, Math.min(most, places[n]));
      }
    }
    return places;
  }
}
