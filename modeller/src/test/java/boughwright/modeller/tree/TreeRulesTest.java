// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import static boughwright.modeller.tree.Sticks.on;
import static boughwright.modeller.tree.Sticks.tree;
import static boughwright.modeller.tree.Sticks.trunk;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import boughwright.modeller.geometry.Point3;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TreeRulesTest {
  private static final Duration HANG = Duration.ofSeconds(20);
  private static final Point3 OUT = new Point3(0.1, 0, 0.12);

  private static Link link(String id, String parent) {
    return new Link(id, Optional.ofNullable(parent));
  }

  @Test
  void soundTree_hasNoFinding() {
    List<Segment> segments = List.of(trunk("t"), on("t", 0.5, "b", Kind.BRANCH, OUT));
    assertThat(TreeRules.findings(segments, List.of())).isEmpty();
  }

  @Test
  void twoRings_areTwoFindings_eachNamingItsOwnIds() {
    List<Finding> findings =
        TreeRules.linkFindings(
            List.of(
                link("t", null),
                link("a", "b"),
                link("b", "a"),
                link("c", "d"),
                link("d", "e"),
                link("e", "c"),
                link("leaf", "a")));
    assertThat(findings).extracting(Finding::kind).containsExactly("ring", "ring");
    assertThat(findings.get(0).subjects()).containsExactlyInAnyOrder("a", "b");
    assertThat(findings.get(1).subjects()).containsExactlyInAnyOrder("c", "d", "e");
    assertThat(findings.get(1).found()).doesNotContain("leaf");
  }

  @Test
  void faultsOfManyKinds_areFoundTogether() {
    List<Finding> findings =
        TreeRules.linkFindings(
            List.of(link("t", null), link("u", null), link("x", "gone"), link("x", "t")));
    assertThat(findings)
        .extracting(Finding::kind)
        .containsExactlyInAnyOrder("duplicate-id", "unknown-parent", "several-bases");
    assertThat(findings)
        .extracting(Finding::field)
        .containsExactlyInAnyOrder("segments[3].id", "segments[2].parent", "segments[1].parent");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 4_999})
  void longRing_isFound_withoutRecursion(int joined) {
    List<Link> links = new ArrayList<>(List.of(link("t", null)));
    for (int i = 0; i < 5_000; i++) {
      links.add(link("c" + i, "c" + (i + 1 < 5_000 ? i + 1 : joined)));
    }
    List<Finding> findings = assertTimeoutPreemptively(HANG, () -> TreeRules.linkFindings(links));
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).subjects()).hasSize(5_000 - joined);
  }

  /** Every segment sits on a random other one; a plain walk upward from each is the check. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void rings_areFoundExactlyWhereAWalkUpwardNeverEnds(long seed) {
    Random random = new Random(seed);
    List<Link> links = new ArrayList<>(List.of(link("0", null)));
    for (int i = 1; i < 60; i++) {
      links.add(link("" + i, "" + random.nextInt(60)));
    }
    boolean endless = false;
    for (int i = 0; i < 60; i++) {
      int at = i;
      int steps = 0;
      while (at != 0 && steps++ < 100) {
        at = Integer.parseInt(links.get(at).parent().orElseThrow());
      }
      endless |= at != 0;
    }
    assertThat(TreeRules.linkFindings(links).stream().anyMatch(f -> f.kind().equals("ring")))
        .isEqualTo(endless);
  }

  @Test
  void tree_refusesWhatTheRulesFault() {
    assertThatIllegalArgumentException().isThrownBy(() -> tree()).withMessageContaining("no wood");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tree(trunk("t"), trunk("u")))
        .withMessageContaining("\"t\", \"u\"");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> tree(trunk("t"), on("t", 1, "z", Kind.TRUNK, new Point3(0, 0, 0.1))))
        .withMessageContaining("no length");
  }

  @Test
  void barkOfTheTree_countsWhereASegmentHasNone() {
    List<Segment> segments = List.of(trunk("t"), on("t", 0.5, "b", Kind.BRANCH, OUT));
    assertThat(TreeRules.findings(segments, List.of(), OptionalDouble.of(0.0049))).isEmpty();
    assertThat(TreeRules.findings(segments, List.of(), OptionalDouble.of(0.005)))
        .extracting(Finding::kind)
        .containsExactly("no-wood");
  }

  @Test
  void continuingMidway_isRemarked() {
    Segment b = on("t", 0.5, "b", Kind.BRANCH, OUT);
    Segment odd =
        new Segment(
            b.id(),
            b.parent(),
            b.along(),
            Optional.of(Joint.CONTINUES),
            b.kind(),
            b.start(),
            b.end(),
            b.caliperStart(),
            b.caliperEnd(),
            b.bark(),
            b.live(),
            b.extras());
    assertThat(TreeRules.findings(List.of(trunk("t"), odd), List.of()))
        .extracting(Finding::kind)
        .containsExactly("continues-midway");
  }

  @ParameterizedTest
  @ValueSource(strings = {"B1", "b1\u200b", "b\uff11", " b1"})
  void idThatLooksLikeAnother_isRemarked(String twin) {
    List<Finding> findings =
        TreeRules.linkFindings(List.of(link("t", null), link("b1", "t"), link(twin, "t")));
    assertThat(findings).extracting(Finding::kind).contains("ids-look-alike");
    assertThat(findings).noneMatch(Finding::isFault);
  }
}
