// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.tree.PullTest.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PullTestRulesTest {
  private static final Segment TRUNK = Sticks.trunk("t");

  private static PullTest test(String segment, Reading... readings) {
    return new PullTest(
        "q", segment, 1, Direction3.UP, List.of(readings), Optional.empty(), Map.of());
  }

  private static Reading reading(double force, double movedMm, double baseMm) {
    return new Reading(force, movedMm * 1e-3, baseMm * 1e-3, 0.02, 0.5e-3);
  }

  private static Tree tree(PullTest... tests) {
    return new TreeDraft("test", new TreeWood.OfSpecies("unknown"), List.of(TRUNK))
        .pullTests(List.of(tests))
        .build();
  }

  @Test
  void tree_refusesTests_thatDoNotFitIt() {
    Reading one = reading(5, 3, 0);
    assertThat(tree(test("t", one)).pullTests()).hasSize(1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tree(test("x", one)))
        .withMessageContaining("\"x\"");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tree(test("t", one), test("t", one)))
        .withMessageContaining("used twice");
  }

  /** The base is taken off: 6 mm with 4 mm of the base bends less than 3 mm without. */
  @Test
  void strongerPull_thatBendsLess_isQuestioned_inAnyOrder() {
    Reading weak = reading(5, 3, 0);
    Reading strong = reading(10, 6, 4);
    for (PullTest test : List.of(test("t", weak, strong), test("t", strong, weak))) {
      assertThat(PullTestRules.findings(List.of("t"), List.of(test)))
          .extracting(Finding::kind)
          .containsExactly("no-growth");
    }
  }

  @Test
  void repeatedPull_ofOneForce_isNotQuestioned() {
    PullTest test = test("t", reading(5, 3.2, 0), reading(5, 3, 0), reading(9, 5, 0));
    assertThat(PullTestRules.findings(List.of("t"), List.of(test))).isEmpty();
  }
}
