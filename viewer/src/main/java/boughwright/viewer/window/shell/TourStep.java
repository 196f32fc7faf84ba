// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.ModePanel;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;

/** The steps of the first tour, each with the control it points at. */
enum TourStep {
  TURN(
      "Turn the tree",
      "Drag across the tree to turn it; the arrow keys do the same once the tree has the focus."
          + " The wheel brings it nearer. Look at the root base from all sides.",
      "Look",
      "canvas"),
  PICK(
      "Pick a branch",
      "Click a branch: b1, the first one, is a good one to try. It is outlined, and what is known"
          + " of it is told.",
      "Look",
      "canvas"),
  PULL(
      "Pull it",
      "Here you pull. Take hold of the branch near its end and drag it where it should come; or"
          + " type what the line should do. The wood answers while you pull.",
      "Pull",
      "tab.pull"),
  READ(
      "Read what it risks",
      "The panel tells tension, strain, and how likely it is to kink or crack. Go to any number"
          + " with Tab and press F1: it says what it is, how sure, and from where.",
      "Pull",
      "side"),
  KEEP(
      "Keep it",
      "Add the bend to the plan, then save the tree with Ctrl+S. Undo takes anything back. At the"
          + " tree itself: wear eye protection, tighten slowly, stop at the first sound.",
      "Pull",
      "menu.file");

  private final String title;
  private final String words;
  private final String mode;
  private final String target;

  TourStep(String title, String words, String mode, String target) {
    this.title = title;
    this.words = words;
    this.mode = mode;
    this.target = target;
  }

  String title() {
    return title;
  }

  String words() {
    return words;
  }

  /** The mode it speaks of, counted from 0; empty if the window does not have it. */
  Optional<Integer> mode(MainWindow window) {
    List<ModePanel> panels = window.parts().panels();
    for (int i = 0; i < panels.size(); i++) {
      if (panels.get(i).name().equals(mode)) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  /** What it points at: the control, or the whole tree where there is none of that name. */
  Component target(MainWindow window) {
    Component canvas = window.parts().canvas().component();
    return target.equals("canvas") ? canvas : named(window.getRootPane()).orElse(canvas);
  }

  private Optional<Component> named(Container in) {
    for (Component part : in.getComponents()) {
      if (target.equals(part.getName()) && part.isShowing()) {
        return Optional.of(part);
      }
      if (part instanceof Container inner) {
        Optional<Component> found = named(inner);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}
