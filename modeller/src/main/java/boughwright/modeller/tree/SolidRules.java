// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** Whether segments with sound links are pieces of wood: a length, and wood inside the bark. */
final class SolidRules {
  /** A micrometre: below what any rule measures [m]. */
  private static final double NO_LENGTH = 1e-6;

  /** Nodes closer than this are one point to a person with a tape [m]. */
  private static final double ONE_POINT = 1e-5;

  private final Layout layout;
  private final List<Finding> findings = new ArrayList<>();

  /** A point rounded to where a tape can tell it from others. */
  private record Cell(long x, long y, long z) {}

  private SolidRules(Layout layout) {
    this.layout = layout;
  }

  static List<Finding> faults(Layout layout, OptionalDouble bark) {
    SolidRules rules = new SolidRules(layout);
    for (int i = 0; i < layout.segments.size(); i++) {
      rules.length(i);
      rules.bark(i, bark);
    }
    return rules.findings;
  }

  static List<Finding> warnings(Layout layout) {
    SolidRules rules = new SolidRules(layout);
    Map<Cell, Integer> ends = new HashMap<>();
    for (int i = 0; i < layout.segments.size(); i++) {
      rules.sameEnd(i, ends);
      rules.insideParent(i);
      rules.continuesMidway(i);
    }
    return rules.findings;
  }

  private void length(int i) {
    if (!(layout.length(i) > NO_LENGTH)) {
      findings.add(
          Finding.fault(
              List.of(id(i)),
              field(i, "end_mm"),
              new Words(
                  "no-length",
                  "\"" + id(i) + "\" has no length: it ends where it starts",
                  "Measure its end again, or leave the segment out")));
    }
  }

  private void bark(int i, OptionalDouble treeBark) {
    Segment segment = layout.segments.get(i);
    OptionalDouble bark = segment.bark().isPresent() ? segment.bark() : treeBark;
    double thinnest = Math.min(segment.caliperStart(), segment.caliperEnd());
    if (bark.isPresent() && !(thinnest / 2 > bark.getAsDouble())) {
      String found =
          String.format(
              Locale.ROOT,
              "\"%s\" is %s thick with %s of bark on each side: no wood is left",
              id(i),
              Amount.millimetres(thinnest),
              Amount.millimetres(bark.getAsDouble()));
      String remedy =
          segment.bark().isPresent()
              ? "Correct its bark_mm or its caliper"
              : "Give this segment its own, smaller bark_mm";
      findings.add(
          Finding.fault(
              List.of(id(i)),
              field(i, segment.bark().isPresent() ? "bark_mm" : "caliper_end_mm"),
              new Words("no-wood", found, remedy)));
    }
  }

  private void sameEnd(int i, Map<Cell, Integer> ends) {
    Point3 end = layout.segments.get(i).end();
    Cell cell =
        new Cell(
            Math.round(end.x() / ONE_POINT),
            Math.round(end.y() / ONE_POINT),
            Math.round(end.z() / ONE_POINT));
    Integer other = ends.putIfAbsent(cell, i);
    if (other != null) {
      findings.add(
          Finding.warning(
              List.of(id(i), id(other)),
              field(i, "end_mm"),
              new Words(
                  "same-end",
                  String.format(
                      Locale.ROOT, "\"%s\" and \"%s\" end at the same point", id(other), id(i)),
                  "Check both ends; two branches do not end in one point")));
    }
  }

  private void insideParent(int i) {
    int parent = layout.parent[i];
    if (parent == Skeleton.NONE || layout.joint[i] != Joint.UNION) {
      return;
    }
    if (Nearness.of(layout, parent, layout.segments.get(i).end()).inside()) {
      findings.add(
          Finding.warning(
              List.of(id(i), id(parent)),
              field(i, "end_mm"),
              new Words(
                  "inside-parent",
                  String.format(
                      Locale.ROOT,
                      "\"%s\" lies wholly inside the wood of \"%s\"",
                      id(i),
                      id(parent)),
                  "It starts on the axis of its parent; measure its end outside the parent's bark")));
    }
  }

  private void continuesMidway(int i) {
    Segment segment = layout.segments.get(i);
    if (layout.parent[i] != Skeleton.NONE
        && layout.joint[i] == Joint.CONTINUES
        && segment.along() < 1) {
      findings.add(
          Finding.warning(
              List.of(id(i), id(layout.parent[i])),
              field(i, "joins"),
              new Words(
                  "continues-midway",
                  String.format(
                      Locale.ROOT,
                      "\"%s\" continues \"%s\" but starts before its end",
                      id(i),
                      id(layout.parent[i])),
                  "Write \"union\" for a branch, or start it at the end of its parent")));
    }
  }

  private String id(int i) {
    return layout.segments.get(i).id();
  }

  private static String field(int i, String name) {
    return "segments[" + i + "]." + name;
  }
}
