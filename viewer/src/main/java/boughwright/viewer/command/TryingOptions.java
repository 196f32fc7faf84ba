// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.physics.reach.ReachRequest;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import java.util.Optional;
import picocli.CommandLine.Mixin;

/** Options on how plans are tried: how the risk is drawn, over what time, on which day. */
final class TryingOptions {
  /** Draws for one choice of several when nothing is said: it is tried again when it is kept. */
  private static final int DRAWS_OF_CHOICE = 500;

  @Mixin private Sampling sampling;

  @Mixin private CourseAsked course;

  @Mixin private OccasionOptions occasion;

  /** How the plans of a file are tried. */
  Trying read(Faults faults) {
    Optional<Trying.Draws> draws = sampling.read(faults);
    Said said = occasion.read(faults);
    return new Trying(draws, said, course.read(faults, said));
  }

  /**
   * How choices are sought and tried.
   *
   * @param mostRisk the odds of breaking that neither a line nor a stage may go above [1]
   * @param trying how the one is tried that is told in full
   */
  record Search(double mostRisk, Trying trying) {}

  /** For a verb that looks for lines. */
  Search search(Faults faults) {
    double mostRisk = course.mostRisk(faults, ReachRequest.Wishes.USUAL.mostRisk());
    Optional<Trying.Draws> draws = sampling.read(faults, DRAWS_OF_CHOICE);
    Said said = occasion.read(faults);
    return new Search(mostRisk, new Trying(draws, said, course.read(faults, said, mostRisk)));
  }
}
