// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.viewer.window.OnScreen;
import boughwright.viewer.window.WindowRobot;
import javax.swing.JFrame;
import javax.swing.JLabel;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Which windows a theme dresses. */
@OnScreen
class ThemeTest {

  /** A label that counts how often it is dressed. */
  private static final class Counted extends JLabel {
    private static final long serialVersionUID = 1L;
    private int dressed;

    @Override
    public void updateUI() {
      super.updateUI();
      dressed++;
    }
  }

  @AfterEach
  void close() {
    WindowRobot.closeAll();
  }

  @Test
  void aWindowIsDressed_untilItIsClosed() {
    WindowRobot.requireDisplay();
    WindowRobot.doOnEvents(
        () -> {
          Theme.apply(Tone.LIGHT, TextSize.USUAL);
          Counted label = new Counted();
          JFrame frame = new JFrame();
          frame.add(label);
          frame.pack();
          int before = label.dressed;
          Theme.apply(Tone.DARK, TextSize.USUAL);
          assertThat(label.dressed).isGreaterThan(before);
          frame.dispose();
          int open = label.dressed;
          Theme.apply(Tone.LIGHT, TextSize.USUAL);
          assertThat(label.dressed).isEqualTo(open);
        });
  }
}
