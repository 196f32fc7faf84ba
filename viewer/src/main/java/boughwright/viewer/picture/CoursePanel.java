// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.physics.stage.Course;
import java.awt.geom.Line2D;
import java.util.stream.DoubleStream;

/** What is left of a bend over time, in a strip under the views. */
final class CoursePanel {
  private static final double HEIGHT_SHARE = 0.185;
  private static final double LEAST = 222;
  private static final double MOST = 318;
  private static final double GAP = 26;

  /** Wider than this the curves would only be stretched. */
  private static final double MOST_WIDTH = 1000;

  private final Page page;
  private final Course course;

  CoursePanel(Page page, Course course) {
    this.page = page;
    this.course = course;
  }

  /** Draws it at the foot of the room there is, and gives the room it leaves above. */
  Rect draw(Rect room) {
    double end =
        DoubleStream.concat(
                course.samples().stream().mapToDouble(Course.Sample::time),
                course.steps().stream().mapToDouble(Course.Step::time))
            .max()
            .orElse(0);
    if (course.samples().size() < 2 || !(end > 0)) {
      return room;
    }
    double share = HEIGHT_SHARE * page.image().getHeight();
    double height = Math.min(page.u(MOST), Math.max(page.u(LEAST), share));
    Rect strip = new Rect(room.x(), room.bottom() - height, room.width(), height);
    double line = strip.y() - page.u(GAP) / 2;
    page.rule(new Line2D.Double(strip.x(), line, strip.right(), line), 1, Ink.FRAME);
    if (TensionPlot.lines(course).isEmpty()) {
      double width = Math.min(strip.width(), page.u(MOST_WIDTH));
      new SpringbackPlot(page, course)
          .draw(new Rect(strip.x(), strip.y(), width, strip.height()), end);
    } else {
      double half = (strip.width() - page.u(GAP)) / 2;
      new TensionPlot(page, course).draw(new Rect(strip.x(), strip.y(), half, height), end);
      new SpringbackPlot(page, course)
          .draw(new Rect(strip.x() + half + page.u(GAP), strip.y(), half, height), end);
    }
    return new Rect(room.x(), room.y(), room.width(), room.height() - height - page.u(GAP));
  }
}
