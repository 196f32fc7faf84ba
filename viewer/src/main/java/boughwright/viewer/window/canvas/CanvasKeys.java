// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.window.look.Command;
import java.awt.event.ActionEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** The keys that work while the keyboard is on the tree. */
final class CanvasKeys extends AbstractAction {
  private static final long serialVersionUID = 1L;

  private final transient Runnable run;

  private CanvasKeys(Runnable run) {
    this.run = run;
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    run.run();
  }

  /**
   * Makes them work.
   *
   * @param cancel what Escape does, wherever the keyboard is in the window
   */
  static void bind(JComponent view, List<Command> commands, Runnable cancel) {
    for (Views.KeyOf one : Views.keysOnTree()) {
      Command command =
          commands.stream().filter(c -> c.id().equals(one.command())).findFirst().orElseThrow();
      view.getInputMap(JComponent.WHEN_FOCUSED).put(one.key(), one.command());
      view.getActionMap().put(one.command(), new CanvasKeys(command.run()));
    }
    for (Command command : commands) {
      command
          .key()
          .ifPresent(
              key -> {
                view.getInputMap(JComponent.WHEN_FOCUSED).put(key, command.id());
                view.getActionMap()
                    .put(
                        command.id(),
                        new CanvasKeys(
                            () -> {
                              if (command.enabled().getAsBoolean()) {
                                command.run().run();
                              }
                            }));
              });
    }
    view.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW)
        .put(KeyStroke.getKeyStroke("ESCAPE"), "tool.cancel");
    view.getActionMap().put("tool.cancel", new CanvasKeys(cancel));
  }
}
