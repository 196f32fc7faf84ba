// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.plan.Standing;
import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.WoodOverride;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The pull at the tip of a plain branch that brings the tip down by a given amount. The pull keeps
 * its direction, straight down, square to the branch at rest.
 *
 * @param branch the branch
 * @param tipDown how far the tip comes down [m]
 * @param tipIn how far it comes toward the start [m]
 * @param force the pull [N]
 * @param trial the trial under that pull; the last one tried if its pose does not hold
 */
public record TipPull(
    PlainBranch branch, double tipDown, double tipIn, double force, TrialResult trial) {
  /** The line that holds the tip in {@link #held}. */
  public static final String LINE = "tip";

  private static final String ID = "branch";

  /** Length of that line over the length of the branch: it turns by less than a thousandth [1]. */
  private static final double FAR = 1000;

  private static final double RELATIVE_ACCURACY = 1e-12;
  private static final int MOST_TRIALS = 100;

  /**
   * Searches the pull.
   *
   * @param branch the branch
   * @param species values for its wood
   * @param tipDown how far the tip is to come down, at most {@link PlainBranch#deepestTip} [m]
   * @throws IllegalArgumentException if the tip cannot come down so far
   */
  public static TipPull of(PlainBranch branch, Species species, double tipDown) {
    if (!(tipDown > 0) || tipDown > branch.deepestTip()) {
      throw new IllegalArgumentException("the tip cannot come down by " + tipDown + " m");
    }
    Search search = new Search(branch, tree(branch, species), species, tipDown);
    double force = search.force();
    TrialResult trial = search.trial(force);
    double in = trial.outcome().holds() ? branch.length() - trial.segments().get(0).end().x() : 0;
    return new TipPull(branch, tipDown, in, force, trial);
  }

  private static Tree tree(PlainBranch branch, Species species) {
    Segment segment =
        new Segment(
            ID,
            Optional.empty(),
            1,
            Optional.empty(),
            Kind.BRANCH,
            Optional.of(Point3.ORIGIN),
            new Point3(branch.length(), 0, 0),
            branch.caliperStart(),
            branch.caliperEnd(),
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of());
    List<WoodOverride> known =
        branch.moe().isEmpty()
            ? List.of()
            : List.of(
                new WoodOverride(
                    ID,
                    branch.moe(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.of("given for this branch"),
                    Map.of()));
    return new TreeDraft("plain branch", new TreeWood.OfSpecies(species.key()), List.of(segment))
        .bark(OptionalDouble.of(branch.bark()))
        .unions(Unions.AXIS)
        .overrides(known)
        .caliperError(branch.caliperError())
        .build();
  }

  /**
   * The same bend with its movement held instead of its pull: by a line straight down from the tip,
   * so long that its direction does not change. Its pull is what the wood answers, line {@value
   * #LINE} of the trial.
   *
   * @param species values for its wood
   */
  public TrialRequest held(Species species) {
    double deep = FAR * branch.length();
    GuyLine line =
        new GuyLine(
            LINE,
            new Spot(ID, 1),
            OptionalDouble.empty(),
            new Anchor.Fixed(new Point3(branch.length() - tipIn, 0, -deep)),
            new Hold.Length(deep - tipDown),
            Map.of());
    Proposal proposal =
        new Proposal("pull", Optional.empty(), List.of(line), List.of(), List.of(), Map.of());
    return TrialRequest.of(tree(branch, species), plan(proposal), species);
  }

  /**
   * The same bend made by hand at its tip.
   *
   * @param species values for its wood
   */
  public TrialRequest byHand(Species species) {
    HandBend hand =
        new HandBend("hand", new Spot(ID, 1), Direction3.UP.opposite(), tipDown, Map.of());
    Proposal proposal =
        new Proposal("pull", Optional.empty(), List.of(), List.of(), List.of(), Map.of())
            .withHandBends(List.of(hand));
    return TrialRequest.of(tree(branch, species), plan(proposal), species);
  }

  private static Plan plan(Proposal proposal) {
    return new PlanDraft("tip").proposals(List.of(proposal)).build();
  }

  /** Tries pulls until the tip is where it should be. */
  private record Search(PlainBranch branch, Tree tree, Species species, double tipDown) {

    double force() {
      double low = 0;
      double high = firstGuess();
      for (int n = 0; n < MOST_TRIALS && missing(high) < 0; n++) {
        low = high;
        high *= 2;
      }
      if (!trial(high).outcome().holds()) {
        return high;
      }
      return new BracketingNthOrderBrentSolver(RELATIVE_ACCURACY, 1e-9 * tipDown, 5)
          .solve(MOST_TRIALS, this::missing, low, high);
    }

    /** The pull of linear beam theory on the thinner end: 3 E I d / l3, with some wood to spare. */
    private double firstGuess() {
      double radius = Math.min(branch.caliperStart(), branch.caliperEnd()) / 2 - branch.bark();
      double stiffness = Math.PI / 4 * Math.pow(radius, 4) * species.trueMoe();
      return 3 * stiffness * tipDown / Math.pow(branch.length(), 3);
    }

    /** How much lower than wanted the tip is; far too low where no pose holds [m]. */
    private double missing(double force) {
      if (force == 0) {
        return -tipDown;
      }
      TrialResult trial = trial(force);
      return trial.outcome().holds()
          ? -trial.segments().get(0).end().z() - tipDown
          : branch.length();
    }

    TrialResult trial(double force) {
      HungWeight weight = new HungWeight(new Spot(ID, 1), force / Standing.GRAVITY, Map.of());
      Proposal proposal =
          new Proposal("pull", Optional.empty(), List.of(), List.of(weight), List.of(), Map.of());
      return Trial.run(TrialRequest.of(tree, plan(proposal), species));
    }
  }
}
