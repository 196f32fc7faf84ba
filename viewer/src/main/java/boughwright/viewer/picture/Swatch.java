// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.scene.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/**
 * A small piece of something drawn, beside its words in a key.
 *
 * @param kind how it is drawn
 * @param colours its colours, from left to right
 */
record Swatch(Kind kind, List<Color> colours) {
  private static final double WIDTH = 34;
  private static final double STEP_WIDTH = 17;
  private static final double HEIGHT = 16;
  private static final Color GROOVE = Ink.of(Palette.GROOVE);

  /** How a thing looks. */
  enum Kind {
    SOLID(1),
    GHOST(0.35),
    REMOVED(0.12),
    STAGES(0.45),
    CONTAINER(0.13),
    FOLIAGE(0.7),
    OUTLINE(0),
    COIL(1),
    SLOT(1),
    CUTS(1);

    private final double fill;

    Kind(double fill) {
      this.fill = fill;
    }
  }

  Swatch {
    colours = List.copyOf(colours);
  }

  static Swatch solid() {
    return new Swatch(Kind.SOLID, List.of(Ink.of(Palette.BARK)));
  }

  static Swatch ghost() {
    return new Swatch(Kind.GHOST, List.of(Ink.of(Palette.GHOST)));
  }

  static Swatch removed() {
    return new Swatch(Kind.REMOVED, List.of(Ink.of(Palette.REMOVED)));
  }

  static Swatch stages(List<Color> tones) {
    return new Swatch(Kind.STAGES, tones);
  }

  static Swatch outline() {
    return new Swatch(Kind.OUTLINE, List.of(Ink.STAYS));
  }

  static Swatch foliage() {
    return new Swatch(Kind.FOLIAGE, List.of(Ink.of(Palette.LEAVES)));
  }

  static Swatch container() {
    return new Swatch(Kind.CONTAINER, List.of(Ink.of(Palette.CONTAINER)));
  }

  static Swatch coil(Color metal) {
    return new Swatch(Kind.COIL, List.of(metal));
  }

  /** Bark with a groove along it. */
  static Swatch slot() {
    return new Swatch(Kind.SLOT, List.of(Ink.of(Palette.BARK)));
  }

  /** Bark with cuts across it. */
  static Swatch cuts() {
    return new Swatch(Kind.CUTS, List.of(Ink.of(Palette.BARK)));
  }

  /** Its width on the page of the default size [pixels]. */
  double width() {
    return Math.max(WIDTH, STEP_WIDTH * colours.size());
  }

  /** Draws it with its left end at x, its middle at y [pixels]. */
  void draw(Page page, double x, double y) {
    double width = page.u(width());
    double height = page.u(HEIGHT);
    Shape shape = new RoundRectangle2D.Double(x, y - height / 2, width, height, height, height);
    Shape before = page.pen().getClip();
    page.pen().clip(shape);
    double step = width / colours.size();
    for (int n = 0; n < colours.size(); n++) {
      Color colour = kind == Kind.COIL ? Ink.of(Palette.BARK) : colours.get(n);
      page.pen().setColor(Ink.faded(colour, kind.fill));
      page.pen()
          .fill(new java.awt.geom.Rectangle2D.Double(x + n * step, y - height / 2, step, height));
    }
    if (kind == Kind.REMOVED) {
      slants(page, x, y, new Slant(Ink.faded(colours.get(0), 0.6), 1.2, 6));
    } else if (kind == Kind.COIL) {
      slants(page, x, y, new Slant(Ink.TEXT, 6.4, 11));
      slants(page, x, y, new Slant(colours.get(0), 4.6, 11));
    } else if (kind == Kind.SLOT) {
      page.rule(new Line2D.Double(x + page.u(5), y, x + width - page.u(5), y), 3, GROOVE);
    } else if (kind == Kind.CUTS) {
      for (double at = x + page.u(9); at < x + width - page.u(4); at += page.u(8)) {
        page.rule(new Line2D.Double(at, y, at, y + height), 2.4, GROOVE);
      }
    }
    page.pen().setClip(before);
    border(page, shape);
  }

  private void border(Page page, Shape shape) {
    if (kind == Kind.OUTLINE) {
      float[] dash = {(float) page.u(5), (float) page.u(3)};
      page.pen().setColor(colours.get(0));
      page.pen().setStroke(new BasicStroke((float) page.u(1.8), 0, 1, 10, dash, 0));
      page.pen().draw(shape);
    } else if (kind.fill < 1) {
      page.pen().setColor(Ink.faded(colours.get(colours.size() - 1), 0.8));
      page.pen().setStroke(new BasicStroke((float) page.u(1.2)));
      page.pen().draw(shape);
    }
  }

  /** Slanted strokes: colour, width and distance on the page of the default size [pixels]. */
  private record Slant(Color colour, double width, double distance) {}

  private void slants(Page page, double x, double y, Slant slant) {
    page.pen().setColor(slant.colour());
    page.pen().setStroke(new BasicStroke((float) page.u(slant.width())));
    double half = page.u(HEIGHT) / 2;
    double lean = kind == Kind.COIL ? half / 2 : half;
    for (double at = -half; at < page.u(width()) + half; at += page.u(slant.distance())) {
      page.pen().draw(new Line2D.Double(x + at - lean, y + half, x + at + lean, y - half));
    }
  }
}
