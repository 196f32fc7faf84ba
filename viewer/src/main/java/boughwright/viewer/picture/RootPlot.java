// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.Level;
import boughwright.modeller.design.ground.RootBase;
import boughwright.modeller.design.ground.RootLevel;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Point3;
import boughwright.viewer.scene.GroundWords;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** The root base seen from above, the viewer at the lower edge; each root with its height. */
final class RootPlot {
  /** Room for the words round the roots [pixels]. */
  private static final double WORDS = 96;

  private static final double CROSS = 11;

  /** From line to line of the words of a root [pixels]. */
  private static final double LINE = 19;

  /** Words stand over or under a root that goes less than this part of its way sideways [1]. */
  private static final double STEEP = 0.3;

  private static final double SWATCH = 26;
  private static final double KEY_GAP = 30;

  private final Page page;
  private final GroundAnswer answer;
  private final RootBase base;
  private double scale;
  private double middleX;
  private double middleY;

  RootPlot(Page page, GroundAnswer answer) {
    this.page = page;
    this.answer = answer;
    base = answer.base().orElseThrow();
  }

  /** Draws it, and gives how many pixels a metre has. */
  double draw(Rect room) {
    double reach = reach();
    double half = Math.min(room.width(), room.height()) / 2 - page.u(WORDS);
    scale = half / reach;
    middleX = room.centreX();
    middleY = room.y() + room.height() / 2;
    base.levels().forEach(this::root);
    double radius = base.trunk() / 2;
    Shape trunk = disc(Point3.ORIGIN, radius);
    fill(trunk, Ink.FRAME);
    outline(trunk, Ink.HAIR);
    base.levels().forEach(level -> words(level, reach));
    mass();
    page.write(
        "you stand here",
        middleX,
        room.bottom() - page.u(6),
        Page.Style.KEY_MORE.at(Page.Align.MIDDLE));
    return scale;
  }

  /** How far from the middle of the trunk base roots reach [m]. */
  private double reach() {
    double reach = base.trunk();
    for (RootLevel level : base.levels()) {
      for (Point3 at : level.line()) {
        reach = Math.max(reach, Math.hypot(at.x(), at.y()) + level.root().caliper() / 2);
      }
    }
    return reach;
  }

  static Color ink(Level.State state) {
    return switch (state) {
      case BURIED -> Ink.SOIL;
      case SHOWING -> Ink.STAYS;
      case CLEAR -> Ink.STRETCHED;
    };
  }

  private double x(Point3 at) {
    return middleX + scale * at.x();
  }

  private double y(Point3 at) {
    return middleY - scale * at.y();
  }

  private Shape disc(Point3 at, double radius) {
    double size = scale * radius;
    return new Ellipse2D.Double(x(at) - size, y(at) - size, 2 * size, 2 * size);
  }

  private void fill(Shape shape, Color colour) {
    page.ink(colour);
    page.pen().fill(shape);
  }

  private void outline(Shape shape, Color colour) {
    page.ink(colour);
    page.pen().setStroke(new BasicStroke((float) page.u(1.2)));
    page.pen().draw(shape);
  }

  private void root(RootLevel level) {
    Color colour = ink(level.then().state());
    List<Point3> line = level.line();
    fill(disc(line.get(0), level.root().caliper() / 2), colour);
    for (int n = 1; n < line.size(); n++) {
      Frustum wood = level.root().pieces().get(n - 1).wood();
      fill(piece(line.get(n - 1), line.get(n), wood.startRadius(), wood.endRadius()), colour);
      fill(disc(line.get(n), wood.endRadius()), colour);
    }
  }

  private Shape piece(Point3 from, Point3 to, double fromRadius, double toRadius) {
    double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
    double acrossX = length == 0 ? 0 : -(to.y() - from.y()) / length;
    double acrossY = length == 0 ? 0 : (to.x() - from.x()) / length;
    Path2D path = new Path2D.Double();
    double[][] corners = {
      {from.x() + fromRadius * acrossX, from.y() + fromRadius * acrossY},
      {to.x() + toRadius * acrossX, to.y() + toRadius * acrossY},
      {to.x() - toRadius * acrossX, to.y() - toRadius * acrossY},
      {from.x() - fromRadius * acrossX, from.y() - fromRadius * acrossY}
    };
    for (double[] corner : corners) {
      Point3 at = new Point3(corner[0], corner[1], 0);
      if (path.getCurrentPoint() == null) {
        path.moveTo(x(at), y(at));
      } else {
        path.lineTo(x(at), y(at));
      }
    }
    path.closePath();
    return path;
  }

  /** Name and height, beyond the end of the root. */
  private void words(RootLevel level, double reach) {
    Point3 tip = level.tip();
    double out = Math.hypot(tip.x(), tip.y());
    double away = out == 0 ? 0 : (out + 0.09 * reach) / out;
    Point3 at = new Point3(tip.x() * away, tip.y() * away, 0);
    boolean upright = Math.abs(tip.x()) < STEEP * out;
    Page.Align beside = tip.x() < 0 ? Page.Align.RIGHT : Page.Align.LEFT;
    Page.Align align = upright ? Page.Align.MIDDLE : beside;
    double shift = !upright ? 0 : page.u(tip.y() > 0 ? -LINE : LINE / 2);
    String height = GroundWords.height(level.then().axis()) + " mm";
    page.write(level.root().id(), x(at), y(at) + shift, Page.Style.LABEL.at(align));
    page.write(
        height.replace('-', '\u2212'),
        x(at),
        y(at) + shift + page.u(LINE),
        Page.Style.LABEL_MORE.at(align));
  }

  /** A cross where the centre of mass of the wood above stands. */
  private void mass() {
    Point3 at = answer.balance().above().centre();
    double arm = page.u(CROSS);
    page.rule(new Line2D.Double(x(at) - arm, y(at), x(at) + arm, y(at)), 2.4, Ink.TROUBLE);
    page.rule(new Line2D.Double(x(at), y(at) - arm, x(at), y(at) + arm), 2.4, Ink.TROUBLE);
  }

  /** What the colours mean; gives where it ends [pixels]. */
  double key(double x, double y) {
    double at = x;
    for (Level.State state : Level.State.values()) {
      double size = page.u(SWATCH);
      fill(new Rectangle2D.Double(at, y - size / 2, size, size / 2), ink(state));
      String words =
          switch (state) {
            case BURIED -> "start buried";
            case SHOWING -> "at the soil line";
            case CLEAR -> "in the air";
          };
      page.write(words, at + size + page.u(8), y, Page.Style.KEY);
      at += size + page.u(8 + KEY_GAP) + page.width(words, Page.Style.KEY);
    }
    return at;
  }
}
