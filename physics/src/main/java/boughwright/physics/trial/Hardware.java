// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How what holds a bend bears it.
 *
 * @param lines one entry for each guy-line that was tried, in plan order; empty without a pose
 * @param standing what is said of container and root mass
 */
public record Hardware(List<LineHardware> lines, List<HardwareFinding> standing) {
  public Hardware {
    lines = List.copyOf(lines);
    standing = List.copyOf(standing);
  }

  /**
   * Judges the tackle of a trial.
   *
   * @param request what was tried
   * @param result what came of it; with its risk the high end of each pull counts
   */
  public static Hardware of(TrialRequest request, TrialResult result) {
    return new HardwareCheck(request, result).hardware();
  }

  /** All findings, the worst first, lines before the standing. */
  public List<HardwareFinding> findings() {
    return Stream.concat(
            lines.stream().flatMap(line -> line.findings().stream()), standing.stream())
        .sorted(Comparator.comparing(HardwareFinding::level).reversed())
        .toList();
  }
}
