// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Features;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Knots;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.WoodOverride;
import boughwright.physics.trial.TrialRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A level branch clamped at its start, as the program is told of it.
 *
 * @param species key of its wood
 * @param length from clamp to tip [m]
 * @param start caliper at the clamp; no bark [m]
 * @param end caliper at the tip [m]
 * @param knots what the person ticked
 * @param moe modulus a person gives, with a spread of a tenth; empty for the species' [Pa]
 */
record Bench(
    String species, double length, double start, double end, Knots knots, OptionalDouble moe) {

  Species wood() {
    return SpeciesTable.bundled().woodFor(species);
  }

  /** With a weight hung on its tip. */
  TrialRequest weight(double mass) {
    return request(
        new Proposal(
            "p1",
            Optional.empty(),
            List.of(),
            List.of(new HungWeight(new Spot("b", 1), mass, Map.of())),
            List.of(),
            Map.of()));
  }

  /** With a line from its tip to an anchor, tightened. */
  TrialRequest line(double[] anchor, double shortening) {
    GuyLine line =
        new GuyLine(
            "g",
            new Spot("b", 1),
            OptionalDouble.empty(),
            new Anchor.Fixed(new Point3(anchor[0], 0, anchor[1])),
            new Hold.Shortening(shortening),
            Map.of());
    return request(
        new Proposal("p1", Optional.empty(), List.of(line), List.of(), List.of(), Map.of()));
  }

  private TrialRequest request(Proposal proposal) {
    Plan plan = new PlanDraft("a").proposals(List.of(proposal)).build();
    return TrialRequest.of(tree(), plan, wood());
  }

  private Tree tree() {
    Features features =
        new Features(
            OptionalDouble.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(knots),
            Optional.empty(),
            false);
    Segment branch =
        new Segment(
            "b",
            Optional.empty(),
            1,
            Optional.empty(),
            Kind.TRUNK,
            Optional.of(Point3.ORIGIN),
            new Point3(length, 0, 0),
            start,
            end,
            OptionalDouble.of(0),
            Optional.empty(),
            features,
            Map.of());
    List<WoodOverride> given =
        moe.isEmpty()
            ? List.of()
            : List.of(
                new WoodOverride(
                    "b",
                    moe,
                    OptionalDouble.of(0.1),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Map.of()));
    return new TreeDraft("bench", new TreeWood.OfSpecies(species), List.of(branch))
        .unions(Unions.AXIS)
        .overrides(given)
        .build();
  }
}
