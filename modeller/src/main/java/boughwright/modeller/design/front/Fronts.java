// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a search for fronts found.
 *
 * @param fronts at most five that differ, the best first; none where no score can be said
 * @param worst the side that scores least, at the planting angle that suits it best
 * @param map the score over azimuth and tilt; within what {@code blur} says of the true one
 * @param blur how far scores of the map may be off, as far as was looked [1]
 * @param looked how many lines of sight were looked along
 */
public record Fronts(List<Front> fronts, FrontScore worst, FrontMap map, double blur, long looked) {
  /** How many fronts are compared. */
  public static final int MOST = 5;

  /**
   * Sides nearer to each other than this are one front: within 10 degrees either way a person turns
   * the tree without calling it another one. Choice, no source [rad].
   */
  public static final double APART = Math.toRadians(20);

  public Fronts {
    fronts = List.copyOf(fronts);
    Objects.requireNonNull(worst, "worst");
    Objects.requireNonNull(map, "map");
  }

  /** How many steps of azimuth two fronts are apart at least. */
  static int apart(FrontGrid grid) {
    return (int) Math.max(1, Math.ceil(APART / grid.azimuthStep() - 1e-9));
  }

  /** Scores and whether each is a top, compared with one another. */
  static List<Front> compared(List<FrontScore> scores, List<Boolean> tops) {
    List<Front> fronts = new ArrayList<>();
    for (int n = 0; n < scores.size(); n++) {
      List<FrontScore> others = new ArrayList<>(scores);
      others.remove(n);
      fronts.add(new Front(scores.get(n), tops.get(n), FrontReason.of(scores.get(n), others)));
    }
    return fronts;
  }
}
