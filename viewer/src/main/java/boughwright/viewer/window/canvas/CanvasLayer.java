// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.awt.Graphics2D;

/** Something painted with the tree at every frame, in user pixels of the canvas. */
@FunctionalInterface
public interface CanvasLayer {
  void paint(Graphics2D pen);

  /** Where a layer lies. */
  enum Place {
    /** Behind the wood. */
    BEHIND,
    /** Over wood and labels. */
    OVER
  }
}
