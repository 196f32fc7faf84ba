// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Picks the sides of a tree that are worth comparing from the best score of each azimuth.
 *
 * <p>A side that beats everything near it is picked before one that only lies on the way up to a
 * better side: a person who is shown the same front five times, a little turned, compares nothing.
 */
final class FrontPicker {
  private final double[] best;
  private final int apart;

  /**
   * @param best the best score of each azimuth, all round at equal steps
   * @param apart so many steps two picked azimuths differ at least
   */
  FrontPicker(double[] best, int apart) {
    this.best = best.clone();
    this.apart = apart;
  }

  /**
   * A picked side.
   *
   * @param azimuth number of the azimuth
   * @param top whether it beats everything nearer than sides differ
   */
  record Side(int azimuth, boolean top) {}

  /** At most so many sides, the best first; of equal ones the one counted first. */
  List<Side> pick(int most) {
    List<Integer> byScore =
        IntStream.range(0, best.length)
            .boxed()
            .sorted(Comparator.comparingDouble((Integer n) -> -best[n]))
            .toList();
    List<Side> sides = new ArrayList<>();
    for (boolean tops : new boolean[] {true, false}) {
      for (int n : byScore) {
        if (sides.size() < most && isTop(n) == tops && isFree(n, sides)) {
          sides.add(new Side(n, tops));
        }
      }
    }
    sides.sort(Comparator.comparingDouble(side -> -best[side.azimuth()]));
    return sides;
  }

  private boolean isFree(int n, List<Side> sides) {
    return sides.stream().noneMatch(side -> steps(n, side.azimuth()) < apart);
  }

  private boolean isTop(int n) {
    return IntStream.range(0, best.length)
        .filter(other -> steps(n, other) < apart)
        .noneMatch(other -> best[other] > best[n]);
  }

  private int steps(int one, int other) {
    int round = Math.floorMod(one - other, best.length);
    return Math.min(round, best.length - round);
  }
}
