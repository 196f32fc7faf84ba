// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.scene.Capsules;
import boughwright.viewer.scene.LiveTree;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Pose;
import boughwright.viewer.scene.Visibility;
import boughwright.viewer.window.look.Measure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** What is written beside segments when a person asks for it: names, calipers, heights. */
final class Notes {
  /** More than this no screen has room for; the thickest come first. */
  private static final int MOST = 60;

  private Notes() {}

  static List<Mark.Note> of(Showing showing, DisplayUnits units, Pose pose) {
    Looks looks = showing.looks();
    List<Mark.Note> notes = new ArrayList<>();
    boolean names = looks.has(Looks.Extra.NAMES);
    boolean calipers = looks.has(Looks.Extra.CALIPERS);
    boolean heights = looks.has(Looks.Extra.HEIGHTS);
    if (!names && !calipers && !heights) {
      return notes;
    }
    LiveTree tree = showing.tree();
    Capsules wood = tree.capsules(pose);
    for (int i : thickestFirst(tree, looks)) {
      List<String> words = new ArrayList<>();
      Segment segment = tree.skeleton().segment(i);
      if (names) {
        words.add(name(segment.id()));
      }
      if (calipers) {
        words.add(calipers(segment, units));
      }
      if (!words.isEmpty()) {
        notes.add(new Mark.Note(wood.axis(i, 0.55), words));
      }
      if (heights && isTip(tree, i)) {
        Point3 tip = wood.axis(i, 1);
        notes.add(new Mark.Note(tip, List.of(length(tip.z(), units) + " high")));
      }
    }
    return notes;
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

  /** A place in words, such as "b3, 40 mm along". */
  static String place(LiveTree tree, Spot spot, DisplayUnits units) {
    double along = spot.along() * tree.skeleton().length(tree.skeleton().indexOf(spot.segment()));
    return name(spot.segment()) + ", " + length(along, units) + " along";
  }
}
