// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hands that pull much farther than any wood goes: what is shown is a pose that wood can be in. */
class FarPullTest {
  private static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");

  /**
   * The most that is believed of any wood, a hundred times the strain at which it flows, 0.28 % for
   * this one, and what a peak between two places that were looked at may add [1].
   */
  private static final double MOST = 0.3;

  private static final List<Vector3> WAYS =
      List.of(
          new Vector3(0, 0, -0.3),
          new Vector3(0, 0, 0.3),
          new Vector3(0.3, 0, 0),
          new Vector3(-0.3, 0, 0.1),
          new Vector3(0, 0.3, -0.2),
          new Vector3(0, -0.3, -0.2));

  private static Grab grab(Spot spot) throws InputException {
    Document document = TreeFiles.read(HORNBEAM).document();
    return Grab.anew(
        document.tree(),
        document.plans().get(0).withProposals(List.of()),
        TrialSpecies.of(document.tree()),
        spot);
  }

  private static void note(TrialResult trial, List<Double> into) {
    assertThat(trial.outcome().holds()).isTrue();
    trial.peak().map(Peak::bendingStrain).ifPresent(into::add);
  }

  @Test
  void pullByHandBeyondAllWood_neverShowsAPoseNoWoodCanBeIn() throws InputException {
    List<Double> strains = new ArrayList<>();
    for (String segment : List.of("b1d", "b2")) {
      for (Vector3 way : WAYS) {
        LivePull pull = LivePull.of(grab(new Spot(segment, 1)));
        LiveHand hand = pull.hand();
        for (int n = 1; n <= 12; n++) {
          note(hand.to(pull.free().plus(way.times(n / 6.0))).trial(), strains);
        }
      }
    }
    assertThat(strains).hasSizeGreaterThan(90).allMatch(strain -> strain < MOST);
    // the wood is taken to where it breaks, so the limit is put to the test
    assertThat(strains).anyMatch(strain -> strain > 0.02);
  }

  @Test
  void lineDrawnInBeyondAllWood_neverShowsAPoseNoWoodCanBeIn() throws InputException {
    List<Double> strains = new ArrayList<>();
    for (String segment : List.of("b1d", "b2")) {
      for (Vector3 way : WAYS) {
        LivePull pull = LivePull.of(grab(new Spot(segment, 1)));
        for (int n = 1; n <= 8; n++) {
          note(pull.to(pull.free().plus(way.times(n / 4.0))).trial(), strains);
        }
      }
    }
    assertThat(strains).hasSizeGreaterThan(60).allMatch(strain -> strain < MOST);
    assertThat(strains).anyMatch(strain -> strain > 0.02);
  }
}
