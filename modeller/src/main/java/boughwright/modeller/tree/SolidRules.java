// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.problem.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
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
    Map<List<Long>, Integer> ends = new HashMap<>();
    for (int i = 0; i < layout.segments.size(); i++) {
      rules.sameEnd(i, ends);
      rules.insideParent(i);
      rules.continuesMidway(i);
    }
    return rules.findings;
  }

  private void length(int i) {
    if (!(layout.length(i) > NO_LENGTH)) {
      add(
          Severity.FAULT,
          List.of(id(i)),
          field(i, "end_mm"),
          "no-length",
          "\"" + id(i) + "\" has no length: it ends where it starts",
          "Measure its end again, or leave the segment out");
    }
  }

  private void bark(int i, OptionalDouble treeBark) {
    Segment segment = layout.segments.get(i);
    OptionalDouble bark = segment.bark().isPresent() ? segment.bark() : treeBark;
    double thinnest = Math.min(segment.caliperStart(), segment.caliperEnd());
    if (bark.isPresent() && !(thinnest / 2 > bark.getAsDouble())) {
      String found =
          String.format(
              "\"%s\" is %s thick with %s of bark on each side: no wood is left",
              id(i), Amount.millimetres(thinnest), Amount.millimetres(bark.getAsDouble()));
      String remedy =
          segment.bark().isPresent()
              ? "Correct its bark_mm or its caliper"
              : "Give this segment its own, smaller bark_mm";
      add(
          Severity.FAULT,
          List.of(id(i)),
          field(i, segment.bark().isPresent() ? "bark_mm" : "caliper_end_mm"),
          "no-wood",
          found,
          remedy);
    }
  }

  private void sameEnd(int i, Map<List<Long>, Integer> ends) {
    var end = layout.segments.get(i).end();
    List<Long> cell =
        List.of(
            Math.round(end.x() / ONE_POINT),
            Math.round(end.y() / ONE_POINT),
            Math.round(end.z() / ONE_POINT));
    Integer other = ends.putIfAbsent(cell, i);
    if (other != null) {
      add(
          Severity.WARNING,
          List.of(id(i), id(other)),
          field(i, "end_mm"),
          "same-end",
          String.format("\"%s\" and \"%s\" end at the same point", id(other), id(i)),
          "Check both ends; two branches do not end in one point");
    }
  }

  private void insideParent(int i) {
    int parent = layout.parent[i];
    if (parent == Skeleton.NONE || layout.joint[i] != Joint.UNION) {
      return;
    }
    if (Nearness.of(layout, parent, layout.segments.get(i).end()).inside()) {
      add(
          Severity.WARNING,
          List.of(id(i), id(parent)),
          field(i, "end_mm"),
          "inside-parent",
          String.format("\"%s\" lies wholly inside the wood of \"%s\"", id(i), id(parent)),
          "It starts on the axis of its parent; measure its end outside the parent's bark");
    }
  }

  private void continuesMidway(int i) {
    Segment segment = layout.segments.get(i);
    if (layout.parent[i] != Skeleton.NONE
        && layout.joint[i] == Joint.CONTINUES
        && segment.along() < 1) {
      add(
          Severity.WARNING,
          List.of(id(i), id(layout.parent[i])),
          field(i, "joins"),
          "continues-midway",
          String.format(
              "\"%s\" continues \"%s\" but starts before its end", id(i), id(layout.parent[i])),
          "Write \"union\" for a branch, or start it at the end of its parent");
    }
  }

  private String id(int i) {
    return layout.segments.get(i).id();
  }

  private static String field(int i, String name) {
    return "segments[" + i + "]." + name;
  }

  private void add(
      Severity severity,
      List<String> subjects,
      String field,
      String kind,
      String found,
      String remedy) {
    findings.add(new Finding(severity, subjects, field, kind, found, remedy));
  }
}
