// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What windows are made up of; asked on the event thread. */
public final class Parts {
  private Parts() {}

  /** A component and everything in it. */
  public static List<Component> all(Component root) {
    List<Component> found = new ArrayList<>();
    collect(root, found);
    return found;
  }

  private static void collect(Component part, List<Component> into) {
    into.add(part);
    if (part instanceof Container container) {
      for (Component child : container.getComponents()) {
        collect(child, into);
      }
    }
  }

  /** The first on the screen that is so, in any window, dialog or menu. */
  static Optional<Component> shown(Predicate<Component> wanted) {
    return shown().filter(wanted).findFirst();
  }

  /** The names of all that is on the screen, for a message. */
  static List<String> names() {
    return shown().map(Component::getName).filter(name -> name != null).toList();
  }

  private static Stream<Component> shown() {
    return Stream.of(Window.getWindows())
        .filter(Window::isShowing)
        .flatMap(window -> all(window).stream())
        .filter(Component::isShowing);
  }
}
