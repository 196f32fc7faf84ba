// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.history.History;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.Commands;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.shell.Menus.Heading;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;

/** The menus of a window, filled. */
final class WindowMenus {
  private final MainWindow window;
  private final Desk desk;
  private final Commands commands;
  private final Menus menus;

  WindowMenus(MainWindow window, Desk desk) {
    this.window = window;
    this.desk = desk;
    commands = window.commands();
    menus = new Menus(commands);
    file();
    edit();
    modes();
    choices();
    menus.add(Heading.PICTURES, List.of("picture.save", "picture.pair", "picture.turntable"));
    window.modeCommands().forEach(menus::addAll);
    menus.add(
        Heading.HELP,
        List.of(
            "help.explain",
            "help.keys",
            "help.cautions",
            "-",
            "help.tour",
            "help.notices",
            "-",
            "help.about"));
    menus.settleMnemonics();
  }

  JMenuBar bar() {
    return menus.bar();
  }

  private void file() {
    menus.add(Heading.FILE, List.of("file.new", "file.open"));
    menus.menu(Heading.FILE).add(recent());
    menus.add(
        Heading.FILE,
        List.of(
            "file.examples",
            "file.sheet",
            "-",
            "file.save",
            "file.save-as",
            "-",
            "file.window",
            "file.close",
            "file.quit"));
  }

  private JMenu recent() {
    JMenu recent = new JMenu("Open recent");
    recent.setName("menu.file.recent");
    recent.setMnemonic('R');
    recent.addMenuListener(
        new MenuListener() {
          @Override
          public void menuSelected(MenuEvent event) {
            fill(recent);
          }

          @Override
          public void menuDeselected(MenuEvent event) {
            // the files are looked up when it opens
          }

          @Override
          public void menuCanceled(MenuEvent event) {
            // as above
          }
        });
    fill(recent);
    return recent;
  }

  private void fill(JMenu recent) {
    recent.removeAll();
    List<Path> paths = desk.settings().recent();
    for (int i = 0; i < paths.size(); i++) {
      recent.add(item(i + 1, paths.get(i)));
    }
    if (paths.isEmpty()) {
      JMenuItem none = recent.add("No file was opened yet");
      none.setEnabled(false);
    }
  }

  private JMenuItem item(int n, Path path) {
    String number = n % 10 + "  ";
    JMenuItem item = new JMenuItem(number + path.getFileName());
    item.setName("menu.file.recent." + n);
    item.setMnemonic(number.charAt(0));
    item.setToolTipText(path.toString());
    item.getAccessibleContext().setAccessibleDescription(path.toString());
    item.addActionListener(event -> FileCommands.openFile(window, path));
    return item;
  }

  private void edit() {
    JMenuItem undo = commands.menuItem("edit.undo");
    JMenuItem redo = commands.menuItem("edit.redo");
    JMenu menu = menus.menu(Heading.EDIT);
    menu.add(undo);
    menu.add(redo);
    menu.addSeparator();
    menus.add(Heading.EDIT, List.of("edit.select-all", "edit.select-none"));
    Workspace workspace = window.workspace();
    workspace.listen(
        topic -> {
          if (topic == Topic.DOCUMENT || topic == Topic.OPENED) {
            name(workspace.history(), undo, redo);
          }
        });
    name(workspace.history(), undo, redo);
  }

  private static void name(History history, JMenuItem undo, JMenuItem redo) {
    undo.setText(named("Undo", history.undoName()));
    redo.setText(named("Redo", history.redoName()));
  }

  private static String named(String verb, Optional<String> what) {
    return what.map(name -> verb + " " + FileWork.shortened(name)).orElse(verb);
  }

  private void modes() {
    JMenu menu = menus.menu(Heading.VIEW);
    for (int i = 0; i < window.parts().panels().size(); i++) {
      int n = i;
      menu.add(commands.choiceItem("mode." + (n + 1), () -> window.mode() == n));
    }
  }

  private void choices() {
    JMenu view = menus.menu(Heading.VIEW);
    view.addSeparator();
    JMenu units = inner("Units", 'U');
    for (LengthUnit unit : List.of(LengthUnit.MILLIMETRE, LengthUnit.INCH)) {
      units.add(commands.choiceItem("view.unit-" + unit.symbol(), () -> now().length() == unit));
    }
    units.addSeparator();
    for (ForceUnit unit : ForceUnit.values()) {
      units.add(commands.choiceItem("view.unit-" + unit.symbol(), () -> now().force() == unit));
    }
    JMenu colours = inner("Colours", 'C');
    for (Tone tone : Tone.values()) {
      String id = "view.tone-" + tone.name().toLowerCase(Locale.ROOT);
      colours.add(commands.choiceItem(id, () -> desk.settings().tone() == tone));
    }
    JMenu text = inner("Text size", 'X');
    for (TextSize size : TextSize.values()) {
      text.add(
          commands.choiceItem(
              "view.text-" + size.percent(), () -> desk.settings().textSize() == size));
    }
    List.of(units, colours, text).forEach(view::add);
    view.addSeparator();
    menus.add(Heading.VIEW, List.of("view.next-area", "view.area-before"));
  }

  private DisplayUnits now() {
    return window.workspace().units();
  }

  private static JMenu inner(String words, char mnemonic) {
    JMenu menu = new JMenu(words);
    menu.setName("menu.view." + words.toLowerCase(Locale.ROOT).replace(' ', '-'));
    menu.setMnemonic(mnemonic);
    return menu;
  }
}
