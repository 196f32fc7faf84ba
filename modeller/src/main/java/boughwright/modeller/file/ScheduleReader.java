// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Stage;
import boughwright.modeller.problem.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads when the bends of a plan are made and let go. */
final class ScheduleReader {
  private static final double DAY = 86_400;

  private final ObjectReader plan;
  private final List<ObjectReader> objects = new ArrayList<>();
  private final List<Stage> stages = new ArrayList<>();

  private ScheduleReader(ObjectReader plan) {
    this.plan = plan;
  }

  /** The schedule of a plan; {@link Schedule#UNSAID} after a fault. */
  static Schedule schedule(ObjectReader plan) {
    ScheduleReader reader = new ScheduleReader(plan);
    int faults = plan.problems().faults();
    for (Value.Fields fields : plan.objects("stages", Limits.PARTS)) {
      reader.stage(new ObjectReader(fields, plan.subject() + " stage", plan.problems()));
    }
    OptionalDouble release =
        plan.numbers().optional("release_after_days", Quantity.DAYS, Range.POSITIVE);
    if (plan.problems().faults() == faults) {
      reader.order();
      reader.parts();
      reader.release(release);
    }
    return plan.problems().faults() == faults
        ? new Schedule(reader.stages, release)
        : Schedule.UNSAID;
  }

  private void stage(ObjectReader object) {
    double after = object.numbers().required("after_days", Quantity.DAYS, Range.NOT_NEGATIVE);
    double part = object.numbers().required("part", Quantity.FRACTION, Range.ZERO_TO_ONE);
    Map<String, Object> extras = object.extras();
    if (object.sound()) {
      stages.add(new Stage(after, part, extras));
      objects.add(object);
    }
  }

  private void order() {
    for (int i = 0; i < stages.size(); i++) {
      double after = stages.get(i).after();
      if (i == 0 && after > 0) {
        objects
            .get(i)
            .fault(
                "after_days",
                "stage-order",
                "the first stage is " + days(after) + " after the first bend",
                "Give the first stage after_days 0: days count from the first bend");
      } else if (i > 0 && !(after > stages.get(i - 1).after())) {
        objects
            .get(i)
            .fault(
                "after_days",
                "stage-order",
                "a stage after "
                    + days(after)
                    + " stands behind one after "
                    + days(stages.get(i - 1).after()),
                "Put the stages in the order of time, each later than the one before");
      }
    }
  }

  private void parts() {
    for (int i = 1; i < stages.size(); i++) {
      if (!(stages.get(i).part() > stages.get(i - 1).part())) {
        objects
            .get(i)
            .warn(
                "part",
                "no-further",
                "a stage at part "
                    + Amount.number(stages.get(i).part())
                    + " goes no further than the one before it",
                "Let part rise from stage to stage, up to 1; a smaller one slackens the bend");
      }
    }
    if (!stages.isEmpty() && stages.get(stages.size() - 1).part() < 1) {
      objects
          .get(stages.size() - 1)
          .warn(
              "part",
              "never-whole",
              "the last stage reaches part "
                  + Amount.number(stages.get(stages.size() - 1).part())
                  + " of the bends, never the whole",
              "Give the last stage part 1, or make the bends of the plan smaller");
    }
  }

  private void release(OptionalDouble release) {
    double last = stages.isEmpty() ? 0 : stages.get(stages.size() - 1).after();
    if (release.isPresent() && !(release.getAsDouble() > last)) {
      plan.fault(
          "release_after_days",
          "released-too-early",
          "everything is taken off after "
              + days(release.getAsDouble())
              + ", but the last stage is after "
              + days(last),
          "Let go after the last stage: give more than " + days(last));
    }
  }

  private static String days(double seconds) {
    return Amount.number(seconds / DAY) + " days";
  }
}
