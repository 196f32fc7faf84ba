// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Whether moduli a person gives can be those of wood.
 *
 * <p>Real wood (fibre response) beyond what any material reaches, or stiffer in shear than along
 * the grain, is refused; the straight-line response may stand for other things than wood, and is
 * only questioned.
 */
public final class WoodRules {
  /** Diamond, the stiffest material, has some 1,100 GPa; from memory [Pa]. */
  private static final double STIFFEST = 1_100e9;

  /** Twice the stiffest green wood of the species table, rounded up [Pa]. */
  private static final double STIFF = 30e9;

  /** A seventh of the softest living branches of Cannell and Morgan 1987 (0.7 GPa) [Pa]. */
  private static final double SOFT = 0.1e9;

  /** Moduli are given in GPa: what a person who meant MPa wrote is this many times too large. */
  private static final double MEGA_FOR_GIGA = 1e3;

  private WoodRules() {}

  /**
   * Everything wrong with a pair of moduli.
   *
   * @param moe modulus of elasticity [Pa]; empty when nobody gave it
   * @param shear modulus of rigidity [Pa]; empty when nobody gave it
   * @param response how the wood answers strain
   * @return findings whose fields are {@code moe_GPa} and {@code shear_GPa}
   */
  public static List<Finding> findings(
      OptionalDouble moe, OptionalDouble shear, Response response) {
    List<Finding> findings = new ArrayList<>();
    if (moe.isPresent()) {
      modulus(moe.getAsDouble(), response, findings);
    }
    if (moe.isPresent() && shear.isPresent() && shear.getAsDouble() >= moe.getAsDouble()) {
      String found =
          String.format(
              Locale.ROOT,
              "shear_GPa is %s and moe_GPa %s: wood is some 16 times softer in shear",
              shown(shear.getAsDouble()),
              shown(moe.getAsDouble()));
      findings.add(
          severe(
              response,
              "shear_GPa",
              new Words(
                  "shear-above-moe",
                  found,
                  "Correct the two, or leave shear_GPa out: moe / 16 is taken then")));
    }
    if (moe.isEmpty() && shear.orElse(0) > STIFF && response == Response.FIBRE) {
      findings.add(
          Finding.warning(
              List.of(),
              "shear_GPa",
              new Words(
                  "odd-shear",
                  "shear_GPa is "
                      + shown(shear.getAsDouble())
                      + ", stiffer than wood along the grain",
                  "Write " + shown(shear.getAsDouble() / MEGA_FOR_GIGA) + " if MPa were meant")));
    }
    return findings;
  }

  private static void modulus(double moe, Response response, List<Finding> findings) {
    String found = "moe_GPa is " + shown(moe);
    String remedy =
        moe / MEGA_FOR_GIGA >= SOFT
            ? "Write " + shown(moe / MEGA_FOR_GIGA) + " if MPa were meant, or correct the number"
            : "Green wood has 3 to 16 GPa, a living branch mostly 0.7 to 10; correct the number";
    if (moe > STIFFEST) {
      findings.add(
          severe(
              response,
              "moe_GPa",
              new Words("impossible-moe", found + ", more than any material has", remedy)));
    } else if (moe > STIFF && response == Response.FIBRE) {
      findings.add(odd(found + ", more than any green wood has", remedy));
    } else if (moe < SOFT && response == Response.FIBRE) {
      findings.add(odd(found + ", softer than any living branch measured", remedy));
    }
  }

  private static Finding severe(Response response, String field, Words words) {
    return response == Response.FIBRE
        ? Finding.fault(List.of(), field, words)
        : Finding.warning(List.of(), field, words);
  }

  private static Finding odd(String found, String remedy) {
    return Finding.warning(List.of(), "moe_GPa", new Words("odd-moe", found, remedy));
  }

  private static String shown(double pascals) {
    return Amount.number(pascals / 1e9);
  }
}
