// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.SpeciesTable;
import boughwright.physics.rod.RodOptions;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreeStandTest {
  private static final double MOE = 8e9;
  private static final double LENGTH = 0.4;
  private static final double DIAMETER = 0.01;

  /** L3 / 3 E I of a cantilever (Gere and Timoshenko, Mechanics of Materials; from memory). */
  private static final double CANTILEVER =
      LENGTH * LENGTH * LENGTH / (3 * MOE * Math.PI * Math.pow(DIAMETER, 4) / 64);

  /** Eight midpoints of a parabola miss its integral by 1 / (4 n2) of it. */
  private static final double EIGHT_MIDPOINTS = 0.005;

  /** The tip moves by a thousandth of the length: beam theory is good to its square. */
  private static final double SMALL = 1e-4;

  @TempDir private Path folder;

  private TreeStand rod(double along) {
    Document document =
        new TreeText(MOE / 1e9, 0.5)
            .segment(
                "\"id\": \"t1\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,400], \"caliper_start_mm\": 10, \"caliper_end_mm\": 10")
            .proposal(
                TreeText.text(
                    "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t1\", \"along\": %s,"
                        + " \"anchor_mm\": [300,0,0], \"shorten_mm\": 20}]",
                    along))
            .read(folder);
    return new TreeStand(
        document.tree(),
        document.plans().get(0),
        SpeciesTable.bundled().generic(),
        RodOptions.DEFAULT);
  }

  @Test
  void compliance_isThatOfACantilever() {
    assertThat(rod(1).compliance(new Spot("t1", 1)))
        .isCloseTo(CANTILEVER, within(EIGHT_MIDPOINTS * CANTILEVER));
    assertThat(rod(1).compliance(new Spot("t1", 0.5)))
        .isCloseTo(CANTILEVER / 8, within(EIGHT_MIDPOINTS * CANTILEVER / 8));
  }

  @Test
  void smallForce_bendsARodLikeACantilever() {
    double force = 1e-3 * LENGTH / CANTILEVER;
    TreeStand.Stood stood = rod(1).pulled(List.of(), new Spot("t1", 1), new Vector3(force, 0, 0));
    assertThat(stood.holds()).isTrue();
    assertThat(stood.point(new Spot("t1", 1)).x())
        .isCloseTo(force * CANTILEVER, within(SMALL * force * CANTILEVER));
  }

  @Test
  void trunkBase_isHeld() {
    assertThat(rod(1).isHeld(new Spot("t1", 0))).isTrue();
    assertThat(rod(1).isHeld(new Spot("t1", 0.5))).isFalse();
    assertThat(rod(1).compliance(new Spot("t1", 0))).isZero();
  }

  @Test
  void straightLineWood_risksNothingThatIsKnown() {
    TreeText text = new TreeText(8, 0.5);
    TrialRequest request =
        text.segment(
                "\"id\": \"t1\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,400], \"caliper_start_mm\": 10, \"caliper_end_mm\": 10")
            .proposal(
                "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t1\", \"along\": 1,"
                    + " \"anchor_mm\": [300,0,0], \"shorten_mm\": 60}]")
            .request(folder);
    RiskGuess guess =
        new TreeStand(request.tree(), request.plan(), request.species(), RodOptions.DEFAULT)
            .with(request.proposals())
            .risk();
    assertThat(guess).isEqualTo(RiskGuess.NONE);
  }
}
