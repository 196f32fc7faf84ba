// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Says which azimuths, whose best score is known only nearly, may still change which fronts are
 * picked.
 *
 * @param apart so many steps two picked azimuths differ at least
 * @param doubt how far two scores known nearly may be off from each other [1]
 */
record FrontMayBe(int apart, double doubt) {

  /** The azimuths to be known truly, among those that are not. */
  int[] open(double[] best, boolean[] known) {
    List<FrontPicker.Side> sides = new FrontPicker(best, apart).pick(Fronts.MOST);
    boolean[] open = new boolean[best.length];
    for (int n = 0; n < best.length; n++) {
      if (mayBeTop(n, best) && mayCount(n, best, sides)) {
        openRivals(n, best, open);
      }
    }
    for (int s = 0; s < sides.size(); s++) {
      open[sides.get(s).azimuth()] = true;
      if (!sides.get(s).top()) {
        openRivals(s, sides, best, open);
      }
    }
    return IntStream.range(0, best.length).filter(n -> open[n] && !known[n]).toArray();
  }

  private boolean mayBeTop(int n, double[] best) {
    return IntStream.range(0, best.length)
        .filter(other -> isBeside(n, other, best.length))
        .allMatch(other -> best[other] <= best[n] + doubt);
  }

  /** Tops are picked before all else, so that any counts while not all that are picked are tops. */
  private boolean mayCount(int n, double[] best, List<FrontPicker.Side> sides) {
    return sides.size() < Fronts.MOST
        || sides.stream().anyMatch(side -> !side.top() || best[side.azimuth()] <= best[n] + doubt);
  }

  /** A possible top, and whatever near it may be higher. */
  private void openRivals(int n, double[] best, boolean[] open) {
    for (int other = 0; other < best.length; other++) {
      open[other] |= isBeside(n, other, best.length) && best[other] + doubt >= best[n];
    }
  }

  /** Whatever may be picked instead of a side that is no top. */
  private void openRivals(int s, List<FrontPicker.Side> sides, double[] best, boolean[] open) {
    double score = best[sides.get(s).azimuth()];
    for (int n = 0; n < best.length; n++) {
      int azimuth = n;
      boolean free =
          sides.stream()
              .filter(side -> side.top() || best[side.azimuth()] > score)
              .noneMatch(side -> isBeside(azimuth, side.azimuth(), best.length));
      open[n] |= free && best[n] + doubt >= score;
    }
  }

  private boolean isBeside(int one, int other, int count) {
    int round = Math.floorMod(one - other, count);
    return Math.min(round, count - round) < apart;
  }
}
