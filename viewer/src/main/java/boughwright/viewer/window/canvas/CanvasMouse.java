// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import javax.swing.SwingUtilities;
import javax.swing.event.MouseInputAdapter;

/** What the mouse does on the tree: a tool's work, else turning, moving, scaling and picking. */
final class CanvasMouse extends MouseInputAdapter {
  /** A press that moves less than this is a click [user pixels]. */
  private static final double CLICK = 4;

  private static final double ZOOM_PER_NOTCH = 1.15;

  private final Target target;
  private final Viewpoint viewpoint;
  private Drag drag = Drag.NONE;
  private int startX;
  private int startY;
  private int lastX;
  private int lastY;
  private boolean moved;

  /** What a drag does. */
  private enum Drag {
    NONE,
    TURN,
    MOVE,
    TOOL
  }

  /** Who is told of what the mouse does beside changing the view. */
  interface Target {
    /** Whether a tool takes the drag that begins. */
    boolean pressed(Pointer pointer);

    void dragged(Pointer pointer);

    void released(Pointer pointer);

    /** The mouse is over a place with no button down. */
    void hovered(Pointer pointer);

    /** The mouse has left. */
    void left();

    /** A click that no tool took. */
    void clicked(Pointer pointer);
  }

  CanvasMouse(Target target, Viewpoint viewpoint) {
    this.target = target;
    this.viewpoint = viewpoint;
  }

  private static Pointer pointer(MouseEvent event, int clicks) {
    return new Pointer(
        event.getX(),
        event.getY(),
        event.isShiftDown(),
        event.isControlDown() || event.isMetaDown(),
        clicks);
  }

  @Override
  public void mousePressed(MouseEvent event) {
    event.getComponent().requestFocusInWindow();
    if (drag != Drag.NONE) {
      return;
    }
    startX = event.getX();
    startY = event.getY();
    lastX = startX;
    lastY = startY;
    moved = false;
    if (SwingUtilities.isLeftMouseButton(event)) {
      boolean taken = target.pressed(pointer(event, event.getClickCount()));
      drag = taken ? Drag.TOOL : event.isShiftDown() ? Drag.MOVE : Drag.TURN;
    } else {
      drag = Drag.MOVE;
    }
  }

  @Override
  public void mouseDragged(MouseEvent event) {
    double dx = event.getX() - lastX;
    double dy = event.getY() - lastY;
    if (!moved && Math.hypot(event.getX() - startX, event.getY() - startY) < CLICK) {
      return;
    }
    moved = true;
    lastX = event.getX();
    lastY = event.getY();
    switch (drag) {
      case TURN -> viewpoint.turn(dx, dy);
      case MOVE -> viewpoint.move(dx, dy);
      case TOOL -> target.dragged(pointer(event, event.getClickCount()));
      case NONE -> {
        // Pressed elsewhere.
      }
    }
  }

  @Override
  public void mouseReleased(MouseEvent event) {
    Drag ended = drag;
    drag = Drag.NONE;
    if (ended == Drag.TOOL) {
      target.released(pointer(event, event.getClickCount()));
    } else if (!moved && ended != Drag.NONE && SwingUtilities.isLeftMouseButton(event)) {
      target.clicked(pointer(event, event.getClickCount()));
    }
    target.hovered(pointer(event, 0));
  }

  @Override
  public void mouseMoved(MouseEvent event) {
    target.hovered(pointer(event, 0));
  }

  @Override
  public void mouseExited(MouseEvent event) {
    target.left();
  }

  @Override
  public void mouseWheelMoved(MouseWheelEvent event) {
    double factor = Math.pow(ZOOM_PER_NOTCH, -event.getPreciseWheelRotation());
    viewpoint.zoom(factor, event.getX(), event.getY());
  }

  /** Forgets the drag that is under way. */
  void abort() {
    drag = Drag.NONE;
  }
}
