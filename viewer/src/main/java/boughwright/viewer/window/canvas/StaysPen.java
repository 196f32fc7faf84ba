// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.look.Theme;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;

/** Outlines limbs where they would be when everything is taken off: thin, dotted. */
final class StaysPen {
  private static final float WIDTH = 1.6f;
  private static final float[] DOTS = {2, 4};

  private StaysPen() {}

  static void outline(Graphics2D pen, Camera camera, StagesView.Outline limb) {
    Stroke before = pen.getStroke();
    pen.setColor(Theme.colour(Shade.INK));
    pen.setStroke(
        new BasicStroke(WIDTH, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, DOTS, 0));
    pen.draw(PickPen.shape(limb, camera, 0));
    pen.setStroke(before);
  }
}
