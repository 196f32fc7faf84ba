// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.tree.PullTest;
import boughwright.modeller.units.ForceUnit;
import boughwright.physics.trial.PullAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Units that would make a pull test fit, where the ones it was given in do not. */
final class PullUnits {
  /** A unit is proposed if the test would then lie this near [1 sd]. */
  private static final double NEAR = 2;

  private static final int MOST = 2;
  private static final double GRAVITY = ForceUnit.KILOGRAM_FORCE.toNewtons(1);
  private static final double POUND = ForceUnit.POUND_FORCE.toNewtons(1);
  private static final double OUNCE = POUND / 16;

  private PullUnits() {}

  /**
   * One slip of a unit.
   *
   * @param factor how many times as far as expected the point seems to move for it [1]
   * @param words what to say instead
   */
  private record Slip(double factor, String words) {}

  /**
   * Slips that explain a test, the best first, in words for a remedy; empty if none does.
   *
   * @param given the test as it was given
   * @param misfit how it does not fit
   */
  static String fitting(PullTestReading.Given given, PullAnswer.Misfit misfit) {
    return slips(given).stream()
        .filter(slip -> off(slip, misfit) < NEAR * misfit.spread())
        .sorted(Comparator.comparingDouble(slip -> off(slip, misfit)))
        .limit(MOST)
        .map(Slip::words)
        .collect(Collectors.joining("; "));
  }

  private static double off(Slip slip, PullAnswer.Misfit misfit) {
    return Math.abs(misfit.lnSofter() - Math.log(slip.factor));
  }

  private static List<Slip> slips(PullTestReading.Given given) {
    PullForce force = given.forces().get(0);
    PullTest.Reading reading = given.test().readings().get(0);
    String typed = Shown.plain(force.typed());
    String prefix = force.option().startsWith("--second") ? "--second-" : "--";
    List<Slip> slips = new ArrayList<>();
    if (force.unit() == ForceUnit.NEWTON) {
      slips.add(slip(GRAVITY, typed + " kg on a scale: ", prefix + "scale-kg " + typed));
      slips.add(slip(POUND, typed + " pounds: ", prefix + "scale-kg " + kilograms(force, POUND)));
      slips.add(
          slip(
              GRAVITY / 1000,
              typed + " grams: ",
              prefix + "hung-kg " + kilograms(force, GRAVITY / 1000)));
    } else {
      String option = force.option() + " ";
      slips.add(slip(1 / GRAVITY, typed + " newtons: ", prefix + "force-N " + typed));
      slips.add(slip(POUND / GRAVITY, typed + " pounds: ", option + kilograms(force, POUND)));
      slips.add(slip(OUNCE / GRAVITY, typed + " ounces: ", option + kilograms(force, OUNCE)));
      slips.add(slip(1e-3, typed + " grams: ", option + kilograms(force, GRAVITY / 1000)));
    }
    String moved = Shown.plain(1000 * reading.moved());
    slips.add(slip(1 / 25.4, moved + " inches: ", "--moved-mm " + moved + "in"));
    slips.add(slip(0.1, moved + " centimetres: ", "--moved-mm " + moved + "cm"));
    return slips;
  }

  private static Slip slip(double factor, String was, String say) {
    return new Slip(factor, "for " + was + "say " + say);
  }

  /** What was typed as a count of some unit of force, in kilograms. */
  private static String kilograms(PullForce force, double newtons) {
    return Shown.plain(force.typed() * newtons / GRAVITY);
  }
}
