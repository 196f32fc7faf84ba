// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Changes of the plans as wholes; what is in their proposals: {@link ProposalEdits}. */
public final class PlanEdits {
  private static final Named<Plan> PLANS = new Named<>("plan", Plan::id);

  private static final Placed CUTS = new Placed("cut");

  private PlanEdits() {}

  interface Change {
    Plan on(Plan plan) throws InputException;
  }

  private interface Changes {
    void on(List<Plan> plans) throws InputException;
  }

  /** A change of one plan, which must fit the tree afterwards. */
  static Edit edit(String name, String id, Change change) {
    return new Edit(
        name,
        document -> {
          List<Plan> all = new ArrayList<>(document.plans());
          int at = PLANS.at(all, id);
          Plan plan = PlainPlan.of(change.on(all.get(at)));
          Judging.require(new Skeleton(document.tree()), plan);
          all.set(at, plan);
          return document.withPlans(all);
        });
  }

  private static Edit list(String name, Changes change) {
    return new Edit(
        name,
        document -> {
          List<Plan> all = new ArrayList<>(document.plans());
          change.on(all);
          return document.withPlans(all);
        });
  }

  /** A free name for a plan: the next letter. */
  public static String nextId(Document document) {
    List<String> taken = PLANS.ids(document.plans());
    for (char letter = 'a'; letter <= 'z'; letter++) {
      if (NextId.free(String.valueOf(letter), taken).length() == 1) {
        return String.valueOf(letter);
      }
    }
    return NextId.numbered(PLANS.what(), taken);
  }

  /** Adds a plan at the end. */
  public static Edit add(Plan plan) {
    return new Edit(
        "Add plan " + plan.id(),
        document -> {
          Plan plain = PlainPlan.of(plan);
          List<Plan> all = new ArrayList<>(document.plans());
          PLANS.add(all, plain);
          Judging.require(new Skeleton(document.tree()), plain);
          return document.withPlans(all);
        });
  }

  /** Puts a plan in the place of the one of its name, or at the end where there is none. */
  public static Edit put(Plan plan) {
    return new Edit(
        "Keep plan " + plan.id(),
        document ->
            document.plan(plan.id()).isPresent()
                ? edit("", plan.id(), old -> plan).of(document)
                : add(plan).of(document));
  }

  /** Adds a copy of a plan after it. */
  public static Edit duplicate(String id, String newId) {
    return list(
        "Duplicate plan " + id,
        all -> {
          int at = PLANS.at(all, id);
          Named.requireFree(PLANS.what(), newId, PLANS.ids(all));
          all.add(at + 1, new PlanDraft(all.get(at)).id(newId).build());
        });
  }

  /** Gives a plan another name. */
  public static Edit rename(String id, String newId) {
    return list(
        "Rename plan " + id + " to " + newId,
        all -> {
          Plan named = new PlanDraft(PLANS.get(all, id)).id(newId).build();
          PLANS.replace(all, id, named);
        });
  }

  /** Takes a plan out. */
  public static Edit delete(String id) {
    return list("Delete plan " + id, all -> PLANS.remove(all, id));
  }

  /** Sets the azimuth from which the tree is to be seen; empty for not said [rad]. */
  public static Edit front(String id, OptionalDouble azimuth) {
    return edit(
        "Set the front of plan " + id,
        id,
        plan -> {
          if (azimuth.isPresent()) {
            Refusal.angle("the front", "it", azimuth.getAsDouble());
          }
          return new PlanDraft(plan).frontAzimuth(azimuth).build();
        });
  }

  /** Sets the planting angle; empty for as measured. */
  public static Edit planting(String id, Optional<Planting> planting) {
    return edit(
        "Set the planting angle of plan " + id,
        id,
        plan -> new PlanDraft(plan).planting(planting).build());
  }

  /**
   * Sets front and planting angle in one step.
   *
   * @param azimuth from where the tree is to be seen [rad]
   * @param planting the planting angle; empty for as measured
   */
  public static Edit standing(String id, double azimuth, Optional<Planting> planting) {
    return edit(
        "Set front and planting angle of plan " + id,
        id,
        plan -> {
          double front = Refusal.angle("the front", "it", azimuth);
          return new PlanDraft(plan)
              .frontAzimuth(OptionalDouble.of(front))
              .planting(planting)
              .build();
        });
  }

  private interface CutChange {
    void on(List<Spot> cuts) throws InputException;
  }

  private static Edit cuts(String name, String id, CutChange change) {
    return edit(
        name,
        id,
        plan -> {
          List<Spot> all = new ArrayList<>(plan.cuts());
          change.on(all);
          return new PlanDraft(plan).cuts(all).build();
        });
  }

  /** Adds a cut. */
  public static Edit addCut(String id, Spot cut) {
    return cuts("Cut " + cut.segment() + " in plan " + id, id, all -> all.add(cut));
  }

  /**
   * Puts another cut in the place of one.
   *
   * @param at place in the list of cuts, from 0
   */
  public static Edit changeCut(String id, int at, Spot cut) {
    return cuts("Change a cut of plan " + id, id, all -> CUTS.replace(all, at, cut));
  }

  /**
   * Takes a cut back.
   *
   * @param at place in the list of cuts, from 0
   */
  public static Edit deleteCut(String id, int at) {
    return cuts("Delete a cut of plan " + id, id, all -> CUTS.remove(all, at));
  }

  /** Says which segment becomes the apex. */
  public static Edit apex(String id, Optional<String> segment) {
    return edit(
        "Set the apex of plan " + id, id, plan -> new PlanDraft(plan).apex(segment).build());
  }

  /** Says when the bends are made and let go. */
  public static Edit schedule(String id, Schedule schedule) {
    return edit(
        "Set the stages of plan " + id, id, plan -> new PlanDraft(plan).schedule(schedule).build());
  }

  /** Says whether the tree's own weight takes part. */
  public static Edit selfWeight(String id, boolean takesPart) {
    return edit(
        "Set the own weight in plan " + id,
        id,
        plan -> new PlanDraft(plan).selfWeight(takesPart).build());
  }

  /** Says whether gravity acts on the tree as measured or as planted. */
  public static Edit stance(String id, Plan.Stance stance) {
    return edit(
        "Set the stance of plan " + id, id, plan -> new PlanDraft(plan).stance(stance).build());
  }

  /** Says where the tree is held; empty for the trunk base. */
  public static Edit clamp(String id, Optional<Spot> clamp) {
    return edit(
        "Set the clamp of plan " + id, id, plan -> new PlanDraft(plan).clamp(clamp).build());
  }
}
