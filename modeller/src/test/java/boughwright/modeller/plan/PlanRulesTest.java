// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import static boughwright.modeller.tree.Sticks.on;
import static boughwright.modeller.tree.Sticks.tree;
import static boughwright.modeller.tree.Sticks.trunk;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanRulesTest {
  private static final Skeleton TREE =
      new Skeleton(tree(trunk("t"), on("t", 0.5, "b", Kind.BRANCH, new Point3(0.1, 0, 0.05))));

  private static GuyLine line(String id, Anchor anchor, Hold hold, OptionalDouble pad) {
    return new GuyLine(id, new Spot("b", 1), pad, anchor, hold, Map.of());
  }

  private static Anchor fixed(double x, double y, double z) {
    return new Anchor.Fixed(new Point3(x, y, z));
  }

  private static Plan plan(List<Spot> cuts, GuyLine... lines) {
    Proposal proposal =
        new Proposal("p", Optional.of("b"), List.of(lines), List.of(), List.of(), Map.of());
    return new PlanDraft("a")
        .cuts(cuts)
        .apex(Optional.of("b"))
        .proposals(List.of(proposal))
        .clamp(Optional.of(new Spot("t", 0)))
        .build();
  }

  private static List<String> kinds(Plan plan) {
    return PlanRules.findings(TREE, plan).stream().map(Finding::kind).toList();
  }

  @Test
  void soundPlan_hasNoFinding() {
    GuyLine line = line("g", fixed(0.1, 0, 0), new Hold.Tension(5), OptionalDouble.of(Math.PI));
    assertThat(kinds(plan(List.of(), line))).isEmpty();
  }

  @Test
  void everythingBeyondACut_isNamed() {
    GuyLine line = line("g", fixed(0.1, 0, 0), new Hold.Tension(5), OptionalDouble.empty());
    assertThat(kinds(plan(List.of(new Spot("b", 0.5)), line))).containsExactly("cut-away");
    assertThat(kinds(plan(List.of(new Spot("b", 0)), line)))
        .containsExactly("cut-away", "cut-away");
  }

  /** The branch is 10 mm thick, so a pad underneath is 5 mm nearer to an anchor 50 mm below. */
  @ParameterizedTest
  @CsvSource({
    "0.0499, false, true",
    "0.0501, false, false",
    "0.0449, true, true",
    "0.0451, true, false"
  })
  void shortening_staysBelowTheGap_fromPadToAnchor(double metres, boolean pad, boolean sound) {
    OptionalDouble round = pad ? OptionalDouble.of(Math.PI) : OptionalDouble.empty();
    GuyLine line = line("g", fixed(0.1, 0, 0), new Hold.Shortening(metres), round);
    assertThat(kinds(plan(List.of(), line)).isEmpty()).isEqualTo(sound);
  }

  @Test
  void lineTiedToItsOwnPoint_isAFault() {
    Anchor here = new Anchor.OnTree(new Spot("b", 1));
    GuyLine line = line("g", here, new Hold.Length(0.1), OptionalDouble.empty());
    assertThat(kinds(plan(List.of(), line))).containsExactly("same-ends");
  }

  @Test
  void namesAlone_areJudged_whenTheTreeIsNotSound() {
    PlanRules rules = PlanRules.ofNames(java.util.Set.of("t", "b1"));
    assertThat(rules.name("b1", "about")).isEmpty();
    assertThat(rules.name("b2", "about"))
        .singleElement()
        .satisfies(finding -> assertThat(finding.remedy()).contains("b1"));
  }

  @Test
  void idsInAPlan_areUnique() {
    GuyLine line = line("g", fixed(0.1, 0, 0), new Hold.Tension(5), OptionalDouble.empty());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> plan(List.of(), line, line))
        .withMessageContaining("g");
    Plan one = plan(List.of(), line);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Document(TREE.tree(), List.of(one, one), Map.of()));
  }
}
