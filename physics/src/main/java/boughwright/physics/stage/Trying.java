// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.HeldBy;
import boughwright.physics.trial.LetGo;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.Verdicts;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The one way to try a plan, so that whoever asks for the same gets the same numbers.
 *
 * @param draws how the risk is drawn; empty for none
 * @param said the day and what was said of the tree
 * @param asked what is asked of the course; empty for none
 */
public record Trying(Optional<Draws> draws, Said said, Optional<CourseOptions> asked) {

  /**
   * How many draws, from which seed.
   *
   * @param samples number of draws
   * @param seed seed
   */
  public record Draws(int samples, long seed) {
    /** When nothing is said. */
    public static final Draws USUAL = new Draws(4_000, 1);
  }

  /** Told what is going on; any thread may call. */
  public interface Watch {
    /** What is done now. */
    void now(String what);

    /**
     * How much of it is done.
     *
     * @param done 0 to 1 [1]
     */
    void part(double done);
  }

  /**
   * A plan that was tried in full.
   *
   * @param request what was tried
   * @param trial what the wood does
   * @param letGo what stays when it is let go at once, if that was looked at
   * @param heldBy by what it is made and held
   * @param course what becomes of it over time, where that was asked for
   */
  public record Tried(
      TrialRequest request,
      TrialResult trial,
      Optional<LetGo> letGo,
      HeldBy heldBy,
      Optional<Course> course) {
    public Tried {
      Objects.requireNonNull(request, "request");
      Objects.requireNonNull(trial, "trial");
      Objects.requireNonNull(letGo, "letGo");
      Objects.requireNonNull(heldBy, "heldBy");
      Objects.requireNonNull(course, "course");
    }
  }

  public Trying {
    Objects.requireNonNull(draws, "draws");
    Objects.requireNonNull(said, "said");
    Objects.requireNonNull(asked, "asked");
  }

  /** The usual draws and the usual course, begun on a day of which nothing more is said. */
  public static Trying usual(LocalDate on) {
    Said said = Said.only(on);
    return new Trying(
        Optional.of(Draws.USUAL),
        said,
        Optional.of(CourseOptions.USUAL.from(on, said.hemisphere())));
  }

  /**
   * What the wood does, with risk and verdict where draws are wanted.
   *
   * @param name what is tried, such as "plan a"
   */
  public TrialResult judged(TrialRequest request, String name, Watch watch) {
    TrialResult result = drawn(request, name, watch);
    if (result.risk().isEmpty()) {
      return result;
    }
    watch.now("Judging " + name);
    return judged(request, result);
  }

  /** A trial whose risk was drawn, with its verdict. */
  public TrialResult judged(TrialRequest request, TrialResult drawn) {
    return Verdicts.of(request, drawn, said.occasion(request.tree().condition()))
        .map(drawn::withVerdict)
        .orElse(drawn);
  }

  /** What the wood does, with its risk where draws are wanted; without a verdict. */
  public TrialResult drawn(TrialRequest request, String name, Watch watch) {
    watch.now("Trying " + name);
    if (draws.isEmpty()) {
      return Trial.run(request);
    }
    watch.now("Drawing " + name + " " + draws.get().samples() + " times");
    RiskOptions options = new RiskOptions(draws.get().samples(), draws.get().seed(), watch::part);
    return RiskTrial.run(request, options);
  }

  /** The course of a plan that holds, where one is wanted. */
  public Optional<Course> course(TrialRequest request, TrialResult result) {
    boolean bends = result.outcome().holds() && result.peak().isPresent();
    return bends ? asked.map(options -> Courses.of(request, result, options)) : Optional.empty();
  }

  /** What is to be known of a trial besides its risk: what stays, what holds, its course. */
  public Tried rest(TrialRequest request, TrialResult trial, String name, Watch watch) {
    watch.now("Looking at what holds " + name);
    Optional<LetGo> letGo = trial.risk().isPresent() ? LetGo.of(request) : Optional.empty();
    HeldBy means = HeldBy.of(request, trial);
    return new Tried(request, trial, letGo, means, course(request, trial));
  }

  /** Everything that is told of a plan. */
  public Tried whole(TrialRequest request, String name, Watch watch) {
    return rest(request, judged(request, name, watch), name, watch);
  }
}
