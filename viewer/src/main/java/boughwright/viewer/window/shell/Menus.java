// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Commands;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menus of a window; commands find their menu by the first word of their id. */
final class Menus {
  private final Commands commands;
  private final Map<Heading, JMenu> menus = new LinkedHashMap<>();
  private final JMenuBar bar = new JMenuBar();

  /** The menus there are. */
  enum Heading {
    FILE("File", 'F', Set.of("file")),
    EDIT("Edit", 'E', Set.of("edit")),
    VIEW("View", 'V', Set.of("view", "look", "mode", "canvas")),
    TREE("Tree", 'T', Set.of("tree", "sketch", "measure", "wound", "photo")),
    PLAN("Plan", 'N', Set.of("plan", "choose", "pull", "compare")),
    PICTURES("Pictures", 'I', Set.of("picture", "pictures")),
    HELP("Help", 'H', Set.of("help"));

    private final String words;
    private final char mnemonic;
    private final Set<String> prefixes;

    Heading(String words, char mnemonic, Set<String> prefixes) {
      this.words = words;
      this.mnemonic = mnemonic;
      this.prefixes = prefixes;
    }

    String words() {
      return words;
    }

    /** The menu of a command. */
    static Heading of(String id) {
      String first = id.substring(0, Math.max(0, id.indexOf('.')));
      for (Heading heading : values()) {
        if (heading.prefixes.contains(first)) {
          return heading;
        }
      }
      throw new IllegalArgumentException("no menu is for the command " + id);
    }
  }

  Menus(Commands commands) {
    this.commands = commands;
    bar.setName("menubar");
    bar.getAccessibleContext().setAccessibleName("Menus");
    for (Heading heading : Heading.values()) {
      JMenu menu = new JMenu(heading.words);
      menu.setName("menu." + heading.name().toLowerCase(Locale.ROOT));
      menu.setMnemonic(heading.mnemonic);
      menu.addMenuListener(new Refreshing());
      menus.put(heading, menu);
      bar.add(menu);
    }
  }

  JMenuBar bar() {
    return bar;
  }

  JMenu menu(Heading heading) {
    return menus.get(heading);
  }

  /** Adds commands under one another; {@code -} draws a line between. */
  void add(Heading heading, List<String> ids) {
    JMenu menu = menu(heading);
    for (String id : ids) {
      if (id.equals("-")) {
        menu.addSeparator();
      } else {
        menu.add(commands.menuItem(id));
      }
    }
  }

  /**
   * Adds commands of the modes, each to its menu, a line before those of each mode. What turns and
   * moves the view goes into a menu of its own, so that no menu is higher than a small screen.
   */
  void addAll(List<Command> more) {
    Set<Heading> begun = new HashSet<>();
    for (Command command : more) {
      Heading heading = Heading.of(command.id());
      JMenu menu = menu(heading);
      if (begun.add(heading) && menu.getItemCount() > 0) {
        menu.addSeparator();
      }
      inner(menu, command.id()).add(commands.menuItem(command.id()));
    }
  }

  private static JMenu inner(JMenu menu, String id) {
    for (Inner inner : Inner.values()) {
      if (inner.ids.contains(id)) {
        return inner.in(menu);
      }
    }
    return menu;
  }

  /** Menus inside menus. */
  private enum Inner {
    FROM(
        "Seen from", 'S', Set.of("view.front", "view.back", "view.left", "view.right", "view.top")),
    MOVING(
        "Turn and move",
        'T',
        Set.of(
            "view.turn-left",
            "view.turn-right",
            "view.raise",
            "view.lower",
            "view.move-left",
            "view.move-right",
            "view.move-up",
            "view.move-down",
            "view.closer",
            "view.farther"));

    private final String words;
    private final char mnemonic;
    private final Set<String> ids;

    Inner(String words, char mnemonic, Set<String> ids) {
      this.words = words;
      this.mnemonic = mnemonic;
      this.ids = ids;
    }

    private JMenu in(JMenu menu) {
      for (int i = 0; i < menu.getItemCount(); i++) {
        if (menu.getItem(i) instanceof JMenu there && there.getText().equals(words)) {
          return there;
        }
      }
      JMenu made = new JMenu(words);
      made.setMnemonic(mnemonic);
      menu.add(made);
      return made;
    }
  }

  /** Gives every item of a menu a letter of its own, as far as its words have one. */
  void settleMnemonics() {
    menus.values().forEach(Menus::settle);
  }

  private static void settle(JMenu menu) {
    Set<Character> taken = new HashSet<>();
    for (int i = 0; i < menu.getItemCount(); i++) {
      JMenuItem item = menu.getItem(i);
      if (item != null) {
        settle(item, taken);
        if (item instanceof JMenu inner) {
          settle(inner);
        }
      }
    }
  }

  private static void settle(JMenuItem item, Set<Character> taken) {
    char wished = (char) item.getMnemonic();
    if (wished != 0 && taken.add(Character.toUpperCase(wished))) {
      return;
    }
    for (char letter : item.getText().toUpperCase(Locale.ROOT).toCharArray()) {
      if (Character.isLetterOrDigit(letter) && taken.add(letter)) {
        item.setMnemonic(letter);
        return;
      }
    }
  }

  /** Looks what can be done just before a menu opens. */
  private final class Refreshing implements MenuListener {
    @Override
    public void menuSelected(MenuEvent event) {
      commands.refresh();
    }

    @Override
    public void menuDeselected(MenuEvent event) {
      // what can be done matters only while it is open
    }

    @Override
    public void menuCanceled(MenuEvent event) {
      // as above
    }
  }
}
