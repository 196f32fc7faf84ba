// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.CanvasTool;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.AbstractButton;

/** Which tool the mouse holds, and the buttons that give it: at most one of them is pressed. */
public final class Tools {
  private final Canvas canvas;
  private final Map<AbstractButton, CanvasTool> tools = new LinkedHashMap<>();
  private Optional<AbstractButton> held = Optional.empty();

  public Tools(Canvas canvas) {
    this.canvas = canvas;
  }

  /** Ties a tool to a button that stays pressed while the mouse holds it. */
  public void join(AbstractButton button, CanvasTool tool) {
    tools.put(button, tool);
    button.addActionListener(
        event -> {
          if (button.isSelected()) {
            take(button);
          } else {
            none();
          }
        });
  }

  /** Takes the tool of a button, or lays it down if it is held. */
  public void toggle(AbstractButton button) {
    if (held.equals(Optional.of(button))) {
      none();
    } else {
      take(button);
    }
  }

  private void take(AbstractButton button) {
    held = Optional.of(button);
    tools.keySet().forEach(one -> one.setSelected(one == button));
    canvas.use(tools.get(button));
  }

  /** Lays the tool down; the mouse turns the tree again. */
  public void none() {
    if (held.isPresent()) {
      held = Optional.empty();
      tools.keySet().forEach(one -> one.setSelected(false));
      canvas.useNone();
    }
  }

  public boolean isHeld() {
    return held.isPresent();
  }
}
