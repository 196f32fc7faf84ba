// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.species.Species;
import boughwright.physics.trial.Verdict;
import java.util.Optional;

/** The answer of a trial as a sentence. */
public final class VerdictWords {
  /** What is said where there is no pose to judge. */
  public static final String NO_POSE = "No pose holds, so there is nothing to judge.";

  private VerdictWords() {}

  /** What to do, such as "Take it slowly, in stages." */
  public static String sentence(Verdict.Level level) {
    return switch (level) {
      case TAKES_IT -> "The wood takes it.";
      case IN_STAGES -> "Take it slowly, in stages.";
      case WITH_PROTECTION -> "Only with protection, and at your risk.";
      case NO -> "No, not like this.";
    };
  }

  /**
   * The sentence, and whose values stand in where the wood has none of its own.
   *
   * @param species the wood the numbers come from; empty for wood of one's own
   */
  public static String line(Verdict.Level level, Optional<Species> species) {
    return sentence(level)
        + species.flatMap(VerdictWords::standIn).map(words -> " " + words).orElse("");
  }

  private static Optional<String> standIn(Species species) {
    return species
        .proxyFor()
        .map(words -> "(" + species.botanicalName() + ": " + words.split(";", 2)[0] + ".)");
  }
}
