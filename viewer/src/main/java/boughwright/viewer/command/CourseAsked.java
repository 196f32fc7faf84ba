// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.stage.CourseOptions;
import boughwright.physics.trial.Said;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Options on what is asked of a bend in the course of time. */
final class CourseAsked {
  @Option(
      names = "--most-risk",
      paramLabel = "P",
      order = 30,
      description = "Odds of breaking that no stage may go above, such as 0.05.")
  private String risk;

  @Option(
      names = "--stays",
      paramLabel = "P",
      order = 31,
      description = "Part of the bend that must stay in the end; 0.8 by default.")
  private String stays;

  @Option(
      names = "--repot",
      order = 32,
      description = "The tree is repotted while the bend is held.")
  private boolean repots;

  @Option(
      names = "--no-course",
      order = 33,
      description = "Nothing of stages, waits, and when the bend stays.")
  private boolean none;

  /** What was asked for; empty if no course is wanted. */
  Optional<CourseOptions> read(Faults faults, Said said) {
    if (none && risk != null) {
      fault(faults);
    }
    return read(faults, said, mostRisk(faults, CourseOptions.USUAL_RISK));
  }

  /** The odds of breaking that nothing may go above. */
  double mostRisk(Faults faults, double usual) {
    return part("--most-risk", risk, usual, faults);
  }

  /** The same where the odds count without a course too. */
  Optional<CourseOptions> read(Faults faults, Said said, double most) {
    double kept = part("--stays", stays, CourseOptions.USUAL_TARGET, faults);
    if (none && (stays != null || repots)) {
      fault(faults);
    }
    return none
        ? Optional.empty()
        : Optional.of(
            new CourseOptions(Optional.of(said.on()), said.hemisphere(), most, kept, repots));
  }

  private static void fault(Faults faults) {
    faults.add(
        "--no-course", "no-course", "the rest asks for a course", "Leave one of the two out");
  }

  private static double part(String option, String text, double otherwise, Faults faults) {
    if (text == null) {
      return otherwise;
    }
    OptionValues.Range range =
        new OptionValues.Range(option, 0.001, 0.999, "a part of one, such as 0.05");
    return new OptionValues(faults).number(text, range).orElse(otherwise);
  }
}
