// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A trunk with one level branch pulled down by one line, to be judged with a risk made by hand. */
record VerdictCase(String species, Hold hold, Features features, Optional<Boolean> live) {

  static VerdictCase of(Hold hold) {
    return new VerdictCase("carpinus-betulus", hold, Features.NONE, Optional.empty());
  }

  TrialRequest request() {
    List<Segment> segments = new ArrayList<>();
    segments.add(
        new Segment(
            "t1",
            Optional.empty(),
            1,
            Optional.empty(),
            Kind.TRUNK,
            Optional.of(Point3.ORIGIN),
            new Point3(0, 0, 0.2),
            0.05,
            0.04,
            OptionalDouble.empty(),
            Optional.empty(),
            Features.NONE,
            Map.of()));
    segments.add(
        new Segment(
            "b1",
            Optional.of("t1"),
            0.75,
            Optional.empty(),
            Kind.BRANCH,
            Optional.empty(),
            new Point3(0.3, 0, 0.15),
            0.014,
            0.010,
            OptionalDouble.empty(),
            live,
            features,
            Map.of()));
    Tree tree = new TreeDraft("case", new TreeWood.OfSpecies(species), segments).build();
    return TrialRequest.of(tree, plan(), SpeciesTable.bundled().woodFor(species));
  }

  private Plan plan() {
    GuyLine line =
        new GuyLine(
            "g1",
            new Spot("b1", 0.9),
            OptionalDouble.empty(),
            new Anchor.Fixed(new Point3(0.27, 0, -0.05)),
            hold,
            Map.of());
    Proposal proposal =
        new Proposal("p1", Optional.of("b1"), List.of(line), List.of(), List.of(), Map.of());
    return new PlanDraft("a")
        .frontAzimuth(OptionalDouble.of(0))
        .proposals(List.of(proposal))
        .build();
  }

  /** The trial of this case, with a risk put in by hand. */
  static TrialResult withRisk(TrialResult result, Risk risk) {
    return new TrialResult(
        result.plan(),
        result.proposals(),
        result.outcome(),
        result.lines(),
        result.segments(),
        result.peak(),
        result.held(),
        result.error(),
        Optional.of(risk),
        Optional.empty(),
        result.warnings(),
        result.assumptions());
  }

  /** A risk of one crack at the top of the branch by its union. */
  static Risk crack(Probability probability, double demand, Range limit) {
    FailurePlace place = new FailurePlace("b1", 0.09, OptionalDouble.of(0.004), 0, "top");
    return risk(
        List.of(
            new FailureRisk(FailureMode.CRACK, probability, Optional.of(place), demand, limit)));
  }

  static Risk risk(List<FailureRisk> failures) {
    LimitSample limit =
        new LimitSample(
            "b1", 0.09, new Range(0.01, 0.017, 0.03), new Range(0.008, 0.01, 0.013), 0.0025);
    return new Risk(failures, Map.of(), 0, List.of(), List.of(limit), 10_000, 1);
  }
}
