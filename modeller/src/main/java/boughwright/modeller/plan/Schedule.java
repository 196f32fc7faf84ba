// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * When a plan's bends are made and let go.
 *
 * @param stages tightenings, the first at 0, each later than the one before; empty for all at once
 * @param release time since the first bend at which everything is taken off, later than the last
 *     stage; empty where the person left it to be worked out [s]
 */
public record Schedule(List<Stage> stages, OptionalDouble release) {
  /** All at once, held until it stays. */
  public static final Schedule UNSAID = new Schedule(List.of(), OptionalDouble.empty());

  public Schedule {
    stages = List.copyOf(stages);
    Objects.requireNonNull(release, "release");
    double last = -1;
    for (Stage stage : stages) {
      if (!(stage.after() > last) || last < 0 && stage.after() > 0) {
        throw new IllegalArgumentException("stages start at 0 and follow each other in time");
      }
      last = stage.after();
    }
    if (release.isPresent() && !(release.getAsDouble() > Math.max(0, last))) {
      throw new IllegalArgumentException("what is held is let go after it is bent");
    }
  }
}
