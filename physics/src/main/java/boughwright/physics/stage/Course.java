// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.Probability;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A bend from the first pull to the day everything is taken off. Times are counted from the first
 * pull.
 *
 * @param steps what the person does, in order of time; empty where nothing should be begun
 * @param samples what is left over time, in order of time, for a plot
 * @param stays when it stays by itself
 * @param bites when wire, pads and loops that were put on at the first pull begin to bite
 * @param target part of the bend that must stay for that to count as staying [1]
 * @param reached part of the plan's bends that the last stage comes to [1]
 * @param notes what it rests on and what to watch, each a sentence, the most important first
 */
public record Course(
    List<Step> steps,
    List<Sample> samples,
    Span stays,
    Span bites,
    double target,
    double reached,
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
   * @param time when [s]
   * @param part part of the plan's bends that is reached [1]
   * @param pose the pose right after it
   * @param moved how far the end that moves most is from its place as measured [m]
   * @param turns turns in each line's tightener right after it, by line id, for lines that have
   *     one; empty where nothing is drawn in [1]
   * @param tensionsBefore pull left in each line right before, by line id; empty at the first [N]
   * @param odds odds that anything breaks up to here; empty where no risk was asked for
   * @param words what to do, in a sentence or two
   */
  public record Step(
      Act act,
      double time,
      double part,
      TrialResult pose,
      double moved,
      Map<String, Double> turns,
      Map<String, Range> tensionsBefore,
      Optional<Probability> odds,
      String words) {
    public Step {
      Objects.requireNonNull(act, "act");
      Objects.requireNonNull(pose, "pose");
      turns = Map.copyOf(turns);
      tensionsBefore = Map.copyOf(tensionsBefore);
      Objects.requireNonNull(odds, "odds");
      Objects.requireNonNull(words, "words");
    }
  }

  /**
   * What is left at one time.
   *
   * @param time when [s]
   * @param sinceLast time since the last stage; below 0 before it [s]
   * @param tensions pull left in each line, by line id [N]
   * @param springback part of the bend held then that would be lost if everything were taken off
   *     and the wood had come to rest [1]
   */
  public record Sample(
      double time, double sinceLast, Map<String, Range> tensions, Range springback) {
    public Sample {
      tensions = Map.copyOf(tensions);
      Objects.requireNonNull(springback, "springback");
    }
  }

  /**
   * When something comes about; an empty time lies beyond the time looked at.
   *
   * @param earliest where all goes fast [s]
   * @param likely best guess [s]
   * @param latest where all goes slowly [s]
   */
  public record Span(OptionalDouble earliest, OptionalDouble likely, OptionalDouble latest) {
    public static final Span NEVER =
        new Span(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    public Span {
      Objects.requireNonNull(earliest, "earliest");
      Objects.requireNonNull(likely, "likely");
      Objects.requireNonNull(latest, "latest");
    }
  }

  public Course {
    steps = List.copyOf(steps);
    samples = List.copyOf(samples);
    Objects.requireNonNull(stays, "stays");
    Objects.requireNonNull(bites, "bites");
    notes = List.copyOf(notes);
  }
}
