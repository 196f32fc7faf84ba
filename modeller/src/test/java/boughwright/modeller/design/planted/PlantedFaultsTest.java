// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.TreeRules;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlantedFaultsTest {
  private static final List<PlantedFaults> TREES = PlantedFaults.hundred();

  @Test
  void trees_areWithoutAnyFinding_andOfTheSizesOfTheTrade() {
    for (PlantedFaults planted : TREES) {
      assertThat(
              TreeRules.findings(
                  planted.document().tree().segments(), planted.document().tree().wounds()))
          .extracting(Finding::found)
          .as("seed " + planted.seed())
          .isEmpty();
      assertThat(planted.document().tree().segments()).hasSizeBetween(20, 80);
    }
  }

  @Test
  void everyKind_isPlantedOftenEnough() {
    for (PlantedKind kind : PlantedKind.values()) {
      assertThat(TREES)
          .filteredOn(tree -> tree.faults().stream().anyMatch(fault -> fault.kind() == kind))
          .as(kind.name())
          .hasSizeGreaterThanOrEqualTo(25);
    }
  }
}
