// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.choose;

import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JComponent;

/** A small picture of a front; blank until it is drawn. */
final class PictureView extends JComponent {
  private static final long serialVersionUID = 1L;

  /** Size of a picture [user pixels at 100 %]. */
  static final Dimension SIZE = new Dimension(120, 150);

  private transient Optional<BufferedImage> picture = Optional.empty();

  void show(Optional<BufferedImage> other) {
    picture = other;
    repaint();
  }

  boolean isDrawn() {
    return picture.isPresent();
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(Theme.px(SIZE.width), Theme.px(SIZE.height));
  }

  @Override
  public Dimension getMinimumSize() {
    return getPreferredSize();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D pen = (Graphics2D) graphics.create();
    pen.setColor(Theme.colour(Shade.PAPER));
    pen.fillRect(0, 0, getWidth(), getHeight());
    if (picture.isPresent()) {
      BufferedImage image = picture.get();
      double part =
          Math.min(
              (double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
      int wide = (int) Math.round(part * image.getWidth());
      int high = (int) Math.round(part * image.getHeight());
      pen.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
      pen.drawImage(image, (getWidth() - wide) / 2, (getHeight() - high) / 2, wide, high, null);
    }
    pen.setColor(Theme.colour(Shade.RULE));
    pen.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
    pen.dispose();
  }
}
