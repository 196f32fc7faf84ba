// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the tackle of one guy-line bears its pull.
 *
 * @param line line id
 * @param pull pull it is judged for: the best guess, or the high end where the risk is known [N]
 * @param safeLoad what its strand bears safely; empty where nobody said what it is made of [N]
 * @param breakingLoad load at which that strand breaks [N]
 * @param stretch how much longer its strand is under the pull of the best guess [m]
 * @param turns turns of its tightener; empty where it has none that turns
 * @param padPressure pressure under its pad; empty where the pad has no length yet [Pa]
 * @param padNeeded length of pad that keeps the bark whole [m]
 * @param offSquare angle by which it is off square to the branch in the bent pose [rad]
 * @param findings what to say of it, strand first
 */
public record LineHardware(
    String line,
    double pull,
    OptionalDouble safeLoad,
    OptionalDouble breakingLoad,
    double stretch,
    Optional<Turns> turns,
    OptionalDouble padPressure,
    double padNeeded,
    double offSquare,
    List<HardwareFinding> findings) {

  /**
   * Turns of a tightener.
   *
   * @param in turns in it when it is tied, as the person said [1]
   * @param toAdd turns that bring the line to its length in the trial; less than 0 to slacken [1]
   * @param left turns left after that before its strands lie against each other or their metal
   *     tears; less than 0 when there are not enough; empty for a turnbuckle [1]
   */
  public record Turns(double in, double toAdd, OptionalDouble left) {}

  public LineHardware {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(safeLoad, "safeLoad");
    Objects.requireNonNull(breakingLoad, "breakingLoad");
    Objects.requireNonNull(turns, "turns");
    Objects.requireNonNull(padPressure, "padPressure");
    findings = List.copyOf(findings);
  }
}
