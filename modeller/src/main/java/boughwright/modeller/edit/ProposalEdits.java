// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.problem.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Changes of the proposals of a plan; what is in one: {@link BendEdits}. */
public final class ProposalEdits {
  private static final Named<Proposal> PROPOSALS = new Named<>("proposal", Proposal::id);

  private ProposalEdits() {}

  interface Change {
    void on(ProposalDraft proposal) throws InputException;
  }

  /**
   * A proposal of a document.
   *
   * @param plan name of its plan
   * @param proposal its name in that plan
   */
  public record Where(String plan, String proposal) {
    @Override
    public String toString() {
      return plan + "/" + proposal;
    }
  }

  static Edit edit(String name, Where where, Change change) {
    return list(
        name,
        where.plan(),
        all -> {
          int at = PROPOSALS.at(all, where.proposal());
          ProposalDraft draft = new ProposalDraft(all.get(at));
          change.on(draft);
          all.set(at, draft.build());
        });
  }

  private interface ListChange {
    void on(List<Proposal> proposals) throws InputException;
  }

  private static Edit list(String name, String plan, ListChange change) {
    return PlanEdits.edit(
        name,
        plan,
        old -> {
          List<Proposal> all = new ArrayList<>(old.proposals());
          change.on(all);
          requireUnique(all);
          return old.withProposals(all);
        });
  }

  /** Names of lines and of pulls by hand are used once in a plan. */
  private static void requireUnique(List<Proposal> all) throws InputException {
    unique("guy-line", all, one -> one.guyLines().stream().map(GuyLine::id).toList());
    unique("pull by hand", all, one -> one.handBends().stream().map(HandBend::id).toList());
  }

  private static void unique(
      String what, List<Proposal> all, Function<Proposal, List<String>> naming)
      throws InputException {
    List<String> seen = new ArrayList<>();
    for (Proposal proposal : all) {
      for (String id : naming.apply(proposal)) {
        Named.requireFree(what, id, seen);
        seen.add(id);
      }
    }
  }

  /** A free name for a proposal of a plan; {@code p1} where the plan is not there. */
  public static String nextId(Document document, String plan) {
    return next(document, plan, "p", one -> List.of(one.id()));
  }

  /** A free name for a guy-line of a plan. */
  public static String nextLineId(Document document, String plan) {
    return next(document, plan, "g", one -> one.guyLines().stream().map(GuyLine::id).toList());
  }

  /** A free name for a pull by hand of a plan. */
  public static String nextHandId(Document document, String plan) {
    return next(document, plan, "h", one -> one.handBends().stream().map(HandBend::id).toList());
  }

  private static String next(
      Document document, String plan, String prefix, Function<Proposal, List<String>> naming) {
    return NextId.numbered(
        prefix,
        document.plan(plan).map(Plan::proposals).orElse(List.of()).stream()
            .flatMap(one -> naming.apply(one).stream())
            .toList());
  }

  /** A proposal in which nothing is said yet. */
  public static Proposal empty(String id, Optional<String> about) {
    return new Proposal(id, about, List.of(), List.of(), List.of(), Map.of());
  }

  /** Adds a proposal to a plan. */
  public static Edit add(String plan, Proposal proposal) {
    return list(
        "Add proposal " + proposal.id() + " to plan " + plan,
        plan,
        all -> PROPOSALS.add(all, proposal));
  }

  /** Puts another proposal in the place of one; it may have another name. */
  public static Edit replace(Where where, Proposal proposal) {
    return list(
        "Change proposal " + where,
        where.plan(),
        all -> PROPOSALS.replace(all, where.proposal(), proposal));
  }

  /** Takes a proposal out. */
  public static Edit delete(Where where) {
    return list(
        "Delete proposal " + where, where.plan(), all -> PROPOSALS.remove(all, where.proposal()));
  }

  /** Says which segment a proposal is about; empty for not said. */
  public static Edit about(Where where, Optional<String> segment) {
    return edit("Say what " + where + " is about", where, draft -> draft.about = segment);
  }
}
