// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.modeller.plan.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * When what is done, before it is known how it goes.
 *
 * @param stages stages, the first at 0
 * @param release when the person wants it off; empty where that is to be found [s]
 * @param byHand whether hands help at each stage and let go right after
 */
record Timetable(List<Stage> stages, OptionalDouble release, boolean byHand) {
  private static final double WEEK = 7 * 86_400;

  /** Weeks after the last stage at which one looks what is left. */
  private static final List<Integer> LOOKS = List.of(4, 8, 13, 26, 52, 104);

  Timetable {
    stages = List.copyOf(stages);
  }

  double last() {
    return stages.get(stages.size() - 1).after();
  }

  /** Times at which one looks what is left, in order, after the last stage [s]. */
  List<Double> looks() {
    List<Double> times =
        new ArrayList<>(LOOKS.stream().map(weeks -> last() + weeks * WEEK).toList());
    release.ifPresent(times::add);
    return times.stream().distinct().sorted().toList();
  }
}
