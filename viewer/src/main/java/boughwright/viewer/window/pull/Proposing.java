// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.edit.BendEdits;
import boughwright.modeller.edit.Edit;
import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.edit.ProposalEdits;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Proposal;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts what is pulled into the plan, as a new bend or in place of a line there is. */
final class Proposing {
  private final Workspace workspace;

  Proposing(Workspace workspace) {
    this.workspace = workspace;
  }

  /** A line of the plan that is changed. */
  record Changing(ProposalEdits.Where where, GuyLine line) {
    /** The proposals of the plan, all but the line that is changed. */
    List<Proposal> kept(Plan plan) {
      return plan.proposals().stream()
          .map(one -> one.id().equals(where.proposal()) ? without(one, line) : one)
          .toList();
    }

    private static Proposal without(Proposal from, GuyLine line) {
      return new Proposal(
          from.id(),
          from.about(),
          from.guyLines().stream().filter(one -> !one.id().equals(line.id())).toList(),
          from.hungWeights(),
          from.coils(),
          from.handBends(),
          from.aids(),
          from.extras());
    }
  }

  /**
   * What is added.
   *
   * @param found what was pulled
   * @param changing the line it takes the place of; empty for a new bend
   * @param as name of a new bend
   */
  record Subject(Proposal found, Optional<Changing> changing, String as) {}

  /** The plan that is pulled in; where the document has none, the one that will be made. */
  Plan plan() {
    return workspace
        .plan()
        .orElseGet(() -> new PlanDraft(PlanEdits.nextId(workspace.document())).build());
  }

  /** A free name for a new bend. */
  String nextName() {
    return workspace
        .plan()
        .map(plan -> ProposalEdits.nextId(workspace.document(), plan.id()))
        .orElse("p1");
  }

  /** The plan as it would be; empty where it cannot be so. */
  Optional<Plan> planned(Subject of) {
    Plan plan = plan();
    List<Proposal> all = new ArrayList<>();
    if (of.changing.isPresent()) {
      GuyLine line = of.found.guyLines().get(0);
      for (Proposal one : plan.proposals()) {
        all.add(one.withLines(old -> old.id().equals(line.id()) ? line : old));
      }
    } else {
      all.addAll(plan.proposals());
      all.add(named(of));
    }
    try {
      return Optional.of(plan.withProposals(all));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What is pulled as a proposal under its name, its line and hand named as the plan goes on. */
  private Proposal named(Subject of) {
    Proposal from = of.found;
    Document document = workspace.document();
    Optional<String> plan = workspace.plan().map(Plan::id);
    String line = plan.map(id -> ProposalEdits.nextLineId(document, id)).orElse("g1");
    String hand = plan.map(id -> ProposalEdits.nextHandId(document, id)).orElse("h1");
    return new Proposal(
        of.as,
        from.about(),
        from.guyLines().stream().map(one -> named(one, line)).toList(),
        from.hungWeights(),
        from.coils(),
        from.handBends().stream()
            .map(one -> new HandBend(hand, one.at(), one.direction(), one.move(), Map.of()))
            .toList(),
        from.aids(),
        from.extras());
  }

  private static GuyLine named(GuyLine line, String id) {
    return new GuyLine(
        id, line.at(), line.padRound(), line.anchor(), line.hold(), line.tackle(), line.extras());
  }

  /** Adds it to the plan, made where there is none, or changes its line; one step of undo. */
  boolean add(Subject of) {
    if (of.changing.isPresent()) {
      Changing changed = of.changing.get();
      GuyLine line = of.found.guyLines().get(0);
      return workspace.edit(BendEdits.changeLine(changed.where(), changed.line().id(), line));
    }
    Plan plan = plan();
    Edit add = ProposalEdits.add(plan.id(), named(of));
    if (workspace.plan().isPresent()) {
      return workspace.edit(add);
    }
    Edit made = new Edit(add.name(), old -> add.of(PlanEdits.add(plan).of(old)));
    boolean done = workspace.edit(made);
    if (done) {
      workspace.choosePlan(plan.id());
    }
    return done;
  }
}
