// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Schedule;
import boughwright.modeller.plan.Spot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A plan while it is changed. Mutable, used by one edit. */
final class PlanDraft {
  String id;
  OptionalDouble frontAzimuth;
  Optional<Planting> planting;
  List<Spot> cuts;
  Optional<String> apex;
  List<Proposal> proposals;
  boolean selfWeight;
  Plan.Stance stance;
  Optional<Spot> clamp;
  Schedule schedule;
  Map<String, Object> extras;

  PlanDraft(Plan from) {
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

  Plan build() {
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
