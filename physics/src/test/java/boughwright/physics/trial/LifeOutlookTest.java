// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Hold;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Features;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LifeOutlookTest {
  private static final double ROUNDING = 1e-12;
  private static final FailurePlace TOP =
      new FailurePlace("b1", 0.1, OptionalDouble.of(0.004), 0, "top");

  private static List<String> life(Features features, Optional<Boolean> live, boolean slips) {
    VerdictCase tried = new VerdictCase("carpinus-betulus", new Hold.Tension(8), features, live);
    return new LifeOutlook(tried.request()).beyond(TOP, slips);
  }

  private static Features deadFace(double roundDeg, double widthDeg) {
    return new Features(
        OptionalDouble.empty(),
        Optional.of(new DeadFace(Math.toRadians(roundDeg), Math.toRadians(widthDeg), 0.002)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 90, 0.5",
    "0, 0, 180, 0.5",
    "0, 0, 270, 0.25",
    "0, 180, 90, 0.25",
    "0, 180, 180, 0",
    "0, 180, 270, 0",
    "0, 90, 90, 0.375",
    "350, 80, 90, 0.375",
    "0, 270, 90, 0.375",
    "0, 0, 360, 0"
  })
  void girth_isLiveWhereItIsNeitherCrackedNorDead(
      double crackDeg, double deadDeg, double widthDeg, double share) {
    assertThat(
            LifeOutlook.liveShare(deadFace(deadDeg, widthDeg).deadFace(), Math.toRadians(crackDeg)))
        .isCloseTo(share, within(ROUNDING));
  }

  @Test
  void wholeLimb_keepsHalfItsGirth() {
    assertThat(LifeOutlook.liveShare(Optional.empty(), 1)).isCloseTo(0.5, within(ROUNDING));
    assertThat(life(Features.NONE, Optional.empty(), false))
        .anyMatch(sentence -> sentence.contains("50 % of its girth stays live, on the underside"));
  }

  @Test
  void thinStrip_isNotCountedOn() {
    assertThat(life(deadFace(180, 120), Optional.empty(), false))
        .anyMatch(sentence -> sentence.contains("17 % of its girth stays live: too little"));
  }

  @ParameterizedTest
  @CsvSource({
    "true, 'Live growth is left beyond the bend, on b1'",
    "false, No live growth is left beyond the bend",
    ", was not said"
  })
  void growthBeyondTheBend_isToldApart(Boolean live, String said) {
    assertThat(life(Features.NONE, Optional.ofNullable(live), false).get(0)).contains(said);
  }

  @ParameterizedTest
  @CsvSource({"true", "false"})
  void bark_isSpokenOfWhenItSlips(boolean slips) {
    List<String> life = life(Features.NONE, Optional.of(true), slips);
    assertThat(life.stream().anyMatch(sentence -> sentence.startsWith("Bark slips")))
        .isEqualTo(slips);
  }
}
