// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.apex;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Leaders by shape alone, on the invented hornbeam of the examples. */
class LeadersTest {
  private static Document document;

  @BeforeAll
  static void read() throws InputException {
    document = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
  }

  private static Plan plan(List<Spot> cuts, Optional<Planting> planting) {
    return new PlanDraft("x").cuts(cuts).planting(planting).build();
  }

  private static List<Leader> leaders(Tree tree, List<Spot> cuts) {
    return Leaders.of(new Skeleton(tree), plan(cuts, Optional.empty())).all();
  }

  private static List<String> tips(List<Leader> leaders) {
    return leaders.stream().map(one -> one.tip().segment()).toList();
  }

  @Test
  void trunkAndSecondLeader_areFound_rootsAndTwigsAreNot() {
    List<Leader> all = leaders(document.tree(), List.of());
    assertThat(tips(all)).startsWith("t9", "a7").doesNotContain("c4", "b4b", "b1s1b", "r1b");
    assertThat(all.get(0).takeover()).isEmpty();
    assertThat(all.get(0).cuts()).isEmpty();
    assertThat(all).isSortedAccordingTo((x, y) -> Double.compare(y.caliper(), x.caliper()));
  }

  /** By hand: 15.5 mm on a trunk of 42 to 38 mm at 0.85 of it. */
  @Test
  void secondLeader_takesOverWithItsCalipers() {
    Leader second = leaders(document.tree(), List.of()).get(1);
    Takeover step = second.takeover().orElseThrow();
    assertThat(step.at().segment()).isEqualTo("t4");
    assertThat(step.thick()).isCloseTo(0.042 - 0.85 * 0.004, within(1e-4));
    assertThat(step.ratio()).isCloseTo(15.5 / 38.6, within(0.005));
  }

  @Test
  void cuts_leaveNothingHigherThanTheUnionButTheLeader() {
    Skeleton skeleton = new Skeleton(document.tree());
    for (Leader leader : leaders(document.tree(), List.of())) {
      Cutting cutting = new Cutting(skeleton, leader.cuts().stream().map(CutFace::cut).toList());
      assertThat(cutting.holds(leader.tip())).as(leader.tip().segment()).isTrue();
      assertThat(leader.cuts()).allSatisfy(cut -> assertThat(cut.width()).isPositive());
      leader
          .takeover()
          .ifPresent(step -> assertThat(cutting.isGone(skeleton.indexOf("t9"))).isTrue());
    }
  }

  @Test
  void limbWhoseEndIsCutOff_isNoLeader() {
    assertThat(tips(leaders(document.tree(), List.of(new Spot("t7", 0.1)))))
        .contains("a7")
        .doesNotContain("t9", "t7");
  }

  @Test
  void deadLeader_isNone() {
    List<Segment> segments =
        document.tree().segments().stream()
            .map(old -> old.id().equals("a3") ? with(old, old.kind(), Optional.of(false)) : old)
            .toList();
    Tree tree = MovedTree.of(document.tree(), 1, 0);
    assertThat(tips(leaders(tree, List.of()))).contains("a7");
    assertThat(tips(leaders(with(tree, segments), List.of()))).doesNotContain("a7");
  }

  private static Segment with(Segment old, Kind kind, Optional<Boolean> live) {
    return new Segment(
        old.id(),
        old.parent(),
        old.along(),
        old.joins(),
        kind,
        old.start(),
        old.end(),
        old.caliperStart(),
        old.caliperEnd(),
        old.bark(),
        live,
        old.extras());
  }

  private static Tree with(Tree tree, List<Segment> segments) {
    return new TreeDraft(tree).segments(segments).wounds(List.of()).build();
  }

  @ParameterizedTest
  @CsvSource({"0.2, 0", "7, 0", "1, 1.1", "3, -2.5"})
  void sizeAndTurn_changeNothing(double size, double turn) {
    List<Leader> before = leaders(MovedTree.of(document.tree(), 1, 0), List.of());
    List<Leader> after = leaders(MovedTree.of(document.tree(), size, turn), List.of());
    assertThat(tips(after)).isEqualTo(tips(before));
    for (int n = 0; n < before.size(); n++) {
      assertThat(after.get(n).couldStand())
          .isCloseTo(size * before.get(n).couldStand(), within(1e-9));
      assertThat(after.get(n).cuts()).hasSameSizeAs(before.get(n).cuts());
      assertThat(after.get(n).takeover().map(Takeover::ratio).orElse(1.0))
          .isCloseTo(before.get(n).takeover().map(Takeover::ratio).orElse(1.0), within(1e-9));
    }
  }

  /** Turning tree and planting angle together turns the answer: heights stay. */
  @Test
  void turnWithThePlantingAngle_changesNoHeight() {
    double turn = 0.8;
    Skeleton before = new Skeleton(MovedTree.of(document.tree(), 1, 0));
    Skeleton after = new Skeleton(MovedTree.of(document.tree(), 1, turn));
    Leaders one = Leaders.of(before, plan(List.of(), Optional.of(new Planting(0.3, 1))));
    Leaders other = Leaders.of(after, plan(List.of(), Optional.of(new Planting(0.3, 1 - turn))));
    assertThat(other.height()).isCloseTo(one.height(), within(1e-9));
    assertThat(tips(other.all())).isEqualTo(tips(one.all()));
  }

  @Test
  void oneSegment_isItsOwnLeader() {
    Segment stick =
        new Segment(
            "t1",
            Optional.empty(),
            1,
            Optional.empty(),
            Kind.TRUNK,
            Optional.of(Point3.ORIGIN),
            new Point3(0, 0, 0.3),
            0.02,
            0.01,
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of());
    List<Leader> all = leaders(with(document.tree(), List.of(stick)), List.of());
    assertThat(tips(all)).containsExactly("t1");
    assertThat(leaders(with(document.tree(), List.of(stick)), List.of(new Spot("t1", 0.5))))
        .isEmpty();
  }

  /** By the definition, pair by pair: beaten by one that is nowhere worse and somewhere better. */
  @Test
  void paretoSet_isThatOfTheDefinition() {
    Random random = new Random(3);
    for (int round = 0; round < 200; round++) {
      List<double[]> offers =
          random
              .ints(12, 0, 1 << 15)
              .mapToObj(bits -> new double[] {bits & 3, bits >> 2 & 3, bits >> 4 & 3})
              .toList();
      List<Boolean> best = Pareto.of(offers);
      for (int n = 0; n < offers.size(); n++) {
        boolean beaten = false;
        for (double[] other : offers) {
          double worst = Double.NEGATIVE_INFINITY;
          double sum = 0;
          for (int k = 0; k < 3; k++) {
            worst = Math.max(worst, other[k] - offers.get(n)[k]);
            sum += other[k] - offers.get(n)[k];
          }
          beaten |= worst <= 0 && sum < 0;
        }
        assertThat(best.get(n)).isEqualTo(!beaten);
      }
    }
  }
}
