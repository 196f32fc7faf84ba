// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Results of pull tests beside what a person wrote. */
class PullResultsTest {
  private static final List<String> LIMB = List.of("b1", "b1b");
  private static final PullTest FIRST = test("pt1", LocalDate.of(2026, 3, 5));
  private static final PullTest SECOND = test("pt2", LocalDate.of(2026, 4, 1));
  private static final PullResults.Result RESULT =
      new PullResults.Result(LIMB, 5e9, 0.12, List.of(FIRST));

  private static PullTest test(String id, LocalDate day) {
    return new PullTest(
        id,
        "b1b",
        1,
        Direction3.UP.opposite(),
        List.of(new PullTest.Reading(5, 0.01, 0, 0.02, 0.0005)),
        Optional.of(day),
        Map.of());
  }

  private static Tree tree(WoodOverride... overrides) {
    return Sticks.tree(
            Sticks.trunk("t"),
            Sticks.on("t", 0.5, "b1", Kind.BRANCH, new Point3(0.1, 0, 0.1)),
            Sticks.on("b1", 1, "b1b", Kind.BRANCH, new Point3(0.2, 0, 0.1)),
            Sticks.on("t", 0.8, "b2", Kind.BRANCH, new Point3(-0.1, 0, 0.1)))
        .withPullTests(List.of(FIRST, SECOND))
        .withOverrides(List.of(overrides));
  }

  private static WoodOverride said(String pattern, double moe, String source) {
    return new WoodOverride(
        pattern,
        moe > 0 ? OptionalDouble.of(moe) : OptionalDouble.empty(),
        OptionalDouble.of(4e8),
        Optional.of(Response.ELASTIC),
        source.isEmpty() ? Optional.empty() : Optional.of(source),
        Map.of("my_note", "kept"));
  }

  @Test
  void result_isWrittenForEverySegmentOfTheLimb_andKnownAsOne() {
    Tree written = PullResults.with(tree(), RESULT);
    for (String id : LIMB) {
      WoodOverride now = written.overrideFor(id).orElseThrow();
      assertThat(now.moe()).hasValue(5e9);
      assertThat(now.moeSpread()).hasValue(0.12);
      assertThat(now.source()).hasValue("pull test pt1 2026-03-05");
      assertThat(PullResults.isResult(now, written.pullTests())).isTrue();
    }
    assertThat(written.overrideFor("b2")).isEmpty();
    assertThat(PullResults.without(written)).isEqualTo(tree());
  }

  @Test
  void laterResult_takesThePlaceOfTheEarlier_andNamesBothTests() {
    Tree once = PullResults.with(tree(), RESULT);
    Tree twice =
        PullResults.with(once, new PullResults.Result(LIMB, 5.2e9, 0.1, List.of(FIRST, SECOND)));
    assertThat(twice.overrides()).hasSize(2);
    assertThat(twice.overrideFor("b1").orElseThrow().source())
        .hasValue("pull tests pt1, pt2 2026-04-01");
    assertThat(PullResults.byHand(twice, LIMB)).isEmpty();
  }

  @Test
  void modulusByHand_isFound_byIdAndByPattern() {
    assertThat(PullResults.byHand(tree(said("b1", 4.1e9, "my own test")), LIMB)).hasSize(1);
    assertThat(PullResults.byHand(tree(said("b*", 4.1e9, "")), LIMB)).hasSize(1);
    assertThat(PullResults.byHand(tree(said("b*", 4.1e9, "pull test 2026-03-05")), LIMB))
        .as("a test that the file does not hold is a person's word")
        .hasSize(1);
    assertThat(PullResults.byHand(tree(said("b*", 0, "")), LIMB)).isEmpty();
    assertThat(PullResults.byHand(tree(said("b2", 4.1e9, "")), LIMB)).isEmpty();
  }

  @Test
  void testWhoseIdBeginsAlike_isAnother() {
    WoodOverride other = said("b1", 4.1e9, "pull test pt11 2026-03-05");
    assertThat(PullResults.isResult(other, List.of(FIRST))).isFalse();
  }

  @Test
  void whatElseWasSaid_stays_andTheModulusByHandIsTold() {
    Tree written = PullResults.with(tree(said("b1", 4.1e9, "my own test")), RESULT);
    WoodOverride now = written.overrideFor("b1").orElseThrow();
    assertThat(now.shearModulus()).hasValue(4e8);
    assertThat(now.response()).hasValue(Response.ELASTIC);
    assertThat(now.extras()).containsEntry("my_note", "kept");
    String told = "; before: 4.1 GPa, my own test";
    assertThat(now.source()).hasValue("pull test pt1 2026-03-05" + told);
    Tree again =
        PullResults.with(written, new PullResults.Result(LIMB, 5.2e9, 0.1, List.of(FIRST, SECOND)));
    assertThat(again.overrideFor("b1").orElseThrow().source())
        .hasValue("pull tests pt1, pt2 2026-04-01" + told);
  }

  @Test
  void whatAPatternSays_staysForItsOtherSegments() {
    Tree written = PullResults.with(tree(said("b*", 4.1e9, "")), RESULT);
    assertThat(written.overrideFor("b2").orElseThrow().moe()).hasValue(4.1e9);
    assertThat(written.overrideFor("b1").orElseThrow().response()).hasValue(Response.ELASTIC);
  }

  @Test
  void releasedLimb_hasNoModulusSaid_butKeepsTheRest() {
    Tree free = PullResults.released(tree(said("b*", 4.1e9, "")), LIMB);
    assertThat(free.overrideFor("b1").orElseThrow().moe()).isEmpty();
    assertThat(free.overrideFor("b1").orElseThrow().shearModulus()).hasValue(4e8);
    assertThat(free.overrideFor("b2").orElseThrow().moe()).hasValue(4.1e9);
  }
}
