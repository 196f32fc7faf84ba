// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Material;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.HeldTree;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Targets reached with coiled wire; each choice is tried again as a plan of its own. */
class CoilReachTest {
  private static final Species HORNBEAM = SpeciesTable.bundled().find("Carpinus betulus").get(0);
  private static final Set<AnchorSort> ALL = EnumSet.allOf(AnchorSort.class);
  private static final Set<Material> USUAL =
      EnumSet.of(Material.COPPER_ANNEALED, Material.ALUMINIUM);

  /** The same proposal, the same solver with the same options. */
  private static final double SAME_PLACE = 1e-9;

  /** What was asked for where nothing has to be eased. */
  private static final double NEAR = 0.001;

  /** The guess may be over by what rounding and loose solving hide. */
  private static final double GUESSED = 1.03;

  /** Random branches; each takes about two seconds of a processor. */
  private static final int BRANCHES = 4;

  /** How far the end of a random branch is wanted to move, as a part of the branch. */
  private static final double MOVE = 0.12;

  private static Document document;

  @BeforeAll
  static void read() throws InputException {
    document = TreeFiles.read(Path.of("../examples/hedge-hornbeam.tree.json")).document();
  }

  private static ReachRequest asked(double z, double risk, int lines, Set<Material> metals) {
    return new ReachRequest(
        document.tree(),
        document.plan("a").orElseThrow(),
        List.of(),
        HORNBEAM,
        new Target.Point(new Spot("b1c", 1), new Point3(0.156, -0.006, z)),
        new ReachRequest.Wishes(ALL, risk, lines, metals));
  }

  private static List<Choice> wired(Reached reached) {
    return reached.choices().stream().filter(one -> one.bend().isPresent()).toList();
  }

  /** The pose that the plan of a choice comes to rest in, worked out anew. */
  private static HeldTree rest(ReachRequest request, Choice choice) {
    TrialRequest trial =
        new TrialRequest(
            request.tree(),
            choice.plan(),
            choice.plan().proposals(),
            request.species(),
            RodOptions.DEFAULT);
    return HeldTree.of(trial, HeldTree.Grip.ALL).then(0, HeldTree.Grip.HELD);
  }

  private static void isItsOwnTrial(ReachRequest request, Choice choice) {
    HeldTree held = rest(request, choice);
    Spot spot = request.target().spot();
    assertThat(held.point(spot).distance(choice.comesTo())).isLessThan(SAME_PLACE);
    assertThat(request.target().miss(held.point(spot), held.direction(spot)))
        .isCloseTo(choice.miss(), within(SAME_PLACE));
    TrialResult forced =
        Trial.run(TrialRequest.of(request.tree(), choice.plan(), request.species()));
    String segment = spot.segment();
    assertThat(forced.segment(segment).orElseThrow().end())
        .isEqualTo(choice.trial().segment(segment).orElseThrow().end());
  }

  @Test
  void coil_isAChoiceThatRestsWhereItSays() {
    ReachRequest request = asked(0.15, 0.3, 2, USUAL);
    Reached reached = Reach.of(request);
    assertThat(wired(reached)).isNotEmpty();
    assertThat(reached.choices()).hasSizeLessThanOrEqualTo(5);
    for (Choice choice : wired(reached)) {
      isItsOwnTrial(request, choice);
      assertThat(choice.risk().breaking()).isLessThanOrEqualTo(GUESSED * 0.3);
      assertThat(choice.miss()).isLessThan(reached.startMiss());
    }
  }

  @Test
  void coil_startsOnTheTrunkBeforeTheFork() {
    Choice choice = wired(Reach.of(asked(0.15, 0.3, 1, USUAL))).get(0);
    Choice.Bend bend = choice.bend().orElseThrow();
    assertThat(bend.work().anchorage()).contains("turns on t").contains("the fork it crosses");
    assertThat(bend.coil().from().segment()).startsWith("t");
    assertThat(bend.work().isWrongHand()).isFalse();
    assertThat(choice.lines()).isEmpty();
  }

  @Test
  void tooLittleRisk_saysWhyThereIsNoCoil() {
    Reached reached = Reach.of(asked(0.15, 0.01, 1, USUAL));
    assertThat(wired(reached)).isEmpty();
    assertThat(reached.noCoil().orElseThrow().kind()).isEqualTo("no-coil");
    assertThat(reached.noCoil().orElseThrow().remedy()).contains("Use a line");
  }

  @Test
  void metalAskedFor_isTheOnlyOne() {
    for (Choice choice : wired(Reach.of(asked(0.15, 0.3, 1, Set.of(Material.ALUMINIUM))))) {
      assertThat(choice.bend().orElseThrow().coil().metal()).isEqualTo(Material.ALUMINIUM);
    }
  }

  @Test
  void noMetal_noCoil() {
    Reached reached = Reach.of(asked(0.15, 0.3, 1, Set.of()));
    assertThat(wired(reached)).isEmpty();
    assertThat(reached.noCoil()).isEmpty();
  }

  @Test
  void randomBranches_restWithinAMillimetreWhereTheChoiceSaysSo() {
    int near = 0;
    for (int seed = 0; seed < BRANCHES; seed++) {
      ReachRequest request = random(seed);
      for (Choice choice : wired(Reach.of(request))) {
        isItsOwnTrial(request, choice);
        Point3 wanted = ((Target.Point) request.target()).point();
        double off = rest(request, choice).point(request.target().spot()).distance(wanted);
        report(seed, choice, off);
        assertThat(off < NEAR).isEqualTo(choice.miss() < NEAR);
        near += off < NEAR ? 1 : 0;
      }
    }
    assertThat(near).isGreaterThanOrEqualTo(BRANCHES / 2);
  }

  private static void report(int seed, Choice choice, double off) {
    if (Boolean.getBoolean("boughwright.measured")) {
      Choice.Bend bend = choice.bend().orElseThrow();
      System.out.printf(
          Locale.ROOT,
          "branch %d: %s %.1f mm x %d, %d lines, hand %.1f mm, off by %.2f mm%n",
          seed,
          bend.coil().metal().word(),
          1000 * bend.coil().gauge(),
          bend.coil().strands(),
          choice.lines().size(),
          1000 * bend.hand().move(),
          1000 * off);
    }
  }

  private static ReachRequest random(int seed) {
    RandomBranch.Grown grown = RandomBranch.of(seed);
    Spot spot = new Spot(grown.limb().get(grown.limb().size() - 1), 1);
    return new ReachRequest(
        grown.tree(),
        grown.plan(),
        List.of(),
        RandomBranch.Grown.species(),
        new Target.Point(spot, swung(grown, spot, new Random(seed))),
        new ReachRequest.Wishes(ALL, 1, 2, USUAL));
  }

  /** Where the tip comes if the whole limb swings about its start, some way round. */
  private static Point3 swung(RandomBranch.Grown grown, Spot spot, Random random) {
    Skeleton skeleton = new Skeleton(grown.tree());
    Point3 start = skeleton.start(skeleton.indexOf(grown.limb().get(0)));
    Vector3 arm = skeleton.point(skeleton.indexOf(spot.segment()), 1).minus(start);
    Vector3 aside =
        Rotation.about(arm.direction(), 2 * Math.PI * random.nextDouble())
            .turn(arm.direction().anySquare())
            .vector();
    return start.plus(arm.times(Math.cos(MOVE)).plus(aside.times(Math.sin(MOVE) * arm.norm())));
  }
}
