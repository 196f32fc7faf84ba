// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** Plans that an answer is kept in. */
final class KeptPlan {
  private KeptPlan() {}

  /** Notes a fault where a new plan cannot have an id. */
  static void isFree(Document document, String id, Faults faults) {
    if (document.plan(id).isPresent()) {
      isThere(id, "Give a new id", faults);
    } else if (id.isBlank()) {
      isBlank(faults);
    }
  }

  static void isThere(String id, String remedy, Faults faults) {
    faults.add(
        "--add-to-plan",
        "plan-is-there",
        "there is a plan " + UsageFaults.quoted(id) + " already",
        remedy);
  }

  static void isBlank(Faults faults) {
    faults.add("--add-to-plan", "no-value", "is no id", "Give a new id, such as r");
  }

  /** The plan under an id; one that changes its id loses its schedule, which is of other bends. */
  static Plan renamed(Plan plan, String id) {
    if (plan.id().equals(id)) {
      return plan;
    }
    return new Plan(
        id,
        plan.frontAzimuth(),
        plan.planting(),
        plan.cuts(),
        plan.apex(),
        plan.proposals(),
        plan.selfWeight(),
        plan.stance(),
        plan.clamp(),
        plan.extras());
  }

  /** The document with a plan in place of the one of its id, or at the end. */
  static Document with(Document document, Plan plan) {
    List<Plan> plans = new ArrayList<>();
    boolean there = document.plan(plan.id()).isPresent();
    for (Plan one : document.plans()) {
      plans.add(one.id().equals(plan.id()) ? plan : one);
    }
    if (!there) {
      plans.add(plan);
    }
    return document.withPlans(plans);
  }
}
