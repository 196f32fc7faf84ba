// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawn in, let out, drawn in again: what a tree keeps and finds again. */
class StagedTrialTest {
  /** As all positions of the solver, of a branch of 0.3 m [m]. */
  private static final double SAME = 1e-4 * 0.3;

  /** A held weight and what holds it, by length and by tension. */
  private static final String BY_LENGTH =
      "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\": [150, 0, -150],"
          + " \"shorten_mm\": 40}]";

  private static final String BY_TENSION =
      "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"t\", \"along\": 1, \"anchor_mm\": [150, 0, -150],"
          + " \"tension_N\": 21}]";

  private static final String WEIGHT =
      "\"hung_weights\": [{\"segment\": \"t\", \"along\": 1, \"mass_kg\": 1.5}]";

  @TempDir Path folder;

  private TreeText branch(String proposal) {
    return new TreeText("{\"name\": \"test wood\", \"moe_GPa\": 6, \"response\": \"fibre\"}")
        .segment(
            "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                + " \"end_mm\": [300, 0, 0], \"caliper_start_mm\": 11, \"caliper_end_mm\": 8")
        .proposal(proposal);
  }

  private static Point3 tip(TrialResult result) {
    assertThat(result.outcome().holds()).as(result.outcome().where()).isTrue();
    return result.segments().get(0).end();
  }

  @ParameterizedTest
  @ValueSource(strings = {BY_LENGTH, BY_TENSION, WEIGHT})
  void branchDrawnInLetOutAndDrawnInAgain_keepsSomeAndFindsTheFirstPose(String proposal) {
    TrialRequest request = branch(proposal).request(folder);
    TrialResult plain = Trial.run(request);
    List<TrialResult> stages = StagedTrial.run(request, List.of(1.0, 0.0, 1.0));
    assertThat(stages).hasSize(3);
    double bent = plain.peak().orElseThrow().bendingStrain();
    assertThat(bent).as("flows").isGreaterThan(0.004);
    assertThat(tip(stages.get(0)).distance(tip(plain))).isLessThan(1e-9);
    double way = -tip(plain).z();
    double kept = -tip(stages.get(1)).z();
    assertThat(kept).isBetween(0.03 * way, 0.7 * way);
    double left = stages.get(1).peak().orElseThrow().bendingStrain();
    assertThat(left).isBetween(0.1 * bent, 0.9 * bent);
    assertThat(tip(stages.get(2)).distance(tip(plain))).isLessThan(SAME);
    stages.get(1).lines().forEach(line -> assertThat(line.tension()).isCloseTo(0, within(1e-9)));
  }

  @Test
  void twentySmallStages_areOne() {
    TrialRequest request = branch(WEIGHT).request(folder);
    List<Double> small = DoubleStream.iterate(0.05, p -> p + 0.05).limit(20).boxed().toList();
    List<TrialResult> stages = StagedTrial.run(request, small);
    assertThat(stages).hasSize(20);
    assertThat(tip(stages.get(19)).distance(tip(Trial.run(request)))).isLessThan(SAME);
  }

  @Test
  void settledBranch_underItsOwnWeightInStages_comesBackToItsMeasuredShapeIfItNeverFlowed() {
    TrialRequest request =
        branch(text("\"hung_weights\": [{\"segment\": \"t\", \"along\": 1, \"mass_kg\": 0.1}]"))
            .plan("\"self_weight\": true,")
            .request(folder);
    List<TrialResult> stages = StagedTrial.run(request, List.of(0.0, 1.0, 0.0));
    assertThat(tip(stages.get(0)).distance(new Point3(0.3, 0, 0))).isLessThan(1e-9);
    assertThat(tip(stages.get(1)).z()).isLessThan(-1e-3);
    assertThat(tip(stages.get(2)).distance(new Point3(0.3, 0, 0))).isLessThan(1e-7);
  }

  @Test
  void settledBranch_thatFlows_keepsSomeOfIt() {
    TrialRequest request = branch(WEIGHT).plan("\"self_weight\": true,").request(folder);
    List<TrialResult> stages = StagedTrial.run(request, List.of(1.0, 0.0));
    assertThat(tip(stages.get(1)).z()).isBetween(0.7 * tip(stages.get(0)).z(), -1e-3);
  }

  @Test
  void stagesBelowNothing_areRefused() {
    TrialRequest request = branch(WEIGHT).request(folder);
    assertThatThrownBy(() -> StagedTrial.run(request, List.of(-0.5)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-0.5");
  }

  @Test
  void stageThatCannotHold_isTheLast() {
    TrialRequest request = branch(BY_TENSION).request(folder);
    List<TrialResult> stages = StagedTrial.run(request, List.of(0.5, 40.0, 1.0));
    assertThat(stages).hasSize(2);
    assertThat(stages.get(1).outcome().holds()).isFalse();
  }
}
