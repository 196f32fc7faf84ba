// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What makes pads fit a tree, and what in them looks like a slip of the unit.
 *
 * <p>The bounds are common practice, no source; they only make the person look again.
 */
public final class PadRules {
  private static final double LARGEST = 1.5;
  private static final double SMALLEST = 3e-3;

  /** A pad this many times as thick as it is long and wide stands on edge [1]. */
  private static final double ON_EDGE = 3;

  private PadRules() {}

  static void requireFitting(List<Segment> segments, List<Pad> pads) {
    if (pads.isEmpty()) {
      return;
    }
    for (Finding finding : findings(segments.stream().map(Segment::id).toList(), pads)) {
      if (finding.isFault()) {
        throw new IllegalArgumentException(finding.found());
      }
    }
  }

  /**
   * Everything wrong with pads, and everything to look at again in them.
   *
   * @param segmentIds ids of all segments
   * @param pads pads in file order
   * @return findings whose fields start with {@code pads[i].}
   */
  public static List<Finding> findings(Collection<String> segmentIds, List<Pad> pads) {
    List<Finding> findings = new ArrayList<>();
    Set<String> segments = new HashSet<>(segmentIds);
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < pads.size(); i++) {
      Pad pad = pads.get(i);
      String at = "pads[" + i + "].";
      if (!ids.add(pad.id())) {
        String found = "the pad id \"" + pad.id() + "\" is used twice";
        String remedy = "Give one of the two pads another id";
        findings.add(
            Finding.fault(List.of(pad.id()), at + "id", new Words("duplicate-id", found, remedy)));
      }
      if (!segments.contains(pad.segment())) {
        String found =
            "pad \"" + pad.id() + "\" is on \"" + pad.segment() + "\", which is no segment here";
        findings.add(
            Finding.fault(
                List.of(pad.id(), pad.segment()),
                at + "segment",
                new Words("unknown-segment", found, "Correct the segment")));
      }
      size(pad, at, findings);
    }
    return findings;
  }

  private static void size(Pad pad, String at, List<Finding> findings) {
    double largest = Math.max(pad.length(), Math.max(pad.width(), pad.thickness()));
    if (largest > LARGEST || largest < SMALLEST) {
      String found = "the pad is " + Amount.millimetres(largest) + " at its largest";
      String remedy = "Measure it again; the unit of the file is the millimetre";
      findings.add(question(pad, at + "length_mm", new Words("odd-pad-size", found, remedy)));
    } else if (pad.thickness() > ON_EDGE * Math.max(pad.length(), pad.width())) {
      String found =
          "the pad is "
              + Amount.millimetres(pad.thickness())
              + " thick, more than three times"
              + " what it is long and wide";
      String remedy = "Check which size is which: length runs along the branch, width is level";
      findings.add(question(pad, at + "thickness_mm", new Words("pad-on-edge", found, remedy)));
    }
    if (Math.abs(pad.raised()) > largest) {
      String found =
          "the pad floats " + Amount.millimetres(Math.abs(pad.raised())) + " off its branch";
      String remedy = "Give how far its middle lies above the branch, or leave it out";
      findings.add(question(pad, at + "raised_mm", new Words("pad-afloat", found, remedy)));
    }
  }

  private static Finding question(Pad pad, String field, Words words) {
    return Finding.warning(List.of(pad.id()), field, words);
  }
}
