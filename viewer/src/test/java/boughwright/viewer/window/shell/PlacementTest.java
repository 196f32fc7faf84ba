// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.Rectangle;
import org.junit.jupiter.api.Test;

/** Where a window comes to stand. */
class PlacementTest {
  private static final Dimension LEAST = new Dimension(1024, 640);

  @Test
  void aFirstWindow_takesMostOfAUsualScreen_inItsMiddle() {
    assertThat(Placement.first(new Rectangle(0, 0, 1600, 900), LEAST))
        .isEqualTo(new Rectangle(120, 67, 1360, 765));
  }

  @Test
  void aFirstWindow_growsNoFurtherOnALargeScreen() {
    assertThat(Placement.first(new Rectangle(0, 0, 3840, 2160), LEAST).getSize())
        .isEqualTo(new Dimension(1600, 1000));
  }

  @Test
  void aSmallScreen_isFilled_butNeverLeft() {
    Rectangle room = new Rectangle(0, 30, 1000, 600);
    assertThat(Placement.first(room, LEAST)).isEqualTo(room);
  }

  @Test
  void aPlaceThatIsGone_becomesTheNearestThatIsThere() {
    Rectangle room = new Rectangle(0, 0, 1920, 1080);
    assertThat(Placement.fitted(new Rectangle(3000, -200, 1200, 800), room))
        .isEqualTo(new Rectangle(720, 0, 1200, 800));
    assertThat(Placement.fitted(new Rectangle(100, 50, 1200, 800), room))
        .isEqualTo(new Rectangle(100, 50, 1200, 800));
  }
}
