// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Wound;
import java.util.List;
import java.util.Optional;

/**
 * Everything that refers to a place of the tree, with its new address; what is gone is left out.
 */
final class Relocated {
  private final Relocation relocation;

  Relocated(Relocation relocation) {
    this.relocation = relocation;
  }

  void apply(Draft draft) {
    draft.wounds = draft.wounds.stream().flatMap(one -> wound(one).stream()).toList();
    draft.pullTests = draft.pullTests.stream().flatMap(one -> test(one).stream()).toList();
    draft.pads = draft.pads.stream().flatMap(one -> pad(one).stream()).toList();
    draft.plans = draft.plans.stream().map(this::plan).toList();
  }

  private Optional<Wound> wound(Wound old) {
    return relocation
        .spot(new Spot(old.segment(), old.along()))
        .map(
            spot ->
                new Wound(
                    old.id(),
                    spot.segment(),
                    spot.along(),
                    old.round(),
                    old.width(),
                    old.height(),
                    old.seenOn(),
                    old.extras()));
  }

  private Optional<Pad> pad(Pad old) {
    return relocation
        .spot(new Spot(old.segment(), old.along()))
        .map(spot -> old.at(spot.segment(), spot.along()));
  }

  private Optional<PullTest> test(PullTest old) {
    return relocation
        .spot(new Spot(old.segment(), old.along()))
        .map(
            spot ->
                new PullTest(
                    old.id(),
                    spot.segment(),
                    spot.along(),
                    old.direction(),
                    old.readings(),
                    old.doneOn(),
                    old.extras()));
  }

  private Plan plan(Plan old) {
    return new PlanDraft(old)
        .cuts(spots(old.cuts()))
        .apex(old.apex().flatMap(id -> apex(id, old.cuts())))
        .clamp(old.clamp().flatMap(relocation::spot))
        .proposals(old.proposals().stream().flatMap(one -> proposal(one).stream()).toList())
        .build();
  }

  /** The outer end of the segment that was the apex, unless the cuts take that. */
  private Optional<String> apex(String id, List<Spot> cuts) {
    boolean shortened =
        cuts.stream()
            .filter(cut -> cut.segment().equals(id))
            .anyMatch(
                cut -> {
                  Optional<Spot> spot = relocation.spot(cut);
                  return spot.isPresent() && !spot.map(Spot::segment).equals(relocation.outer(id));
                });
    return shortened ? relocation.segment(id) : relocation.outer(id);
  }

  private List<Spot> spots(List<Spot> old) {
    return old.stream().flatMap(spot -> relocation.spot(spot).stream()).toList();
  }

  /** The proposal; empty if nothing is left of it though something was in it. */
  private Optional<Proposal> proposal(Proposal old) {
    Proposal moved =
        new Proposal(
            old.id(),
            old.about().flatMap(relocation::segment),
            old.guyLines().stream().flatMap(one -> line(one).stream()).toList(),
            old.hungWeights().stream().flatMap(one -> weight(one).stream()).toList(),
            old.coils().stream().flatMap(one -> coil(one).stream()).toList(),
            old.handBends().stream().flatMap(one -> hand(one).stream()).toList(),
            old.aids().stream().flatMap(one -> relocation.aid(one).stream()).toList(),
            old.extras());
    boolean emptied = Parts.of(moved) == 0 && Parts.of(old) > 0;
    return emptied ? Optional.empty() : Optional.of(moved);
  }

  private Optional<GuyLine> line(GuyLine old) {
    Optional<Spot> at = relocation.spot(old.at());
    Optional<Anchor> anchor =
        old.anchor() instanceof Anchor.OnTree tie
            ? relocation.spot(tie.spot()).map(Anchor.OnTree::new)
            : Optional.of(old.anchor());
    return at.isPresent() && anchor.isPresent()
        ? Optional.of(old.with(at.get(), anchor.get(), old.hold()))
        : Optional.empty();
  }

  private Optional<HungWeight> weight(HungWeight old) {
    return relocation.spot(old.at()).map(at -> new HungWeight(at, old.mass(), old.extras()));
  }

  private Optional<Coil> coil(Coil old) {
    Optional<Spot> from = relocation.spot(old.from());
    Optional<Spot> to = relocation.spot(old.to());
    return from.isPresent() && to.isPresent()
        ? Optional.of(
            new Coil(
                from.get(),
                to.get(),
                old.metal(),
                old.gauge(),
                old.strands(),
                old.angleToAxis(),
                old.hand(),
                old.extras()))
        : Optional.empty();
  }

  private Optional<HandBend> hand(HandBend old) {
    return relocation
        .spot(old.at())
        .map(at -> new HandBend(old.id(), at, old.direction(), old.move(), old.extras()));
  }
}
