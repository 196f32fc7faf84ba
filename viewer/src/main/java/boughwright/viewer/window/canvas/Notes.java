// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.scene.Capsules;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Visibility;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** What is written beside segments when a person asks for it: names, calipers, heights. */
final class Notes {
  /** More than this no screen has room for; the thickest come first. */
  private static final int MOST = 60;

  /** Of more picked segments the outlines tell enough. */
  private static final int MOST_PICKED = 12;

  private Notes() {}

  static List<Mark.Note> of(Showing showing, Workspace work, Supplier<Capsules> shown) {
    Looks looks = showing.looks();
    LiveTree tree = showing.tree();
    List<Mark.Note> notes = new ArrayList<>();
    boolean names = looks.has(Looks.Extra.NAMES);
    boolean calipers = looks.has(Looks.Extra.CALIPERS);
    boolean heights = looks.has(Looks.Extra.HEIGHTS);
    boolean any = names || calipers || heights;
    if (!any && work.selection().segments().isEmpty()) {
      return notes;
    }
    Capsules wood = shown.get();
    for (String id : work.selection().segments()) {
      boolean isSeen = looks.visibility().of(id) != Visibility.Way.HIDDEN;
      if (notes.size() < MOST_PICKED && isSeen && isThere(tree, id)) {
        int i = tree.skeleton().indexOf(id);
        Segment segment = tree.skeleton().segment(i);
        notes.add(note(wood, i, 0.6, List.of(label(segment, work.units())), true));
      }
    }
    if (!any) {
      return notes;
    }
    for (int i : thickestFirst(tree, looks)) {
      Segment segment = tree.skeleton().segment(i);
      List<String> words = new ArrayList<>();
      if (names) {
        words.add(name(segment.id()));
      }
      if (calipers) {
        words.add(calipers(segment, work.units()));
      }
      if (!words.isEmpty() && !work.selection().has(segment.id())) {
        notes.add(note(wood, i, 0.55, List.of(String.join("  ", words)), false));
      }
      if (heights && isTip(tree, i) && wood.axis(i, 1).z() > 0) {
        String height = height(wood.axis(i, 1).z(), work.units());
        notes.add(note(wood, i, 1, List.of(height), false));
      }
    }
    return notes;
  }

  private static boolean isThere(LiveTree tree, String id) {
    return tree.skeleton().has(id) && !tree.kept().isGone(tree.skeleton().indexOf(id));
  }

  private static Mark.Note note(
      Capsules wood, int segment, double along, List<String> words, boolean picked) {
    return new Mark.Note(wood.axis(segment, along), wood.radius(segment, along), words, picked);
  }

  /** Name and calipers of a segment. */
  static String label(Segment segment, DisplayUnits units) {
    return name(segment.id()) + "  " + calipers(segment, units);
  }

  private static List<Integer> thickestFirst(LiveTree tree, Looks looks) {
    Skeleton skeleton = tree.skeleton();
    return IntStream.range(0, skeleton.size())
        .filter(i -> !tree.kept().isGone(i))
        .filter(i -> looks.visibility().of(skeleton.segment(i).id()) == Visibility.Way.SHOWN)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -skeleton.segment(i).caliperStart()))
        .limit(MOST)
        .toList();
  }

  private static boolean isTip(LiveTree tree, int segment) {
    return tree.kept().left(segment) < 1
        || tree.skeleton().children(segment).stream()
            .noneMatch(c -> tree.skeleton().segment(c).along() == 1 && !tree.kept().isGone(c));
  }

  /** An id as it is written. */
  static String name(String id) {
    return VisibleText.of(id);
  }

  /** The calipers of a segment, such as "18.4 to 12 mm". */
  static String calipers(Segment segment, DisplayUnits units) {
    String from = Measure.LENGTH.show(segment.caliperStart(), units);
    String to = Measure.LENGTH.show(segment.caliperEnd(), units);
    String unit = " " + Measure.LENGTH.unit(units);
    return from.equals(to) ? from + unit : from + " to " + to + unit;
  }

  static String length(double length, DisplayUnits units) {
    return Measure.LENGTH.show(length, units) + " " + Measure.LENGTH.unit(units);
  }

  /** A height; the last tenth of a millimetre is more than a tape tells. */
  private static String height(double height, DisplayUnits units) {
    double told = units.length() == LengthUnit.INCH ? height : Math.round(height * 1000) / 1000.0;
    return length(told, units) + " high";
  }
}
