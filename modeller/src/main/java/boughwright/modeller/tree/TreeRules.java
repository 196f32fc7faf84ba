// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Severity;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * What makes a set of segments a tree: one base, no rings, every parent there, ids unique, every
 * segment with a length and with wood inside its bark and round its hollow; and what is odd enough
 * to look at again.
 *
 * <p>All rules take time linear in the number of segments and use no recursion.
 */
public final class TreeRules {
  private TreeRules() {}

  static void requireTree(List<Segment> segments, List<Wound> wounds, OptionalDouble bark) {
    for (Finding finding : judge(segments, wounds, bark, false)) {
      if (finding.isFault()) {
        throw new IllegalArgumentException(finding.found());
      }
    }
  }

  /** Everything wrong with a set of segments without a bark of the tree, and with its wounds. */
  public static List<Finding> findings(List<Segment> segments, List<Wound> wounds) {
    return findings(segments, wounds, OptionalDouble.empty());
  }

  /**
   * Everything wrong with a set of segments, and with the wounds on them.
   *
   * @param segments segments in file order
   * @param wounds wounds in file order
   * @param bark thickness of one layer of bark where a segment has none of its own [m]
   * @return faults and warnings; when the links are no tree, only those of links and wounds, for
   *     the others would rest on them
   */
  public static List<Finding> findings(
      List<Segment> segments, List<Wound> wounds, OptionalDouble bark) {
    return judge(segments, wounds, bark, true);
  }

  private static List<Finding> judge(
      List<Segment> segments, List<Wound> wounds, OptionalDouble bark, boolean oddities) {
    List<Finding> findings = new ArrayList<>(linkFindings(Link.of(segments)));
    boolean linked = findings.stream().noneMatch(Finding::isFault);
    findings.addAll(woundFindings(segments.stream().map(Segment::id).toList(), wounds));
    if (!linked) {
      return findings;
    }
    Layout layout = new Layout(segments);
    findings.addAll(SolidRules.faults(layout, bark));
    findings.addAll(FeatureRules.faults(layout, bark));
    if (oddities && findings.stream().noneMatch(Finding::isFault)) {
      findings.addAll(SolidRules.warnings(layout));
      findings.addAll(SizeRules.warnings(layout));
      findings.addAll(FeatureRules.warnings(layout));
    }
    return findings;
  }

  /** Everything wrong with who sits on whom, and with the ids. */
  public static List<Finding> linkFindings(List<Link> links) {
    return LinkRules.findings(links);
  }

  /** Wounds on unknown segments and wounds of one id. */
  public static List<Finding> woundFindings(Collection<String> segmentIds, List<Wound> wounds) {
    List<Finding> findings = new ArrayList<>();
    Set<String> segments = new HashSet<>(segmentIds);
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < wounds.size(); i++) {
      Wound wound = wounds.get(i);
      if (!ids.add(wound.id())) {
        findings.add(
            Finding.fault(
                List.of(wound.id()),
                "wounds[" + i + "].id",
                new Words(
                    "duplicate-id",
                    "the wound id \"" + wound.id() + "\" is used twice",
                    "Give one of the two wounds another id")));
      }
      if (!segments.contains(wound.segment())) {
        findings.add(
            Finding.fault(
                List.of(wound.id(), wound.segment()),
                "wounds[" + i + "].segment",
                new Words(
                    "unknown-segment",
                    String.format(
                        Locale.ROOT,
                        "wound \"%s\" is on \"%s\", which is no segment here",
                        wound.id(),
                        wound.segment()),
                    "Correct the segment")));
      }
    }
    return findings;
  }

  /** Wood given for ids or beginnings of ids that no segment has. */
  public static List<Finding> woodFindings(
      Collection<String> segmentIds, List<WoodOverride> overrides) {
    List<Finding> findings = new ArrayList<>();
    TreeSet<String> ids = new TreeSet<>(segmentIds);
    for (WoodOverride override : overrides) {
      String pattern = override.pattern();
      boolean beginning = pattern.endsWith("*");
      String start = beginning ? pattern.substring(0, pattern.length() - 1) : pattern;
      String next = ids.ceiling(start);
      if (next == null || !override.matches(next)) {
        findings.add(
            new Finding(
                beginning ? Severity.WARNING : Severity.FAULT,
                List.of(pattern),
                "wood." + pattern,
                "unknown-segment",
                "wood is given for \"" + pattern + "\", and no segment is called so",
                "Correct the id, or take the entry out"));
      }
    }
    return findings;
  }
}
