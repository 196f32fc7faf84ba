// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.tree.NameRules;
import java.util.Optional;

/** The id of the plan that an answer goes into. */
final class AddToPlan {
  private static final String OPTION = "--add-to-plan";

  private AddToPlan() {}

  /** Tells that something is in the file now. */
  static void tell(TextPage page, String what, Optional<Plan> kept) {
    kept.ifPresent(plan -> page.heading(what + " is in the file now, in plan " + plan.id() + "."));
  }

  /** Whether a plan may be called so; notes a fault where not. */
  static boolean isId(String id, Faults faults) {
    if (id.isBlank()) {
      faults.add(OPTION, "no-value", "is no id", "Give the id of a plan, such as r");
      return false;
    }
    Optional<String> amiss = NameRules.faultOfId(id);
    amiss.ifPresent(what -> faults.add(OPTION, "bad-id", "the id " + what, "Give a short id"));
    return amiss.isEmpty();
  }

  /**
   * Notes a fault where no new plan can have an id.
   *
   * @param how what makes the plan that is there take the answer, as words after "add"; empty where
   *     nothing does
   */
  static void requireNew(Document document, String id, Optional<String> how, Faults faults) {
    if (isId(id, faults) && document.plan(id).isPresent()) {
      faults.add(
          OPTION,
          "plan-is-there",
          "there is a plan " + UsageFaults.quoted(id) + " already",
          "Give a new id" + how.map(words -> "; or add " + words).orElse(""));
    }
  }
}
