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
    return IntStream.range(0, best.length)
        .filter(azimuth -> !known[azimuth])
        .filter(azimuth -> sides.stream().anyMatch(side -> mayReplace(azimuth, side, best, sides)))
        .toArray();
  }

  private boolean mayReplace(
      int azimuth, FrontPicker.Side side, double[] best, List<FrontPicker.Side> sides) {
    if (azimuth == side.azimuth()) {
      return true;
    }
    boolean asGood = best[azimuth] + doubt >= best[side.azimuth()];
    boolean beside = steps(azimuth, side.azimuth(), best.length) < apart;
    boolean free =
        sides.stream().allMatch(other -> steps(azimuth, other.azimuth(), best.length) >= apart);
    return asGood && (beside || mayBeTop(azimuth, best) || free && !side.top());
  }

  private boolean mayBeTop(int azimuth, double[] best) {
    return IntStream.range(0, best.length)
        .filter(other -> steps(azimuth, other, best.length) < apart)
        .allMatch(other -> best[other] <= best[azimuth] + doubt);
  }

  private static int steps(int one, int other, int count) {
    int round = Math.floorMod(one - other, count);
    return Math.min(round, count - round);
  }
}
