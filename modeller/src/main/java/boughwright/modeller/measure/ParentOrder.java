// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.measure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds who grows on whom, and a sequence in which every parent comes before its children. */
final class ParentOrder {
  /** How many names one message lists. */
  private static final int NAMED = 6;

  /**
   * Who a row says it is.
   *
   * @param row the row
   * @param id its name
   * @param parent its parent's name
   */
  record Claim(SheetRow row, String id, Optional<String> parent) {}

  private final Map<String, Claim> claims = new LinkedHashMap<>();
  private final SheetIds ids;
  private final SheetProblems problems;

  ParentOrder(List<Claim> all, SheetProblems problems) {
    this.problems = problems;
    this.ids = new SheetIds(problems);
    for (Claim claim : all) {
      ids.add(claim.id(), claim.row());
      claims.putIfAbsent(claim.id(), claim);
    }
  }

  /** Names from the trunk base outward; shorter than the sheet after a fault. */
  List<String> outward() {
    requireParents();
    Optional<Claim> base = base();
    Map<String, List<String>> children = new HashMap<>();
    for (Claim claim : claims.values()) {
      claim
          .parent()
          .ifPresent(p -> children.computeIfAbsent(p, x -> new ArrayList<>()).add(claim.id()));
    }
    List<String> outward = new ArrayList<>();
    Deque<String> waiting = new ArrayDeque<>();
    base.ifPresent(claim -> waiting.add(claim.id()));
    while (!waiting.isEmpty()) {
      String id = waiting.remove();
      outward.add(id);
      waiting.addAll(children.getOrDefault(id, List.of()));
    }
    findRings();
    return outward;
  }

  private void requireParents() {
    for (Claim claim : claims.values()) {
      String parent = claim.parent().orElse(claim.id());
      if (!ids.has(parent)) {
        String like = ids.like(parent).map(id -> ", but \"" + id + "\" is").orElse("");
        fault(
            claim,
            "unknown-parent",
            "its parent \"" + SheetLimits.shown(parent) + "\" is not in the sheet" + like,
            "Name a segment of the sheet, or add the missing one");
      }
    }
  }

  private Optional<Claim> base() {
    List<Claim> bases = claims.values().stream().filter(c -> c.parent().isEmpty()).toList();
    if (bases.isEmpty()) {
      problems.fault(
          problems.place(0, "column parent"),
          "no-base",
          "every segment has a parent, so there is no trunk base",
          "Leave the parent of the lowest piece of the trunk empty");
    } else if (bases.size() > 1) {
      fault(
          bases.get(1),
          "two-bases",
          "the segments " + names(bases.stream().map(Claim::id).toList()) + " have no parent",
          "Leave the parent empty in one row only, the lowest piece of the trunk; roots grow on"
              + " it at along 0");
    }
    return bases.stream().findFirst();
  }

  /** Follows each row inward; whoever comes back to a row of the same walk stands in a ring. */
  private void findRings() {
    Map<String, String> walkOf = new HashMap<>();
    for (String start : claims.keySet()) {
      String id = start;
      while (id != null && claims.containsKey(id) && !walkOf.containsKey(id)) {
        walkOf.put(id, start);
        id = claims.get(id).parent().orElse(null);
      }
      if (id != null && start.equals(walkOf.get(id))) {
        sayRing(id);
      }
    }
  }

  private void sayRing(String on) {
    List<String> ring = new ArrayList<>();
    String id = on;
    do {
      ring.add(id);
      id = claims.get(id).parent().orElseThrow();
    } while (!id.equals(on));
    fault(
        claims.get(on),
        "ring",
        ring.size() == 1
            ? "it is its own parent"
            : "the segments " + names(ring) + " grow on each other in a ring",
        "Follow them inward and name the parent nearer to the trunk");
  }

  private static String names(List<String> ids) {
    String names =
        ids.stream()
            .limit(NAMED)
            .map(id -> '"' + SheetLimits.shown(id) + '"')
            .collect(Collectors.joining(", "));
    return ids.size() > NAMED ? names + " and " + (ids.size() - NAMED) + " more" : names;
  }

  private void fault(Claim claim, String kind, String found, String remedy) {
    String subject = "segment \"" + SheetLimits.shown(claim.id()) + "\", column parent";
    problems.fault(problems.place(claim.row().line(), subject), kind, found, remedy);
  }
}
