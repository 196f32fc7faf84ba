// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Whether hollow, dead face and slot fit inside the wood, and included bark sits in a crotch. */
final class FeatureRules {
  /** With less of the round wood left than this nothing holds the branch [1]. Assumption. */
  private static final double LEAST_WOOD = 0.01;

  private static final int STRIPS = 400;

  private final Layout layout;
  private final List<Finding> findings = new ArrayList<>();

  private FeatureRules(Layout layout) {
    this.layout = layout;
  }

  /** Segments too thin for what was taken out of them, in file order. */
  static List<Finding> faults(Layout layout, OptionalDouble treeBark) {
    FeatureRules rules = new FeatureRules(layout);
    for (int i = 0; i < layout.segments.size(); i++) {
      Segment segment = layout.segments.get(i);
      if (!segment.features().isWhole()) {
        OptionalDouble bark = segment.bark().isPresent() ? segment.bark() : treeBark;
        double caliper = Math.min(segment.caliperStart(), segment.caliperEnd());
        double radius = caliper / 2 - bark.orElse(0);
        if (radius > 0) {
          rules.fit(i, radius);
        }
      }
    }
    return rules.findings;
  }

  /** Included bark where there is no crotch. */
  static List<Finding> warnings(Layout layout) {
    FeatureRules rules = new FeatureRules(layout);
    for (int i = 0; i < layout.segments.size(); i++) {
      String id = layout.segments.get(i).id();
      if (layout.segments.get(i).features().includedBark() && layout.joint[i] != Joint.UNION) {
        rules.findings.add(
            Finding.warning(
                List.of(id),
                field(i, "included_bark"),
                new Words(
                    "no-crotch",
                    "\"" + id + "\" goes on from its parent, or is the base: it has no crotch",
                    "Tick included_bark on the branch that forms the crotch; here it counts for"
                        + " nothing")));
      }
    }
    return rules.findings;
  }

  private void fit(int i, double radius) {
    Features features = layout.segments.get(i).features();
    int before = findings.size();
    features.hollow().ifPresent(d -> within(i, "hollow_mm", "a hollow", d, 2 * radius));
    features
        .deadFace()
        .filter(face -> face.depth() > radius)
        .ifPresent(face -> tooMuch(i, "dead_face", deep("a dead face", face.depth()), 2 * radius));
    features.slot().ifPresent(slot -> slot(i, slot, radius));
    double left = woodLeft(features, radius);
    if (findings.size() == before && left < LEAST_WOOD) {
      String taken = features.hollow().isPresent() ? "a hollow and a slot" : "a slot";
      tooMuch(i, "slot", taken + " that leave under 1 % of its wood", 2 * radius);
    }
  }

  private void slot(int i, Slot slot, double radius) {
    if (!(slot.depth() < 2 * radius)) {
      tooMuch(i, "slot", deep("a slot", slot.depth()), 2 * radius);
    } else {
      within(i, "slot", "a slot", slot.width(), 2 * radius);
    }
  }

  private void within(int i, String field, String what, double width, double wood) {
    if (!(width < wood)) {
      tooMuch(i, field, what + " " + Amount.millimetres(width) + " wide", wood);
    }
  }

  private static String deep(String what, double depth) {
    return what + " " + Amount.millimetres(depth) + " deep";
  }

  private void tooMuch(int i, String field, String what, double wood) {
    String id = layout.segments.get(i).id();
    findings.add(
        Finding.fault(
            List.of(id),
            field(i, field),
            new Words(
                "weak-spot-too-large",
                String.format(
                    Locale.ROOT,
                    "\"%s\" has %s, and its wood is %s thick at the thin end",
                    id,
                    what,
                    Amount.millimetres(wood)),
                "Measure both again, under the bark; where nothing is left, cut the segment off"
                    + " there")));
  }

  /** Share of the round wood that hollow and slot leave, by strips along the slot's depth [1]. */
  private static double woodLeft(Features features, double radius) {
    double hole = features.hollow().orElse(0) / 2;
    double width = features.slot().map(Slot::width).orElse(0.0) / 2;
    double floor = radius - features.slot().map(Slot::depth).orElse(0.0);
    double area = 0;
    for (int k = 0; k < STRIPS; k++) {
      double z = radius * ((k + 0.5) * 2 / STRIPS - 1);
      double outside = Math.sqrt(radius * radius - z * z);
      double inside = Math.sqrt(Math.max(0, hole * hole - z * z));
      double gone = z > floor ? Math.max(inside, Math.min(width, outside)) : inside;
      area += 2 * Math.max(0, outside - gone) * 2 * radius / STRIPS;
    }
    return area / (Math.PI * radius * radius);
  }

  private static String field(int i, String name) {
    return "segments[" + i + "]." + name;
  }
}
