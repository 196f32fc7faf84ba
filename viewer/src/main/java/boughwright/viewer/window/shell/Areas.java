// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Optional;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.SwingUtilities;

/** The parts of a window that F6 goes round. */
final class Areas {
  private final List<Container> areas;
  private final Policy policy = new Policy();

  Areas(List<Container> areas) {
    this.areas = List.copyOf(areas);
  }

  /** Tells what can have the focus, as Tab sees it. */
  private static final class Policy extends LayoutFocusTraversalPolicy {
    private static final long serialVersionUID = 1L;

    boolean takes(Component part) {
      return accept(part);
    }
  }

  /** Goes to the next area that has something to go to, or to the one before. */
  void go(int step) {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    int from = Math.max(0, indexOf(owner));
    if (indexOf(owner) < 0 && step > 0) {
      from = areas.size() - 1;
    }
    for (int i = 1; i <= areas.size(); i++) {
      Optional<Component> first = first(areas.get(Math.floorMod(from + step * i, areas.size())));
      if (first.isPresent()) {
        first.get().requestFocusInWindow();
        return;
      }
    }
  }

  private int indexOf(Component owner) {
    for (int i = 0; i < areas.size(); i++) {
      if (owner != null && SwingUtilities.isDescendingFrom(owner, areas.get(i))) {
        return i;
      }
    }
    return -1;
  }

  private Optional<Component> first(Component part) {
    if (!part.isShowing()) {
      return Optional.empty();
    }
    if (policy.takes(part)) {
      return Optional.of(part);
    }
    if (part instanceof Container container) {
      for (Component child : container.getComponents()) {
        Optional<Component> found = first(child);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}
