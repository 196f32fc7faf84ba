// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JComponent;
import org.junit.jupiter.api.Test;

/** Sizes of panels within panels, with no window. */
class HighAsWideTest {
  private static final Dimension SIZE = new Dimension(120, 30);

  /** Something of a fixed size that counts how often it is asked for it. */
  private static final class Counted extends JComponent {
    private static final long serialVersionUID = 1L;
    private final AtomicInteger asked = new AtomicInteger();

    @Override
    public Dimension getPreferredSize() {
      asked.incrementAndGet();
      return SIZE;
    }

    @Override
    public Dimension getMinimumSize() {
      asked.incrementAndGet();
      return SIZE;
    }
  }

  private static int asked(int levels) {
    Counted part = new Counted();
    JComponent panel = part;
    for (int n = 0; n < levels; n++) {
      panel = Controls.stack(Controls.row(panel));
    }
    assertThat(panel.getPreferredSize()).isEqualTo(SIZE);
    return part.asked.get();
  }

  @Test
  void aPartIsAskedNoOftener_howeverDeepItLies() {
    // each fold looks through what is in it for the longest word: that grows by level, not times it
    assertThat(asked(6)).isLessThanOrEqualTo(6 * asked(1));
  }

  @Test
  void aSizeIsNotKept_onceItIsWorkedOut() {
    Counted part = new Counted();
    JComponent other = new Counted();
    JComponent panel = Controls.stack(part);
    assertThat(panel.getPreferredSize().height).isEqualTo(SIZE.height);
    panel.add(other, "growx");
    assertThat(panel.getPreferredSize().height).isEqualTo(2 * SIZE.height);
    part.setVisible(false);
    assertThat(panel.getPreferredSize().height).isEqualTo(SIZE.height);
  }
}
