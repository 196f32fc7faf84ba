// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Counts what a document holds, for the words of an edit. */
final class Parts {
  private Parts() {}

  /** Number of things in a proposal. */
  static int of(Proposal proposal) {
    return proposal.guyLines().size()
        + proposal.hungWeights().size()
        + proposal.coils().size()
        + proposal.handBends().size()
        + proposal.aids().size();
  }

  /** What two drafts differ by, such as {@code 3 segments, 1 line}. */
  static String gone(Draft draft) {
    List<String> words = new ArrayList<>();
    count(words, draft.before.tree().segments().size() - draft.segments.size(), "segment");
    count(words, draft.before.tree().wounds().size() - draft.wounds.size(), "wound");
    count(words, draft.before.tree().pullTests().size() - draft.pullTests.size(), "pull test");
    count(words, draft.before.tree().foliage().pads().size() - draft.pads.size(), "pad");
    parts(words, draft, "line", one -> one.guyLines().size());
    parts(words, draft, "weight", one -> one.hungWeights().size());
    parts(words, draft, "coil", one -> one.coils().size());
    parts(words, draft, "pull by hand", one -> one.handBends().size());
    parts(words, draft, "aid", one -> one.aids().size());
    plans(words, draft, "cut", plan -> plan.cuts().size());
    plans(words, draft, "apex", plan -> plan.apex().isPresent() ? 1 : 0);
    plans(words, draft, "clamp", plan -> plan.clamp().isPresent() ? 1 : 0);
    return String.join(", ", words);
  }

  private static void parts(
      List<String> words, Draft draft, String what, ToIntFunction<Proposal> size) {
    plans(words, draft, what, plan -> plan.proposals().stream().mapToInt(size).sum());
  }

  private static void plans(
      List<String> words, Draft draft, String what, ToIntFunction<Plan> size) {
    int before = draft.before.plans().stream().mapToInt(size).sum();
    count(words, before - draft.plans.stream().mapToInt(size).sum(), what);
  }

  private static void count(List<String> words, int count, String what) {
    if (count > 0) {
      words.add(count + " " + (count == 1 ? what : plural(what)));
    }
  }

  private static String plural(String what) {
    return switch (what) {
      case "pull by hand" -> "pulls by hand";
      case "apex" -> "apexes";
      default -> what + "s";
    };
  }
}
