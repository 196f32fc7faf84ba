// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Commands;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.TextSize;
import boughwright.viewer.window.look.Tone;
import boughwright.viewer.window.work.Selection;
import boughwright.viewer.window.work.Workspace;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.KeyStroke;

/** What can be done in every window, whatever it is filled with. */
final class WindowCommands {
  private static final int SHIFT = KeyEvent.SHIFT_DOWN_MASK;

  private final MainWindow window;
  private final Desk desk;
  private final Areas areas;
  private final Workspace workspace;

  WindowCommands(MainWindow window, Desk desk, Areas areas) {
    this.window = window;
    this.desk = desk;
    this.areas = areas;
    workspace = window.workspace();
  }

  void addTo(Commands commands) {
    commands.addAll(new FileCommands(window, desk).all());
    commands.addAll(edit());
    commands.addKey("edit.redo", Keys.menu(KeyEvent.VK_Y));
    commands.addAll(modes());
    commands.addAll(view());
    commands.addAll(units());
    commands.addAll(new PictureCommands(window).all());
    commands.addAll(new HelpCommands(window, desk).all());
  }

  /** What a command is called and how it is given. */
  record Face(String id, String name, char mnemonic, Optional<KeyStroke> key, String tip) {
    Command does(Runnable run) {
      return does(run, () -> true);
    }

    Command does(Runnable run, BooleanSupplier enabled) {
      return new Command(id, name, mnemonic, key, tip, run, enabled);
    }
  }

  private List<Command> edit() {
    return List.of(
        new Face(
                "edit.undo",
                "Undo",
                'U',
                Optional.of(Keys.menu(KeyEvent.VK_Z)),
                "Takes the last change back")
            .does(workspace::undo, () -> workspace.history().undoName().isPresent()),
        new Face(
                "edit.redo",
                "Redo",
                'R',
                Optional.of(Keys.menuShift(KeyEvent.VK_Z)),
                "Does again what was taken back last")
            .does(workspace::redo, () -> workspace.history().redoName().isPresent()),
        new Face(
                "edit.select-all",
                "Pick all segments",
                'A',
                Optional.of(Keys.menu(KeyEvent.VK_A)),
                "Picks every segment of the tree")
            .does(this::selectAll),
        new Face(
                "edit.select-none",
                "Pick none",
                'N',
                Optional.of(Keys.menuShift(KeyEvent.VK_A)),
                "Lets go of all picked segments")
            .does(
                () -> workspace.select(Selection.NONE),
                () -> !workspace.selection().segments().isEmpty()));
  }

  private void selectAll() {
    workspace.select(
        new Selection(workspace.document().tree().segments().stream().map(s -> s.id()).toList()));
  }

  private List<Command> modes() {
    List<ModePanel> panels = window.parts().panels();
    return java.util.stream.IntStream.range(0, panels.size())
        .mapToObj(n -> mode(n, panels.get(n)))
        .toList();
  }

  private Command mode(int n, ModePanel panel) {
    return new Face(
            "mode." + (n + 1),
            panel.name(),
            panel.mnemonic(),
            Optional.of(Keys.alt(KeyEvent.VK_1 + n)),
            "Shows the panel " + panel.name())
        .does(() -> window.choose(n));
  }

  private List<Command> view() {
    return List.of(
        tone(Tone.LIGHT, 'L'),
        tone(Tone.DARK, 'D'),
        size(TextSize.USUAL, '1'),
        size(TextSize.LARGER, '2'),
        size(TextSize.LARGE, '5'),
        size(TextSize.LARGEST, '7'),
        new Face(
                "view.next-area",
                "Next part of the window",
                'N',
                Optional.of(Keys.plain(KeyEvent.VK_F6)),
                "Goes from the tabs to the tree, the panel and the foot")
            .does(() -> areas.go(1)),
        new Face(
                "view.area-before",
                "Part before",
                'B',
                Optional.of(KeyStroke.getKeyStroke(KeyEvent.VK_F6, SHIFT)),
                "Goes the other way round")
            .does(() -> areas.go(-1)));
  }

  private Command tone(Tone tone, char mnemonic) {
    return new Face(
            "view.tone-" + tone.name().toLowerCase(java.util.Locale.ROOT),
            tone.words(),
            mnemonic,
            Optional.empty(),
            "Makes all windows " + tone.words().toLowerCase(java.util.Locale.ROOT))
        .does(() -> desk.change(settings -> settings.with(tone)));
  }

  private Command size(TextSize size, char mnemonic) {
    return new Face(
            "view.text-" + size.percent(),
            size.percent() + " %",
            mnemonic,
            Optional.empty(),
            "Shows text at " + size.percent() + " % of its usual size")
        .does(() -> desk.change(settings -> settings.with(size)));
  }

  private List<Command> units() {
    return List.of(
        length(LengthUnit.MILLIMETRE, "Millimetres", 'M'),
        length(LengthUnit.INCH, "Inches", 'I'),
        force(ForceUnit.NEWTON, "Newtons", 'N'),
        force(ForceUnit.KILOGRAM_FORCE, "Kilograms of force", 'K'),
        force(ForceUnit.POUND_FORCE, "Pounds of force", 'P'));
  }

  private Command length(LengthUnit unit, String name, char mnemonic) {
    return new Face(
            "view.unit-" + unit.symbol(),
            name + " (" + unit.symbol() + ")",
            mnemonic,
            Optional.empty(),
            "Shows and reads lengths in " + unit.symbol() + " everywhere")
        .does(() -> use(new DisplayUnits(unit, workspace.units().force())));
  }

  private Command force(ForceUnit unit, String name, char mnemonic) {
    return new Face(
            "view.unit-" + unit.symbol(),
            name + " (" + unit.symbol() + ")",
            mnemonic,
            Optional.empty(),
            "Shows and reads forces in " + unit.symbol() + " everywhere")
        .does(() -> use(new DisplayUnits(workspace.units().length(), unit)));
  }

  private void use(DisplayUnits units) {
    desk.change(settings -> settings.with(units));
  }
}
