// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;

/** What can be done in a window. */
class CommandsTest {
  private static final KeyStroke CTRL_S =
      KeyStroke.getKeyStroke(KeyEvent.VK_S, InputEvent.CTRL_DOWN_MASK);

  private final AtomicInteger done = new AtomicInteger();
  private final AtomicBoolean can = new AtomicBoolean(true);
  private final Commands commands = new Commands();

  private Command command(String id, KeyStroke key) {
    return new Command(id, "Save", 'S', Optional.of(key), "Saves", done::incrementAndGet, can::get);
  }

  @Test
  void aKeyThatIsTaken_isRefusedWithBothNames() {
    commands.add(command("file.save", CTRL_S));
    assertThatThrownBy(() -> commands.add(command("plan.save", CTRL_S)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Ctrl+S")
        .hasMessageContaining("file.save")
        .hasMessageContaining("plan.save");
  }

  @Test
  void anIdThatIsTaken_isRefused() {
    commands.add(command("file.save", CTRL_S));
    KeyStroke other = KeyStroke.getKeyStroke(KeyEvent.VK_F5, 0);
    assertThatThrownBy(() -> commands.add(command("file.save", other)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aCommandThatCannotBeDone_isNotDone() {
    commands.add(command("file.save", CTRL_S));
    can.set(false);
    commands.run("file.save");
    assertThat(done).hasValue(0);
    can.set(true);
    commands.run("file.save");
    assertThat(done).hasValue(1);
  }

  @Test
  void keys_areCalledAsPeopleCallThem() {
    int both = InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK;
    assertThat(Keys.words(KeyStroke.getKeyStroke(KeyEvent.VK_Z, both))).isEqualTo("Ctrl+Shift+Z");
    assertThat(Keys.words(KeyStroke.getKeyStroke(KeyEvent.VK_F6, 0))).isEqualTo("F6");
    assertThat(Keys.words(KeyStroke.getKeyStroke(KeyEvent.VK_1, InputEvent.ALT_DOWN_MASK)))
        .isEqualTo("Alt+1");
  }
}
