// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A bend from the first pull to the day everything is taken off.
 *
 * @param steps what the person does, in order of time
 * @param samples what is left over time, in order of time, for a plot
 * @param staysAfter how long it must be held until it stays by itself; empty where that is not
 *     within the years looked at [s]
 * @param target part of the bend that must stay for that to count as staying [1]
 * @param notes what it rests on and what to watch, each a sentence, the most important first
 */
public record Course(
    List<Step> steps,
    List<Sample> samples,
    Optional<Range> staysAfter,
    double target,
    List<String> notes) {

  /** What a person does at a step. */
  public enum Act {
    /** Bends it for the first time, by lines, by hand, or both. */
    BEND,
    /** Takes the hands off: coils and lines hold. */
    LET_GO,
    /** Draws the lines in further. */
    TIGHTEN,
    /** Looks whether wire bites or a line hangs loose. */
    LOOK,
    /** Takes everything off. */
    RELEASE
  }

  /**
   * One thing a person does.
   *
   * @param act what is done
   * @param time when, since the first bend [s]
   * @param part part of the plan's bends that is reached [1]
   * @param pose the pose right after it; a risk is in it where one was asked for
   * @param moved how far the end that moves most is from its place as measured [m]
   * @param tensionsBefore pull left in each line right before, by line id; empty at the first [N]
   * @param words what to do, in a sentence
   */
  public record Step(
      Act act,
      double time,
      double part,
      TrialResult pose,
      double moved,
      Map<String, Range> tensionsBefore,
      String words) {
    public Step {
      Objects.requireNonNull(act, "act");
      Objects.requireNonNull(pose, "pose");
      tensionsBefore = Map.copyOf(tensionsBefore);
      Objects.requireNonNull(words, "words");
    }
  }

  /**
   * What is left at one time.
   *
   * @param time since the first bend [s]
   * @param tensions pull left in each line, by line id [N]
   * @param springback part of the bend that would be lost if everything were taken off then [1]
   */
  public record Sample(double time, Map<String, Range> tensions, Range springback) {
    public Sample {
      tensions = Map.copyOf(tensions);
      Objects.requireNonNull(springback, "springback");
    }
  }

  public Course {
    steps = List.copyOf(steps);
    samples = List.copyOf(samples);
    Objects.requireNonNull(staysAfter, "staysAfter");
    notes = List.copyOf(notes);
  }
}
