// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Wire that cannot slip along the bark, against fibres laid round a turn. */
class WireGripTest {
  private static final double FLOW = 150e6;
  private static final double BRANCH = 0.010;
  private static final double GAUGE = 0.003;
  private static final double ANGLE = Math.toRadians(50);

  /** Midpoints of so many pieces of a turn; the corner where flow begins costs this much. */
  private static final int PIECES = 20_000;

  private static final double CORNER = 1e-7;

  private final WireMetal metal = WireMetal.of(Material.ALUMINIUM);
  private final WireGrip grip = new WireGrip(metal, new CoilShape(GAUGE, 1, ANGLE), BRANCH, FLOW);

  /** Virtual work of a wire that follows the surface of a bent tube, piece by piece. */
  private double byPieces(double curvature) {
    double arm = (BRANCH + GAUGE) / 2;
    double area = Math.PI * GAUGE * GAUGE / 4;
    double sum = 0;
    for (int k = 0; k < PIECES; k++) {
      double height = arm * Math.cos(2 * Math.PI * (k + 0.5) / PIECES);
      double along = Math.pow(Math.cos(ANGLE), 2) * height;
      double stress = Math.max(-FLOW, Math.min(FLOW, metal.moe() * along * curvature));
      double wirePerBranch = 1 / Math.cos(ANGLE);
      sum += stress * area * along * wirePerBranch / PIECES;
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 1, 3, 20})
  void moment_isThatOfPiecesRoundATurn(double curvature) {
    double expected = byPieces(curvature);
    assertThat(grip.moment(curvature)).isCloseTo(expected, within(CORNER * expected + 1e-12));
  }

  @Test
  void yield_isWhereTheLineLeavesStraightness() {
    double yield = grip.yield();
    double slope = grip.moment(yield / 2) / (yield / 2);
    assertThat(grip.moment(0.999 * yield)).isCloseTo(0.999 * yield * slope, within(1e-9));
    assertThat(grip.moment(1.2 * yield)).isLessThan(1.199 * yield * slope);
  }
}
