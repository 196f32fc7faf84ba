// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PaceTest {
  private static void took(Pace pace, int times, long milliseconds) {
    for (int n = 0; n < times; n++) {
      pace.took(milliseconds * 1_000_000);
    }
  }

  @Test
  void moving_isDrawnAtUserPixels_whateverTheScreenHas() {
    assertThat(new Pace().scale(2)).isEqualTo(1);
    assertThat(new Pace().scale(1)).isEqualTo(1);
  }

  @Test
  void slowPictures_makeItCoarserOnce_quickOnesFinerAgain() {
    Pace pace = new Pace();
    took(pace, 2, 90);
    assertThat(pace.scale(2)).as("two slow ones say little").isEqualTo(1);
    took(pace, 30, 90);
    double coarse = pace.scale(2);
    assertThat(coarse).isBetween(0.7, 0.8);
    took(pace, 30, 25);
    assertThat(pace.scale(2)).as("neither slow nor quick").isEqualTo(coarse);
    took(pace, 30, 5);
    assertThat(pace.scale(2)).isEqualTo(1);
  }

  @Test
  void oneSlowPictureAmongQuickOnes_changesNothing() {
    Pace pace = new Pace();
    for (int n = 0; n < 20; n++) {
      took(pace, 2, 90);
      took(pace, 1, 20);
    }
    assertThat(pace.scale(1)).isEqualTo(1);
  }
}
