// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Whether an aid, whose place is sound, leaves wood to bend. */
final class AidRules {
  /** Deeper cuts leave less than half of the wood [1]. Common practice, no source. */
  private static final double DEEP = 0.5;

  private final Skeleton skeleton;
  private final Aid aid;
  private final int segment;

  AidRules(Skeleton skeleton, Aid aid) {
    this.skeleton = skeleton;
    this.aid = aid;
    segment = skeleton.indexOf(aid.segment());
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    double wood = Math.min(wood(aid.from()), wood(aid.to()));
    aid.depth().ifPresent(depth -> deep(findings, depth, wood));
    boolean groove = aid.kind() == Aid.Kind.SLOT || aid.kind() == Aid.Kind.RELIEF_CUT;
    if (aid.kind() == Aid.Kind.SLOT && !(aid.width().orElse(0) < wood)) {
      findings.add(tooMuch("width_mm", "a slot " + mm(aid.width().orElse(0)) + " wide", wood));
    }
    if (groove && skeleton.segment(segment).features().slot().isPresent()) {
      findings.add(
          fault(
              "kind",
              "slot-twice",
              "\"" + aid.segment() + "\" has a slot all along already",
              "Take the slot of the segment out, or this aid"));
    }
    if (aid.kind() == Aid.Kind.RELIEF_CUT) {
      crowded(findings);
    }
    return findings;
  }

  private void deep(List<Finding> findings, double depth, double wood) {
    if (!(depth < wood)) {
      boolean hollow = aid.kind() == Aid.Kind.HOLLOW;
      String what = hollow ? "a hollow " + mm(depth) + " wide" : "a cut " + mm(depth) + " deep";
      findings.add(tooMuch("depth_mm", what, wood));
    } else if (aid.kind() != Aid.Kind.HOLLOW && depth > DEEP * wood) {
      findings.add(
          Finding.warning(
              List.of(aid.segment()),
              "depth_mm",
              new Words(
                  "deep-cut",
                  "a cut "
                      + mm(depth)
                      + " deep takes more than half of wood "
                      + mm(wood)
                      + " thick",
                  "Cut less deep, or make more cuts: half of the wood should stay (common"
                      + " practice, no source)")));
    }
  }

  private void crowded(List<Finding> findings) {
    double stretch = (aid.to() - aid.from()) * skeleton.length(segment);
    double cuts = aid.count() * aid.width().orElse(0);
    if (!(cuts < stretch)) {
      findings.add(
          fault(
              "count",
              "cuts-crowded",
              String.format(
                  Locale.ROOT,
                  "%d cuts of %s take up the whole stretch of %s",
                  aid.count(),
                  mm(aid.width().orElse(0)),
                  mm(stretch)),
              "Make fewer or narrower cuts, or a longer stretch"));
    }
  }

  /** Thickness of the wood under bark [m]. */
  private double wood(double along) {
    double bark = skeleton.segment(segment).bark().orElse(skeleton.tree().bark().orElse(0));
    return skeleton.caliper(segment, along) - 2 * bark;
  }

  private static String mm(double metres) {
    return Amount.millimetres(metres);
  }

  private Finding tooMuch(String field, String what, double wood) {
    return fault(
        field,
        "aid-too-large",
        what + ", and the wood of \"" + aid.segment() + "\" is " + mm(wood) + " thick there",
        "Measure both again, under the bark; leave at least half of the wood");
  }

  private Finding fault(String field, String kind, String found, String remedy) {
    return Finding.fault(List.of(aid.segment()), field, new Words(kind, found, remedy));
  }
}
