// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RestCurvatureTest {
  @TempDir Path folder;

  private static final int PIECES = 12;
  private static final double BEND_RADIUS = 0.2;

  private Skeleton arc() {
    TreeText text = new TreeText(8, 0.5);
    for (int k = 0; k < PIECES; k++) {
      double angle = 1.5 * (k + 1) / PIECES;
      String parent =
          k == 0
              ? "\"parent\": null, \"start_mm\": [0,0,0]"
              : TreeText.text("\"parent\": \"t%d\"", k - 1);
      text.segment(
          TreeText.text(
              "\"id\": \"t%d\", %s, \"kind\": \"trunk\", \"end_mm\": [%.9f, 0, %.9f],"
                  + " \"caliper_start_mm\": 20, \"caliper_end_mm\": 20",
              k,
              parent,
              1000 * BEND_RADIUS * (1 - Math.cos(angle)),
              1000 * BEND_RADIUS * Math.sin(angle)));
    }
    return new Skeleton(text.read(folder).tree());
  }

  @Test
  void limbMeasuredAlongACircle_hasItsCurvatureEverywhere() {
    Skeleton skeleton = arc();
    RestCurvature rest = new RestCurvature(skeleton);
    for (int i = 0; i < skeleton.size(); i++) {
      for (double part : new double[] {0, 0.4, 1}) {
        Vector3 found = rest.at(i, part * skeleton.length(i));
        // polygon instead of arc: (1.5/12)^2 / 24
        assertThat(found.y()).isCloseTo(1 / BEND_RADIUS, within(1e-3 / BEND_RADIUS));
        assertThat(Math.hypot(found.x(), found.z())).isLessThan(1e-6);
      }
    }
  }

  @Test
  void straightLimb_hasNone() {
    TreeText text =
        new TreeText(8, 0.5)
            .segment(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,100], \"caliper_start_mm\": 20, \"caliper_end_mm\": 18");
    RestCurvature rest = new RestCurvature(new Skeleton(text.read(folder).tree()));
    assertThat(rest.at(0, 0.05)).isEqualTo(Vector3.ZERO);
  }
}
