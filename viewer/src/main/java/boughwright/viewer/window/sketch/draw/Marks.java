// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.viewer.scene.Camera.Pixel;
import java.awt.Graphics2D;
import java.util.List;

/** Marks that other tools of the sketch paint on the canvas, alike to those of this room. */
public final class Marks {
  private final Handles handles;

  public Marks(Graphics2D pen) {
    handles = new Handles(pen);
  }

  /** A place that was clicked. */
  public void spot(Pixel at) {
    handles.large(at);
  }

  /** A line between two places. */
  public void line(Pixel from, Pixel to) {
    handles.line(from, to);
  }

  /** Words beside a place. */
  public void words(Pixel at, String words) {
    handles.words(at, List.of(words));
  }
}
