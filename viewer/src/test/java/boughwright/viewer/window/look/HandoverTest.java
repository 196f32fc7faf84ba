// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import java.awt.GridLayout;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Keys typed while the keyboard is on its way from one field to the next. */
@OnScreen
class HandoverTest {
  private List<JTextField> fields;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    robot = new WindowRobot();
    fields =
        WindowRobot.onEvents(
            () -> {
              List<JTextField> made = Stream.generate(JTextField::new).limit(3).toList();
              JFrame frame = new JFrame();
              frame.setLayout(new GridLayout(1, 0));
              for (int i = 0; i < made.size(); i++) {
                JTextField next = made.get(Math.min(i + 1, made.size() - 1));
                made.get(i).addActionListener(event -> Handover.to(next));
                frame.add(made.get(i));
              }
              frame.setSize(400, 80);
              frame.setVisible(true);
              return made;
            });
    robot.click(fields.get(0));
    robot.waitFor("the first has the keyboard", fields.get(0)::isFocusOwner);
  }

  @AfterEach
  void close() {
    WindowRobot.closeAll();
  }

  /** All within a millisecond, which the toolkit's own clock cannot tell apart. */
  @Test
  void keysOfOneMoment_goEachToItsField() {
    WindowRobot.doOnEvents(() -> post("12\n34\n56\n7", System.currentTimeMillis()));

    robot.waitFor("all is typed", () -> fields.get(2).getText().endsWith("7"));
    assertThat(WindowRobot.onEvents(() -> fields.stream().map(JTextField::getText).toList()))
        .containsExactly("12", "34", "567");
  }

  @Test
  void afterAHandover_keysGoWhereTheMouseSays() {
    WindowRobot.doOnEvents(() -> post("1\n2", System.currentTimeMillis()));
    robot.waitFor("it is handed on", () -> fields.get(1).getText().equals("2"));
    robot.click(fields.get(0));
    robot.type("8");

    robot.waitFor("it is typed", () -> fields.get(0).getText().contains("8"));
    assertThat(fields.get(1).getText()).isEqualTo("2");
  }

  private void post(String text, long when) {
    text.chars()
        .forEach(
            letter -> {
              int code = KeyEvent.getExtendedKeyCodeForChar(letter);
              key(KeyEvent.KEY_PRESSED, code, (char) letter, when);
              key(KeyEvent.KEY_TYPED, KeyEvent.VK_UNDEFINED, (char) letter, when);
              key(KeyEvent.KEY_RELEASED, code, (char) letter, when);
            });
  }

  private void key(int id, int code, char letter, long when) {
    Toolkit.getDefaultToolkit()
        .getSystemEventQueue()
        .postEvent(new KeyEvent(fields.get(0), id, when, 0, code, letter));
  }
}
