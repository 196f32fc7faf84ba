// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plan while it is put together or changed; each method sets the component of {@link Plan} of its
 * name. Mutable, used within one method.
 */
public final class PlanDraft {
  private String id;
  private OptionalDouble frontAzimuth = OptionalDouble.empty();
  private Optional<Planting> planting = Optional.empty();
  private List<Spot> cuts = List.of();
  private Optional<String> apex = Optional.empty();
  private List<Proposal> proposals = List.of();
  private boolean selfWeight;
  private Plan.Stance stance = Plan.Stance.AS_MEASURED;
  private Optional<Spot> clamp = Optional.empty();
  private Schedule schedule = Schedule.UNSAID;
  private Map<String, Object> extras = Map.of();

  /** A plan in which nothing is said yet. */
  public PlanDraft(String id) {
    this.id = id;
  }

  /** A plan as it is, to be changed. */
  public PlanDraft(Plan from) {
    id = from.id();
    frontAzimuth = from.frontAzimuth();
    planting = from.planting();
    cuts = from.cuts();
    apex = from.apex();
    proposals = from.proposals();
    selfWeight = from.selfWeight();
    stance = from.stance();
    clamp = from.clamp();
    schedule = from.schedule();
    extras = from.extras();
  }

  public PlanDraft id(String other) {
    id = other;
    return this;
  }

  public PlanDraft frontAzimuth(OptionalDouble other) {
    frontAzimuth = other;
    return this;
  }

  public PlanDraft planting(Optional<Planting> other) {
    planting = other;
    return this;
  }

  public PlanDraft cuts(List<Spot> other) {
    cuts = other;
    return this;
  }

  public PlanDraft apex(Optional<String> other) {
    apex = other;
    return this;
  }

  public PlanDraft proposals(List<Proposal> other) {
    proposals = other;
    return this;
  }

  public PlanDraft selfWeight(boolean other) {
    selfWeight = other;
    return this;
  }

  public PlanDraft stance(Plan.Stance other) {
    stance = other;
    return this;
  }

  public PlanDraft clamp(Optional<Spot> other) {
    clamp = other;
    return this;
  }

  public PlanDraft schedule(Schedule other) {
    schedule = other;
    return this;
  }

  public PlanDraft extras(Map<String, Object> other) {
    extras = other;
    return this;
  }

  /**
   * The plan.
   *
   * @throws IllegalArgumentException if it is none
   */
  public Plan build() {
    return new Plan(
        id,
        frontAzimuth,
        planting,
        cuts,
        apex,
        proposals,
        selfWeight,
        stance,
        clamp,
        schedule,
        extras);
  }
}
