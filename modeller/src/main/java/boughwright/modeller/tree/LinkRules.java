// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Whether links make a tree: one base, no rings, every parent there, ids unique. */
final class LinkRules {
  private static final int MOST_NAMED = 12;

  private final List<Link> links;
  private final Map<String, Integer> index = new HashMap<>();
  private final List<Finding> findings = new ArrayList<>();

  private LinkRules(List<Link> links) {
    this.links = links;
  }

  static List<Finding> findings(List<Link> links) {
    LinkRules rules = new LinkRules(links);
    rules.ids();
    rules.parents();
    rules.base();
    rules.rings();
    return rules.findings;
  }

  private void ids() {
    for (int i = 0; i < links.size(); i++) {
      String id = links.get(i).id();
      if (index.putIfAbsent(id, i) != null) {
        fault(
            List.of(id),
            field(i, "id"),
            new Words(
                "duplicate-id",
                "the id \"" + id + "\" is used twice",
                "Give one of the two segments another id"));
      }
    }
    findings.addAll(IdLooks.findings(links));
  }

  private void parents() {
    for (int i = 0; i < links.size(); i++) {
      Link link = links.get(i);
      String parent = link.parent().orElse(link.id());
      if (!index.containsKey(parent)) {
        fault(
            List.of(link.id(), parent),
            field(i, "parent"),
            new Words(
                "unknown-parent",
                String.format(
                    Locale.ROOT,
                    "\"%s\" starts on \"%s\", which is no segment here",
                    link.id(),
                    parent),
                "Correct the parent, or add the segment that is missing"));
      }
    }
  }

  private void base() {
    List<Integer> bases = new ArrayList<>();
    for (int i = 0; i < links.size(); i++) {
      if (links.get(i).parent().isEmpty()) {
        bases.add(i);
      }
    }
    if (links.isEmpty()) {
      fault(
          List.of(),
          "segments",
          new Words(
              "no-segments",
              "the tree has no segment, so no wood",
              "Measure at least the trunk from its base to the first branch"));
    } else if (bases.isEmpty()) {
      fault(
          List.of(),
          "segments",
          new Words(
              "no-base",
              "no segment is the trunk base: every one has a parent",
              "Set the parent of the lowest trunk segment to null and give its start_mm"));
    } else if (bases.size() > 1) {
      List<String> ids = bases.stream().map(i -> links.get(i).id()).toList();
      fault(
          ids,
          field(bases.get(1), "parent"),
          new Words(
              "several-bases",
              bases.size() + " segments have no parent: " + named(ids, ", "),
              "Only the trunk base has none; name the parent of every other one"));
    }
  }

  private void rings() {
    int[] walk = new int[links.size()];
    for (int i = 0; i < links.size(); i++) {
      int at = i;
      while (at != Skeleton.NONE && walk[at] == 0) {
        walk[at] = i + 1;
        at = links.get(at).parent().map(parent -> index.get(parent)).orElse(Skeleton.NONE);
      }
      if (at != Skeleton.NONE && walk[at] == i + 1) {
        ring(at);
      }
    }
  }

  private void ring(int first) {
    List<String> ids = new ArrayList<>();
    int at = first;
    do {
      ids.add(links.get(at).id());
      at = index.get(links.get(at).parent().orElseThrow());
    } while (at != first);
    String found =
        ids.size() == 1
            ? "\"" + ids.get(0) + "\" is its own parent"
            : "segments start on each other in a ring: "
                + named(ids, " on ")
                + (ids.size() <= MOST_NAMED ? " on \"" + ids.get(0) + "\"" : "");
    fault(
        ids,
        field(first, "parent"),
        new Words(
            "ring",
            found,
            "Correct the parent of one of them, so that all lead down to the trunk base"));
  }

  private static String named(List<String> ids, String between) {
    String all =
        ids.stream()
            .limit(MOST_NAMED)
            .map(id -> "\"" + id + "\"")
            .collect(Collectors.joining(between));
    return ids.size() <= MOST_NAMED ? all : all + " and " + (ids.size() - MOST_NAMED) + " more";
  }

  private static String field(int i, String name) {
    return "segments[" + i + "]." + name;
  }

  private void fault(List<String> subjects, String field, Words words) {
    findings.add(Finding.fault(subjects, field, words));
  }
}
