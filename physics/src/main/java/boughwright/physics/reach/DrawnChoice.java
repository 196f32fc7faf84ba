// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import java.util.Objects;
import java.util.Optional;

/**
 * A choice whose risk was drawn, and what came of the drawing.
 *
 * @param choice the choice, eased where it risked more than is allowed
 * @param drawn what the drawing gave for it
 * @param risk the drawn risk of breaking [1]
 */
public record DrawnChoice<T>(Choice choice, T drawn, double risk) {
  /** How often a choice is eased whose drawn risk is more than allowed. */
  private static final int EASINGS = 3;

  /** Part of the risk allowed that easing aims at [1]. */
  private static final double EASED_TO = 0.95;

  public DrawnChoice {
    Objects.requireNonNull(choice, "choice");
    Objects.requireNonNull(drawn, "drawn");
  }

  /** A way to draw the risk of a choice. */
  public interface Drawing<T> {
    /**
     * Draws it.
     *
     * @param easing how often the choice was eased before
     */
    T draw(Choice choice, int easing);

    /** The risk of breaking that was drawn [1]. */
    double risk(T drawn);
  }

  /**
   * Draws a choice, and eases and draws it again while it risks more than the request allows. What
   * cannot be eased further is given as it is, with its risk.
   */
  public static <T> DrawnChoice<T> eased(ReachRequest request, Choice choice, Drawing<T> drawing) {
    DrawnChoice<T> one = of(choice, drawing, 0);
    double allowed = request.wishes().mostRisk();
    for (int n = 1; n <= EASINGS && one.risk > allowed; n++) {
      double part = EASED_TO * allowed / one.risk;
      Optional<Choice> less = Reach.eased(request, one.choice, part * one.choice.risk().breaking());
      if (less.isEmpty()) {
        return one;
      }
      one = of(less.get(), drawing, n);
    }
    return one;
  }

  private static <T> DrawnChoice<T> of(Choice choice, Drawing<T> drawing, int easing) {
    T drawn = drawing.draw(choice, easing);
    return new DrawnChoice<>(choice, drawn, drawing.risk(drawn));
  }
}
