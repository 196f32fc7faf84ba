// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Fold;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.ModePanel;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Chooses what is seen of the tree, and from where. */
public final class LookPanel implements ModePanel {
  private static final int SIDES = 3;

  private final TreeCanvas canvas;
  private final JPanel column = Controls.column();
  private final JComponent whole = Controls.scrolling(column);
  private final Map<Looks.Extra, JCheckBox> boxes = new EnumMap<>(Looks.Extra.class);
  private final List<AbstractButton> buttons = new ArrayList<>();
  private final List<Command> ofButtons = new ArrayList<>();
  private final Prose picked = Controls.prose("");

  /** A panel for a canvas. */
  public LookPanel(TreeCanvas canvas) {
    this.canvas = canvas;
    column.setName("look.panel");
    List<Command> commands = canvas.commands();
    column.add(
        Controls.section(
            "Seen from",
            new Fold(
                SIDES,
                button(commands, "view.front"),
                button(commands, "view.back"),
                button(commands, "view.top"),
                button(commands, "view.left"),
                button(commands, "view.right"),
                button(commands, "view.fit")),
            box(Looks.Extra.PERSPECTIVE)));
    column.add(
        Controls.section(
            "Shown with the wood",
            box(Looks.Extra.GHOSTS),
            box(Looks.Extra.STRAIN),
            box(Looks.Extra.IN_LEAF),
            box(Looks.Extra.MARKS),
            box(Looks.Extra.SOIL),
            box(Looks.Extra.PLUMB),
            box(Looks.Extra.SCALE),
            box(Looks.Extra.HEIGHTS),
            box(Looks.Extra.CALIPERS),
            box(Looks.Extra.NAMES)),
        "gaptop " + Controls.APART);
    column.add(
        Controls.section(
            "Picked branches",
            picked,
            Controls.row(button(commands, "view.hide"), button(commands, "view.isolate")),
            Controls.row(button(commands, "view.dim"), button(commands, "view.show-all")),
            Controls.row(button(commands, "view.fit-picked"))),
        "gaptop " + Controls.APART);
    canvas.listen(this::follow);
    follow();
  }

  private JComponent button(List<Command> commands, String id) {
    Command command =
        commands.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    AbstractButton button = Controls.button(command.name());
    Controls.named(button, "look." + id.substring("view.".length()), command.name());
    button.setToolTipText(
        command.tip() + command.key().map(key -> "  (" + Keys.words(key) + ")").orElse(""));
    button.getAccessibleContext().setAccessibleDescription(command.tip());
    button.addActionListener(event -> command.run().run());
    buttons.add(button);
    ofButtons.add(command);
    return button;
  }

  private JComponent box(Looks.Extra extra) {
    JCheckBox box = Controls.large(new JCheckBox(words(extra)));
    Controls.named(box, "look." + extra.name().toLowerCase(Locale.ROOT), words(extra));
    box.setMnemonic(mnemonic(extra));
    box.setOpaque(false);
    box.addActionListener(event -> canvas.show(extra, box.isSelected()));
    boxes.put(extra, box);
    return box;
  }

  static String words(Looks.Extra extra) {
    return switch (extra) {
      case GHOSTS -> "Other poses beside it, as ghosts";
      case STRAIN -> "Colours of strain";
      case IN_LEAF -> "In leaf: its pads, or a guess";
      case MARKS -> "Words at lines and weak places";
      case SOIL -> "Soil";
      case PLUMB -> "Plumb line through the root base";
      case SCALE -> "Scale bar";
      case HEIGHTS -> "Heights above the soil";
      case CALIPERS -> "Calipers";
      case NAMES -> "Names, beside the segments";
      case PERSPECTIVE -> "Perspective, as an eye sees it";
    };
  }

  /** None of the letters that menus and tabs go by. */
  private static char mnemonic(Looks.Extra extra) {
    return switch (extra) {
      case GHOSTS -> 'g';
      case STRAIN -> 's';
      case IN_LEAF -> 'i';
      case MARKS -> 'w';
      case SOIL -> 'o';
      case PLUMB -> 'u';
      case SCALE -> 'b';
      case HEIGHTS -> 'a';
      case CALIPERS -> 'r';
      case NAMES -> 'd';
      case PERSPECTIVE -> 'y';
    };
  }

  private void follow() {
    Looks looks = canvas.looks();
    boxes.forEach((extra, box) -> box.setSelected(looks.has(extra)));
    for (int n = 0; n < buttons.size(); n++) {
      buttons.get(n).setEnabled(ofButtons.get(n).enabled().getAsBoolean());
    }
    picked.say(canvas.pickedWords(), Shade.INK);
  }

  @Override
  public String name() {
    return "Look";
  }

  @Override
  public char mnemonic() {
    return 'L';
  }

  @Override
  public JComponent component() {
    return whole;
  }

  @Override
  public List<Command> commands() {
    return canvas.commands();
  }

  @Override
  public void shown() {
    canvas.useNone();
    follow();
  }

  @Override
  public void hidden() {
    // What was chosen stays.
  }
}
