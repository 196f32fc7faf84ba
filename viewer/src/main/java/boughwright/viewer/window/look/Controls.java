// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;

/** The parts all panels are made of, so that they look alike: one rhythm of eight pixels. */
public final class Controls {
  /** Between things that belong together [user pixels at 100 %]. */
  public static final int NEAR = 8;

  /** Between sections, and round a panel [user pixels at 100 %]. */
  public static final int APART = 16;

  /** The least height of what is clicked [user pixels at 100 %]. */
  public static final int TARGET = 36;

  /** Client property of a mode's component that asks for more of the window than usual. */
  public static final String WIDE = "boughwright.wide";

  private Controls() {}

  /** An empty column that fills its width; add parts with {@code growx}. */
  public static JPanel column() {
    JPanel panel = new HighAsWide(new MigLayout(columnOf(APART), "[grow,fill]", ""));
    return panel;
  }

  private static String columnOf(int inset) {
    return "wrap 1, fillx, hidemode 3, insets " + inset + ", gapy " + NEAR;
  }

  /** A titled part of a column, its parts under one another. */
  public static JPanel section(String title, JComponent... parts) {
    JPanel panel = new HighAsWide(new MigLayout(columnOf(0), "[grow,fill,0:pref]", ""));
    panel.add(title(title), "wmin 0, growx");
    for (JComponent part : parts) {
      panel.add(part, "wmin 0, growx");
    }
    return panel;
  }

  /** Parts under one another, with no room between. */
  public static JPanel stack(JComponent... parts) {
    JPanel panel =
        new HighAsWide(
            new MigLayout("wrap 1, fillx, hidemode 3, insets 0, gapy 0", "[grow,fill,0:pref]", ""));
    for (JComponent part : parts) {
      panel.add(part, "wmin 0, growx");
    }
    return panel;
  }

  /** Parts beside one another, all of one width, in as many rows as their words need. */
  public static JPanel row(JComponent... parts) {
    return new Fold(parts.length, parts);
  }

  /** The title of a section. */
  public static JLabel heading(String words) {
    return new Words(words, Words.Rank.HEADING);
  }

  /** A short line of usual text. */
  public static JLabel label(String words) {
    return new Words(words, Words.Rank.TEXT);
  }

  /** A short line of second rank. */
  public static JLabel note(String words) {
    return new Words(words, Words.Rank.NOTE);
  }

  /** The title of something that may be long; it breaks its lines. */
  public static Prose title(String words) {
    return new Prose(words, Shade.INK, Words.Rank.HEADING);
  }

  /** A remark of second rank that breaks its lines. */
  public static Prose remark(String words) {
    return new Prose(words, Shade.QUIET, Words.Rank.NOTE);
  }

  /** Text that breaks its lines to the width there is. */
  public static Prose prose(String words) {
    return new Prose(words, Shade.INK);
  }

  /** A big button without a command behind it yet. */
  public static JButton button(String words) {
    JButton button = new JButton(words);
    return large(button);
  }

  /** A big button that stays pressed; arrow keys choose among those of a group. */
  public static JToggleButton toggle(String words) {
    JToggleButton toggle = new JToggleButton(words);
    ArrowKeys.bind(toggle);
    return large(toggle);
  }

  /** Makes a button, box or choice large enough for a hurried hand. */
  public static <T extends AbstractButton> T large(T button) {
    size(button);
    button.addPropertyChangeListener("UI", event -> size(button));
    return button;
  }

  private static void size(AbstractButton button) {
    button.setMinimumSize(new Dimension(Theme.px(TARGET), Theme.px(TARGET)));
    // the look and feel multiplies what it is told by a factor of its own
    button.putClientProperty("JComponent.minimumHeight", UIScale.unscale(Theme.px(TARGET)));
  }

  /** Makes a field or a list of choices as high as buttons are, at every text size. */
  public static <T extends JComponent> T high(T field) {
    field.setMinimumSize(new Dimension(0, Theme.px(TARGET)));
    field.addPropertyChangeListener(
        "UI", event -> field.setMinimumSize(new Dimension(0, Theme.px(TARGET))));
    return field;
  }

  /** A list of names to choose from; one that is too long for the box is told in full beside it. */
  public static JComboBox<String> choice() {
    JComboBox<String> choice = high(new JComboBox<>());
    choice.addActionListener(event -> choice.setToolTipText((String) choice.getSelectedItem()));
    return choice;
  }

  /** Names a control for tests and for those who do not see it. */
  public static <T extends JComponent> T named(T control, String name, String spoken) {
    control.setName(name);
    control.getAccessibleContext().setAccessibleName(spoken);
    return control;
  }

  /** A panel that scrolls up and down when it is short of room, never sideways. */
  public static JScrollPane scrolling(Component content) {
    JPanel view = new ColumnView(content);
    JScrollPane pane =
        new JScrollPane(
            view,
            ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
            ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    pane.setBorder(BorderFactory.createEmptyBorder());
    pane.getVerticalScrollBar().setUnitIncrement(Theme.px(24));
    pane.getViewport().setOpaque(false);
    pane.setOpaque(false);
    return pane;
  }
}
