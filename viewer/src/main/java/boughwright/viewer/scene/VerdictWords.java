// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.trial.Verdict;

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
}
