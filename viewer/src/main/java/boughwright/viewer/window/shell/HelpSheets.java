// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.look.Caution;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.work.Notice;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Pages to read. */
final class HelpSheets {
  private static final int WIDTH = 680;
  private static final int HIGH = 560;

  private final MainWindow window;

  HelpSheets(MainWindow window) {
    this.window = window;
  }

  /** All keys, as the commands have them. */
  void keys() {
    JPanel table =
        new JPanel(
            new MigLayout(
                "wrap 2, fillx, insets 0, gapx 24, gapy 6", "[][grow,fill,0:pref]", "[top]"));
    table.setOpaque(false);
    for (Command command : window.commands().all()) {
      List<String> keys = window.commands().keysOf(command.id()).stream().map(Keys::words).toList();
      if (!keys.isEmpty()) {
        row(table, String.join(", ", keys), command.name() + ". " + command.tip());
      }
    }
    row(table, "Tab, Shift+Tab", "To the next control, and back");
    row(table, "F10", "To the menus; Alt with an underlined letter goes to its menu or control");
    row(table, "Enter, Esc", "In a field: take what is typed, or take it back");
    row(table, "Up, Down", "In a field: a step more or less; with Shift ten steps");
    page("keys", "Keys", table);
  }

  private static void row(JPanel table, String keys, String words) {
    table.add(Controls.label(keys));
    table.add(Controls.prose(words), "wmin 0, growx");
  }

  /** The cautions. */
  void cautions() {
    JPanel lines = Controls.column();
    for (Caution caution : Caution.values()) {
      lines.add(new Prose(caution.words(), Shade.INK), "wmin 0, growx");
    }
    page("cautions", "Cautions", lines);
  }

  /** What was said. */
  void notices() {
    JPanel lines = Controls.column();
    List<Notice> said = window.status().notices();
    for (int i = said.size() - 1; i >= 0; i--) {
      Notice notice = said.get(i);
      Shade shade =
          switch (notice.kind()) {
            case DONE -> Shade.INK;
            case CAUTION -> Shade.CAUTION;
            case FAULT -> Shade.FAULT;
          };
      lines.add(new Prose(StatusLine.lead(notice.kind()) + notice.words(), shade), "wmin 0, growx");
    }
    page("notices", "All notices, the last first", lines);
  }

  private void page(String name, String title, JPanel content) {
    Sheet sheet = new Sheet(window, name, title, true);
    JScrollPane scroll = Controls.scrolling(content);
    scroll.getVerticalScrollBar().setFocusable(true);
    scroll.getAccessibleContext().setAccessibleName(title);
    sheet.addLarge(scroll);
    sheet.buttons(List.of(sheet.closing("Close", 'C')));
    sheet.show(WIDTH, HIGH);
  }

  /** Version and licences. */
  void about() {
    Sheet sheet = new Sheet(window, "about", "Boughwright " + version(), true);
    sheet.add(
        Controls.prose(
            "A measured tree, and what it takes to bend its branches. Numbers are estimates, for"
                + " trees in containers. Licensed under the Apache License, Version 2.0; the"
                + " libraries and the typeface in it have their own licences, below."));
    JTextArea text = new JTextArea(licences(), 16, 60);
    Controls.named(text, "about.licences", "Licences");
    text.setEditable(false);
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setCaretPosition(0);
    sheet.addLarge(new JScrollPane(text));
    sheet.buttons(List.of(sheet.closing("Close", 'C')));
    sheet.show(WIDTH, HIGH);
  }

  private static String version() {
    Properties properties = new Properties();
    try (InputStream in =
        HelpSheets.class.getResourceAsStream("/boughwright/viewer/command/version.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }

  private static String licences() {
    return List.of("/META-INF/LICENSE.txt", "/META-INF/LICENSE", "/META-INF/NOTICE").stream()
        .map(HelpSheets::resource)
        .filter(text -> !text.isBlank())
        .collect(Collectors.joining("\n\n\n"));
  }

  private static String resource(String name) {
    try (InputStream in = HelpSheets.class.getResourceAsStream(name)) {
      return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
