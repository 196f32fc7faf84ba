// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A movement held by a long line is the same bend as the pull that makes it. */
class HeldTipTest {
  /** The line leans by at most the movement of the tip over its own length. */
  private static final double LEAN = 2e-3;

  private static final PlainBranch BRANCH =
      new PlainBranch(0.3, 0.014, 0.008, 0.0005, OptionalDouble.empty());

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.06, 0.15})
  void lineThatHoldsTheTip_pullsAsHardAsTheWeightThatBroughtItThere(double down) {
    Species species = SpeciesTable.bundled().find("carpinus-betulus").get(0);
    TipPull pull = TipPull.of(BRANCH, species, down);
    TrialResult held = Trial.run(pull.held(species));
    assertThat(held.outcome().holds()).isTrue();
    LineTrial line = held.lines().get(0);
    assertThat(line.id()).isEqualTo(TipPull.LINE);
    assertThat(line.tension()).isCloseTo(pull.force(), within(LEAN * pull.force()));
    assertThat(held.peak().orElseThrow().tensionStrain())
        .isCloseTo(
            pull.trial().peak().orElseThrow().tensionStrain(),
            within(LEAN * held.peak().get().tensionStrain()));
  }
}
