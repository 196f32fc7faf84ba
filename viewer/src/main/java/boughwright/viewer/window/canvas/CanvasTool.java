// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.awt.Graphics2D;

/** What the main mouse button does on the canvas; all calls come on the event thread. */
public interface CanvasTool {
  /** What it does, in a few words, shown under the tree. */
  String hint();

  /**
   * The main button went down.
   *
   * @return whether the tool takes the drag that follows; otherwise the tree is turned
   */
  boolean pressed(Pointer pointer);

  /** The mouse moved with the button down, after the tool took the press. */
  void dragged(Pointer pointer);

  /** The button went up, after the tool took the press. */
  void released(Pointer pointer);

  /** The mouse moved with no button down. */
  void moved(Pointer pointer);

  /** The person pressed Escape, or another tool comes: forget what was begun. */
  void cancelled();

  /** Whether it has handles over the tree, which follow the mouse. */
  default boolean hasHandles() {
    return true;
  }

  /** Paints its handles over the tree, in user pixels. */
  void paint(Graphics2D pen);
}
