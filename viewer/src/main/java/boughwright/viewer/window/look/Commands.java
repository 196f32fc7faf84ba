// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/** All that can be done in one window, by menu, key or button. Belongs to the event thread. */
public final class Commands {
  private final Map<String, Command> commands = new LinkedHashMap<>();
  private final Map<KeyStroke, String> keys = new LinkedHashMap<>();
  private final List<Shown> shown = new ArrayList<>();

  private final List<Choice> choices = new ArrayList<>();

  private record Shown(Command command, AbstractButton control) {}

  private record Choice(AbstractButton item, BooleanSupplier chosen) {}

  /**
   * Adds commands.
   *
   * @throws IllegalArgumentException if an id or a key is taken
   */
  public void addAll(Collection<Command> more) {
    more.forEach(this::add);
  }

  /**
   * Adds a command.
   *
   * @throws IllegalArgumentException if its id or its key is taken
   */
  public void add(Command command) {
    if (commands.putIfAbsent(command.id(), command) != null) {
      throw new IllegalArgumentException("two commands are called " + command.id());
    }
    command.key().ifPresent(key -> addKey(command.id(), key));
  }

  /**
   * Gives a command another key beside its own.
   *
   * @throws IllegalArgumentException if the key is taken
   */
  public void addKey(String id, KeyStroke key) {
    String taken = keys.putIfAbsent(key, id);
    if (taken != null) {
      throw new IllegalArgumentException(
          Keys.words(key) + " is the key of " + taken + " and of " + id);
    }
  }

  /** All commands, in the order they were added. */
  public List<Command> all() {
    return List.copyOf(commands.values());
  }

  /**
   * A command by its id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Command get(String id) {
    return Optional.ofNullable(commands.get(id))
        .orElseThrow(() -> new IllegalArgumentException("there is no command " + id));
  }

  /** The keys of a command, its own first. */
  public List<KeyStroke> keysOf(String id) {
    return keys.entrySet().stream()
        .filter(entry -> entry.getValue().equals(id))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Does a command if it can be done now. */
  public void run(String id) {
    run(get(id));
  }

  private static void run(Command command) {
    if (command.enabled().getAsBoolean()) {
      command.run().run();
    }
  }

  /** A menu item for a command. */
  public JMenuItem menuItem(String id) {
    Command command = get(id);
    JMenuItem item = new JMenuItem(command.name());
    command.key().ifPresent(item::setAccelerator);
    dress(item, command, "menu.");
    return item;
  }

  /** A menu item for a command that is one choice of several, marked while it is the chosen one. */
  public JMenuItem choiceItem(String id, BooleanSupplier chosen) {
    Command command = get(id);
    JRadioButtonMenuItem item = new JRadioButtonMenuItem(command.name());
    command.key().ifPresent(item::setAccelerator);
    dress(item, command, "menu.");
    choices.add(new Choice(item, chosen));
    item.setSelected(chosen.getAsBoolean());
    return item;
  }

  /** A button for a command. */
  public JButton button(String id) {
    Command command = get(id);
    JButton button = Controls.button(command.name());
    dress(button, command, "button.");
    return button;
  }

  private void dress(AbstractButton control, Command command, String place) {
    control.setName(place + command.id());
    control.setMnemonic(command.mnemonic());
    control.getAccessibleContext().setAccessibleDescription(command.tip());
    control.setToolTipText(tip(command));
    control.addActionListener(
        event -> {
          run(command);
          refresh();
        });
    control.setEnabled(command.enabled().getAsBoolean());
    shown.add(new Shown(command, control));
  }

  private static String tip(Command command) {
    return command.tip() + command.key().map(key -> "  (" + Keys.words(key) + ")").orElse("");
  }

  /** Looks again which menu items and buttons can be used. */
  public void refresh() {
    choices.forEach(one -> one.item().setSelected(one.chosen().getAsBoolean()));
    shown.forEach(one -> one.control().setEnabled(one.command().enabled().getAsBoolean()));
  }

  /** Makes all keys work wherever the focus is inside a component, such as a window's root. */
  public void bind(JComponent root) {
    keys.forEach(
        (key, id) -> {
          root.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, id);
          root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(key, id + key);
          KeyAction action = new KeyAction(get(id), key);
          root.getActionMap().put(id, action);
          root.getActionMap().put(id + key, action);
        });
  }

  /**
   * What a key does; it leaves the key alone while that cannot be done, or while a person types.
   */
  private static final class KeyAction extends AbstractAction {
    private static final long serialVersionUID = 1L;
    private final transient Command command;
    private final KeyStroke key;

    KeyAction(Command command, KeyStroke key) {
      this.command = command;
      this.key = key;
    }

    @Override
    public boolean accept(Object sender) {
      return !(Keys.writes(key) && isTyping()) && command.enabled().getAsBoolean();
    }

    @Override
    public void actionPerformed(ActionEvent event) {
      Commands.run(command);
    }

    private static boolean isTyping() {
      var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
      return owner instanceof JTextComponent text && text.isEditable() || owner instanceof JTable;
    }
  }
}
