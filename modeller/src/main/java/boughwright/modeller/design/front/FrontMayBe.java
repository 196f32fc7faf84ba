// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Says which azimuths, whose best score is known only nearly, may still change which fronts are
 * picked.
 *
 * @param apart so many steps two picked azimuths differ at least
 */
record FrontMayBe(int apart) {

  /**
   * What is known of the best score of an azimuth.
   *
   * @param likely as it is known [1]
   * @param least it is no less [1]
   * @param most and no more [1]
   */
  record Range(double likely, double least, double most) {
    /** Whether this may be as good as another. */
    boolean mayBeat(Range other) {
      return other.least <= most;
    }
  }

  /** The azimuths that are picked as it is known now. */
  int[] picked(Range[] best) {
    return sides(best).stream().mapToInt(FrontPicker.Side::azimuth).toArray();
  }

  private List<FrontPicker.Side> sides(Range[] best) {
    return new FrontPicker(Arrays.stream(best).mapToDouble(Range::likely).toArray(), apart)
        .pick(Fronts.MOST);
  }

  /** The azimuths to be known better, known truly or not. */
  int[] open(Range[] best) {
    return new Asked(best).open();
  }

  /** One question. */
  private final class Asked {
    private final Range[] best;
    private final List<FrontPicker.Side> sides;
    private final boolean[] open;

    Asked(Range[] best) {
      this.best = best;
      sides = sides(best);
      open = new boolean[best.length];
    }

    int[] open() {
      for (int n = 0; n < best.length; n++) {
        if (mayBeTop(n) && mayCount(n)) {
          openRivals(n);
        }
      }
      for (FrontPicker.Side side : sides) {
        open[side.azimuth()] = true;
        if (!side.top()) {
          openRivalsOf(side);
        }
      }
      return IntStream.range(0, best.length).filter(n -> open[n]).toArray();
    }

    private boolean mayBeTop(int n) {
      return IntStream.range(0, best.length)
          .filter(other -> isBeside(n, other))
          .allMatch(other -> best[n].mayBeat(best[other]));
    }

    /**
     * Tops are picked before all else, so that any counts while not all that are picked are tops.
     */
    private boolean mayCount(int n) {
      return sides.size() < Fronts.MOST
          || sides.stream().anyMatch(side -> !side.top() || best[n].mayBeat(best[side.azimuth()]));
    }

    /** A possible top, and whatever near it may be higher. */
    private void openRivals(int n) {
      for (int other = 0; other < best.length; other++) {
        open[other] |= isBeside(n, other) && best[other].mayBeat(best[n]);
      }
    }

    /** Whatever may be picked instead of a side that is no top. */
    private void openRivalsOf(FrontPicker.Side asked) {
      double score = best[asked.azimuth()].likely;
      for (int n = 0; n < best.length; n++) {
        int azimuth = n;
        boolean free =
            sides.stream()
                .filter(side -> side.top() || best[side.azimuth()].likely > score)
                .noneMatch(side -> isBeside(azimuth, side.azimuth()));
        open[n] |= free && best[n].mayBeat(best[asked.azimuth()]);
      }
    }

    private boolean isBeside(int one, int other) {
      int round = Math.floorMod(one - other, best.length);
      return Math.min(round, best.length - round) < apart;
    }
  }
}
