// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.Map;

/** What shortens a guy-line, and how far it has been turned before. */
public sealed interface Tightener {

  /** Whole turns and parts of turns already in [1]. */
  double turnsIn();

  Map<String, Object> extras();

  /**
   * A double strand that is twisted.
   *
   * @param inMiddle true if a stick in the middle of the span puts opposite turns into each half,
   *     false if it is turned at its end
   * @param turnsIn turns of the stick already in, 0 or more [1]
   * @param extras fields of the file that this version does not know
   */
  record Twist(boolean inMiddle, double turnsIn, Map<String, Object> extras) implements Tightener {
    public Twist {
      require(turnsIn);
      extras = Extras.copyOf(extras);
    }
  }

  /**
   * A turnbuckle.
   *
   * @param perTurn how much one turn shortens it, both threads together, more than 0 [m]
   * @param turnsIn turns already in, 0 or more [1]
   * @param extras fields of the file that this version does not know
   */
  record Turnbuckle(double perTurn, double turnsIn, Map<String, Object> extras)
      implements Tightener {
    public Turnbuckle {
      require(turnsIn);
      if (!(perTurn > 0) || Double.isInfinite(perTurn)) {
        throw new IllegalArgumentException("a turn shortens by more than 0, not " + perTurn);
      }
      extras = Extras.copyOf(extras);
    }
  }

  private static void require(double turnsIn) {
    if (!(turnsIn >= 0) || Double.isInfinite(turnsIn)) {
      throw new IllegalArgumentException("turns are 0 or more, not " + turnsIn);
    }
  }
}
