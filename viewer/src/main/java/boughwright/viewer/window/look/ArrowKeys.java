// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.event.ActionEvent;
import java.awt.event.KeyEvent;
import java.util.Collections;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.DefaultButtonModel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;

/** Tab comes to a group of toggles once; arrow keys choose in it. */
final class ArrowKeys {
  private ArrowKeys() {}

  static void bind(JToggleButton button) {
    bind(button, 1, KeyEvent.VK_RIGHT, KeyEvent.VK_DOWN);
    bind(button, -1, KeyEvent.VK_LEFT, KeyEvent.VK_UP);
  }

  private static void bind(JToggleButton button, int step, int... keys) {
    String name = "choose " + step;
    for (int key : keys) {
      button.getInputMap().put(KeyStroke.getKeyStroke(key, 0), name);
    }
    button
        .getActionMap()
        .put(
            name,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent event) {
                choose(button, step);
              }
            });
  }

  private static void choose(JToggleButton from, int step) {
    if (!(from.getModel() instanceof DefaultButtonModel model) || model.getGroup() == null) {
      return;
    }
    List<AbstractButton> group = Collections.list(model.getGroup().getElements());
    int at = Math.floorMod(group.indexOf(from) + step, group.size());
    AbstractButton next = group.get(at);
    if (next.isShowing() && next.isEnabled()) {
      next.doClick(0);
      next.requestFocusInWindow();
    }
  }
}
