// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import boughwright.modeller.plan.Plan;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.Years;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.ReachRequest;
import boughwright.physics.trial.TrialResult;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A leader as the top.
 *
 * @param leader the leader
 * @param plan the plan for it: what makes way is cut, and it is bent where that helps
 * @param state whether it stands over the root base, or can be brought there
 * @param now how its tip stands as measured
 * @param bent the bend; empty where there is none to make, or none that helps
 * @param noBend why no bend brings it nearer, where none does
 * @param wounds what the cuts leave, in the order of the leader's cuts
 * @param thickening until its caliper is a believable part of that below
 * @param best whether no other offer is as good in all respects and better in one
 */
public record ApexOption(
    Leader leader,
    Plan plan,
    State state,
    TipStand now,
    Optional<Bent> bent,
    Optional<NoBend> noBend,
    List<WoundClosure> wounds,
    Years thickening,
    boolean best) {
  /** A radian of lean counts as this part of the height it could stand (a choice) [1]. */
  private static final double ARM = 0.1;

  /** Where the tip can stand, from good to bad. */
  public enum State {
    /** It stands over the root base already. */
    STANDS,
    /** A bend within the risk allowed brings it there. */
    REACHES,
    /** A bend within the risk allowed brings it nearer. */
    NEARER,
    /** No bend brings it nearer. */
    CANNOT
  }

  /**
   * How a leader is bent.
   *
   * @param request what was sought
   * @param choice the lines
   * @param trial what the wood does; with its risk where that was drawn
   * @param then how the tip stands then
   */
  public record Bent(ReachRequest request, Choice choice, TrialResult trial, TipStand then) {
    public Bent {
      Objects.requireNonNull(request, "request");
      Objects.requireNonNull(choice, "choice");
      Objects.requireNonNull(trial, "trial");
      Objects.requireNonNull(then, "then");
    }

    /** The risk of breaking: drawn where it was, else guessed [1]. */
    public double breaking() {
      return trial.risk().map(risk -> risk.breaking().p()).orElse(choice.risk().breaking());
    }

    /** The pull of the line that pulls hardest [N]. */
    public double pull() {
      return trial.lines().stream().mapToDouble(line -> line.tension()).max().orElse(0);
    }
  }

  public ApexOption {
    Objects.requireNonNull(leader, "leader");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(state, "state");
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(bent, "bent");
    Objects.requireNonNull(noBend, "noBend");
    wounds = List.copyOf(wounds);
    Objects.requireNonNull(thickening, "thickening");
  }

  /** How the tip stands in the end. */
  public TipStand then() {
    return bent.map(Bent::then).orElse(now);
  }

  /** How far the tip is from standing over the root base and upright, as a length [m]. */
  double miss() {
    return then().beside() + ARM * leader.couldStand() * then().lean();
  }

  /** The widest wound. */
  public Optional<WoundClosure> widest() {
    return wounds.stream().max(Comparator.comparingDouble(WoundClosure::width));
  }

  /** Until it is thick enough and the widest wound has closed. */
  public Years years() {
    return Years.later(thickening, widest().map(WoundClosure::years).orElse(Years.NONE));
  }

  /** What it costs in each respect, less is better. */
  double[] costs() {
    return new double[] {
      miss(),
      bent.map(Bent::breaking).orElse(0.0),
      leader.takeover().map(step -> -step.ratio()).orElse(-1.0),
      widest().map(WoundClosure::width).orElse(0.0),
      years().likely()
    };
  }

  /** The same leader, bent otherwise; whether it is reached stays as it was ranked. */
  ApexOption with(Bent other) {
    return new ApexOption(
        leader,
        other.choice().plan(),
        state,
        now,
        Optional.of(other),
        noBend,
        wounds,
        thickening,
        best);
  }

  ApexOption with(boolean isBest) {
    return new ApexOption(leader, plan, state, now, bent, noBend, wounds, thickening, isBest);
  }
}
