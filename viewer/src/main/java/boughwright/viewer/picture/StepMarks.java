// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.stage.Course;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Marks over a plot what is done when; words that find no room are left out, marks are not. */
final class StepMarks {
  private static final double ROW = 18;
  private static final int ROWS = 2;
  private static final double GAP = 9;

  /** Steps nearer to each other than this on the page share their words. */
  private static final double TOGETHER = 5;

  private final Page page;
  private final Rect box;
  private final TimeScale x;
  private final List<Rect> taken = new ArrayList<>();

  /**
   * @param saidEnd where what is said over the plot ends; words of a second row go beside it
   *     [pixels]
   */
  StepMarks(Page page, Rect box, TimeScale x, double saidEnd) {
    this.page = page;
    this.box = box;
    this.x = x;
    double left = box.x() - page.u(100);
    double top = box.y() - page.u(8 + ROW) - page.u(20);
    taken.add(new Rect(left, top, saidEnd - left, page.u(24)));
  }

  /** Steps at about one time. */
  private record Group(double at, int order, List<String> words) {
    String all() {
      return String.join(", ", words);
    }
  }

  void draw(List<Course.Step> steps) {
    for (Course.Step step : steps) {
      double at = x.at(step.time());
      boolean look = step.act() == Course.Act.LOOK;
      Line2D line = new Line2D.Double(at, box.y() - page.u(4), at, box.bottom());
      if (look) {
        page.rule(
            new Line2D.Double(at, box.y() - page.u(4), at, box.y() + page.u(6)), 1.2, Ink.HAIR);
      } else {
        page.rule(line, 1, Ink.faded(Ink.HAIR, 0.8));
      }
    }
    List<Group> groups = new ArrayList<>(groups(steps));
    groups.sort(Comparator.comparingInt(Group::order).thenComparingDouble(Group::at));
    groups.forEach(this::write);
  }

  private List<Group> groups(List<Course.Step> steps) {
    List<Group> groups = new ArrayList<>();
    for (Course.Step step : steps) {
      double at = x.at(step.time());
      int last = groups.size() - 1;
      if (last >= 0 && at - groups.get(last).at() < page.u(TOGETHER)) {
        Group before = groups.get(last);
        List<String> words = new ArrayList<>(before.words());
        if (!words.contains(words(step.act()))) {
          words.add(words(step.act()));
        }
        groups.set(
            last, new Group(before.at(), Math.min(before.order(), order(step.act())), words));
      } else {
        groups.add(new Group(at, order(step.act()), List.of(words(step.act()))));
      }
    }
    return groups;
  }

  private void write(Group group) {
    String words = group.all();
    double width = page.width(words, Page.Style.STEP);
    double left = Math.min(Math.max(box.x(), group.at() - width / 2), box.right() - width);
    for (int row = 0; row < ROWS; row++) {
      double base = box.y() - page.u(8) - row * page.u(ROW);
      Rect place =
          new Rect(left - page.u(GAP) / 2, base - page.u(14), width + page.u(GAP), page.u(17));
      if (taken.stream().noneMatch(place::overlaps)) {
        taken.add(place);
        page.write(words, left, base, Page.Style.STEP);
        return;
      }
    }
  }

  private static int order(Course.Act act) {
    return switch (act) {
      case BEND -> 0;
      case RELEASE -> 1;
      case TIGHTEN -> 2;
      case LET_GO -> 3;
      case LOOK -> 4;
    };
  }

  static String words(Course.Act act) {
    return switch (act) {
      case BEND -> "bend";
      case LET_GO -> "let go";
      case TIGHTEN -> "tighten";
      case LOOK -> "look";
      case RELEASE -> "release";
    };
  }
}
