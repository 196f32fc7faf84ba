// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What makes a set of segments a tree: one base, no rings, every parent there, ids unique. */
public final class TreeRules {
  private TreeRules() {}

  static void requireTree(List<Segment> segments, List<Wound> wounds) {
    for (Finding finding : findings(segments, wounds)) {
      if (finding.severity() == Severity.FAULT) {
        throw new IllegalArgumentException(finding.found());
      }
    }
  }

  /** Everything wrong with the shape of a set of segments, and with the wounds on them. */
  public static List<Finding> findings(List<Segment> segments, List<Wound> wounds) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Segment> byId = new LinkedHashMap<>();
    for (Segment segment : segments) {
      byId.put(segment.id(), segment);
    }
    return findings;
  }
}
