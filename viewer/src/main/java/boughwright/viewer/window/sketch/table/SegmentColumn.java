// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.sketch.entry.Polar;
import boughwright.viewer.window.sketch.entry.Shown;
import boughwright.viewer.window.sketch.entry.Typed;

/** A column of the table of segments. */
enum SegmentColumn {
  ID("Segment", "", 130, 90, "Its name"),
  PARENT("Grows on", "", 92, 52, "The segment it starts on"),
  ALONG("At", "", 62, 57, "Where on that segment it starts: 0 is its start, 1 its end"),
  KIND("Kind", "", 96, 90, "Trunk, branch, root, sacrifice or deadwood"),
  AZIMUTH("Azimuth", "\u00B0", 82, 72, "Where it points: 0 toward you, 90 your left, from above"),
  ELEVATION("Elevation", "\u00B0", 90, 68, "How far it rises above level; down is negative"),
  LENGTH("Length", "length", 76, 58, "Along its axis, from the axis of what it grows on"),
  CALIPER_START("Caliper start", "length", 84, 64, "Over bark, just outside the collar"),
  CALIPER_END("Caliper end", "length", 84, 60, "Over bark at its end"),
  JOINS("Joins", "", 84, 84, "Goes on: the same shoot. Branch: a branch on it"),
  BARK("Bark", "length", 68, 57, "One layer of its bark; empty for the tree's"),
  LIVE("Live", "", 56, 42, "Whether it carries live growth: yes, no or empty");

  private final String title;
  private final String unit;
  private final int width;
  private final int least;
  private final String tip;

  SegmentColumn(String title, String unit, int width, int least, String tip) {
    this.title = title;
    this.unit = unit;
    this.width = width;
    this.least = least;
    this.tip = tip;
  }

  String title() {
    return title;
  }

  /** The heading in two lines, with the unit of what stands below it. */
  String heading(LengthUnit length) {
    String shown = unit.equals("length") ? length.symbol() : unit;
    String first = title.replaceFirst(" .*", "");
    String rest = (title.substring(first.length()) + " " + shown).strip();
    return "<html>" + first + "<br>" + (rest.isEmpty() ? "&nbsp;" : rest) + "</html>";
  }

  /** Width that is wide enough to read [user pixels at 100 %]. */
  int width() {
    return width;
  }

  /** The least width its cells can be read in [user pixels at 100 %]. */
  int least() {
    return least;
  }

  String tip() {
    return tip;
  }

  boolean isNumber() {
    return !unit.isEmpty() || this == ALONG;
  }

  /** Whether a cell may be empty. */
  boolean isOptional() {
    return this == BARK || this == LIVE;
  }

  /** What stands in the cell of a segment. */
  String text(Skeleton skeleton, int i, LengthUnit length) {
    Segment segment = skeleton.segment(i);
    boolean base = segment.parent().isEmpty();
    return switch (this) {
      case ID -> segment.id();
      case PARENT -> segment.parent().orElse("");
      case ALONG -> base ? "" : Shown.fraction(segment.along());
      case KIND -> Typed.word(segment.kind());
      case AZIMUTH -> Shown.azimuth(course(skeleton, i).azimuth());
      case ELEVATION -> Shown.degrees(course(skeleton, i).elevation());
      case LENGTH -> Shown.length(skeleton.length(i), length);
      case CALIPER_START -> Shown.length(segment.caliperStart(), length);
      case CALIPER_END -> Shown.length(segment.caliperEnd(), length);
      case JOINS -> base ? "" : joins(skeleton.joint(i));
      case BARK ->
          segment.bark().isPresent() ? Shown.length(segment.bark().getAsDouble(), length) : "";
      case LIVE -> segment.live().map(live -> live ? "yes" : "no").orElse("");
    };
  }

  /** Where a segment points. */
  static Polar course(Skeleton skeleton, int i) {
    return Polar.between(skeleton.start(i), skeleton.end(i));
  }

  private static String joins(Joint joint) {
    return joint == Joint.CONTINUES ? "goes on" : "branch";
  }
}
