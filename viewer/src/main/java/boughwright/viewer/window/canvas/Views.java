// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.ViewAngle;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.KeyStroke;

/** Where the tree can be looked at from, as commands. */
final class Views {
  private static final double TURN = Math.toRadians(7.5);
  private static final double STEP = 40;
  private static final double ZOOM = 1.25;
  private static final Optional<KeyStroke> NO_KEY = Optional.empty();

  private final Workspace work;
  private final Showing showing;
  private final Viewpoint viewpoint;
  private final Overlay overlay;

  Views(Workspace work, Showing showing, Viewpoint viewpoint, Overlay overlay) {
    this.work = work;
    this.showing = showing;
    this.viewpoint = viewpoint;
    this.overlay = overlay;
  }

  /** The standard sides. */
  enum Side {
    FRONT("Front", 'F', KeyEvent.VK_1, 0),
    BACK("Back", 'B', KeyEvent.VK_2, 2),
    LEFT("Left", 'L', KeyEvent.VK_3, 1),
    RIGHT("Right", 'R', KeyEvent.VK_4, 3),
    TOP("Top", 'T', KeyEvent.VK_5, 0);

    private final String words;
    private final char mnemonic;
    private final int key;
    private final int quarters;

    Side(String words, char mnemonic, int key, int quarters) {
      this.words = words;
      this.mnemonic = mnemonic;
      this.key = key;
      this.quarters = quarters;
    }

    String id() {
      return "view." + words.toLowerCase(java.util.Locale.ROOT);
    }

    ViewAngle from(double front) {
      double azimuth = front + quarters * Math.PI / 2;
      return this == TOP ? ViewAngle.above(azimuth) : ViewAngle.level(azimuth);
    }

    private String tip() {
      return switch (this) {
        case FRONT -> "Look at the tree from the front of its plan";
        case BACK -> "Look at the tree from behind";
        case LEFT -> "Look at the tree from its left side, as seen from the front";
        case RIGHT -> "Look at the tree from its right side, as seen from the front";
        case TOP -> "Look down on the tree, its front toward you";
      };
    }
  }

  /** The azimuth of the plan's front [rad]. */
  double front() {
    return work.plan().map(p -> p.frontAzimuth().orElse(0)).orElse(0.0);
  }

  void look(Side side) {
    viewpoint.lookAt(side.from(front()), overlay.everything());
  }

  void fitAll() {
    viewpoint.lookAt(viewpoint.camera().angle(), overlay.everything());
  }

  void fitPicked() {
    List<StagesView.Outline> picked = overlay.picked();
    if (!picked.isEmpty()) {
      viewpoint.lookAt(viewpoint.camera().angle(), picked);
    }
  }

  private void zoom(double factor) {
    viewpoint.zoom(factor, viewpoint.camera().width() / 2.0, viewpoint.camera().height() / 2.0);
  }

  private boolean isPicked() {
    return !work.selection().segments().isEmpty();
  }

  /** All of them. */
  List<Command> commands() {
    List<Command> all = new ArrayList<>();
    for (Side side : Side.values()) {
      all.add(
          new Command(
              side.id(),
              side.words,
              side.mnemonic,
              Optional.of(Keys.plain(side.key)),
              side.tip(),
              () -> look(side),
              () -> true));
    }
    all.add(
        new Command(
            "view.fit",
            "Whole tree",
            'W',
            Optional.of(Keys.plain(KeyEvent.VK_0)),
            "Show the whole tree from where you look",
            this::fitAll,
            () -> true));
    all.add(
        new Command(
            "view.fit-picked",
            "Fill with what is picked",
            'i',
            Optional.of(Keys.plain(KeyEvent.VK_9)),
            "Show the picked segments as large as they fit",
            this::fitPicked,
            this::isPicked));
    all.addAll(steps());
    return all;
  }

  private List<Command> steps() {
    return List.of(
        step("view.turn-left", "Turn left", 'l', () -> viewpoint.turnBy(-TURN, 0)),
        step("view.turn-right", "Turn right", 'r', () -> viewpoint.turnBy(TURN, 0)),
        step("view.raise", "Look from higher", 'h', () -> viewpoint.turnBy(0, TURN)),
        step("view.lower", "Look from lower", 'o', () -> viewpoint.turnBy(0, -TURN)),
        step("view.move-left", "Move left", 'e', () -> viewpoint.move(-STEP, 0)),
        step("view.move-right", "Move right", 'g', () -> viewpoint.move(STEP, 0)),
        step("view.move-up", "Move up", 'u', () -> viewpoint.move(0, -STEP)),
        step("view.move-down", "Move down", 'd', () -> viewpoint.move(0, STEP)),
        new Command(
            "view.closer",
            "Closer",
            'C',
            Optional.of(Keys.plain(KeyEvent.VK_PLUS)),
            "Show the tree larger",
            () -> zoom(ZOOM),
            () -> true),
        new Command(
            "view.farther",
            "Farther",
            'a',
            Optional.of(Keys.plain(KeyEvent.VK_MINUS)),
            "Show the tree smaller",
            () -> zoom(1 / ZOOM),
            () -> true),
        new Command(
            "view.perspective",
            "Perspective",
            'P',
            Optional.of(Keys.plain(KeyEvent.VK_P)),
            "Change between the view of an eye and a flat one that is true to scale",
            this::changePerspective,
            () -> true));
  }

  private void changePerspective() {
    Looks looks = showing.looks();
    Looks.Extra eye = Looks.Extra.PERSPECTIVE;
    showing.setLooks(looks.with(eye, !looks.has(eye)));
  }

  private static Command step(String id, String words, char mnemonic, Runnable run) {
    String keys = id.startsWith("view.move") ? "Shift and an arrow key" : "An arrow key";
    String tip = words + ". " + keys + " does it while the keyboard is on the tree";
    return new Command(id, words, mnemonic, NO_KEY, tip, run, () -> true);
  }

  /** The keys that work while the keyboard is on the tree, by command id. */
  static List<KeyOf> keysOnTree() {
    int shift = java.awt.event.InputEvent.SHIFT_DOWN_MASK;
    return List.of(
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_LEFT, 0), "view.turn-left"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_RIGHT, 0), "view.turn-right"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_UP, 0), "view.raise"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0), "view.lower"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_LEFT, shift), "view.move-left"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_RIGHT, shift), "view.move-right"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_UP, shift), "view.move-up"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, shift), "view.move-down"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_EQUALS, 0), "view.closer"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_PLUS, shift), "view.closer"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_EQUALS, shift), "view.closer"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_ADD, 0), "view.closer"),
        new KeyOf(KeyStroke.getKeyStroke(KeyEvent.VK_SUBTRACT, 0), "view.farther"));
  }

  /** A key and the command it runs. */
  record KeyOf(KeyStroke key, String command) {}
}
