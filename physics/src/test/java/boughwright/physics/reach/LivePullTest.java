// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Spot;
import boughwright.physics.rod.RodOptions;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TreeStand;
import boughwright.physics.trial.Trial;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Hands that pull at random branches. */
class LivePullTest {
  private static final int DRAGS = 30;

  /** Trying everything takes half a second of a processor for each; so many by default. */
  private static final int BRUTE = Boolean.getBoolean("boughwright.all") ? DRAGS : 10;

  /** The same line, the same solver with the same options. */
  private static final double SAME_PLACE = 1e-9;

  /** What a live answer is sought to, and the loose solving of it, on limbs of 0.35 m at most. */
  private static final double LIVE = 1.5e-4;

  /** What was asked for: within a millimetre, or half a percent of the limb. */
  private static final double NEAR = 0.001;

  /** One branch that is grabbed, and a place that some line brings it to. */
  private record Case(RandomBranch.Grown grown, Spot spot, Point3 target, AllChoices all) {
    static Case of(int seed) {
      RandomBranch.Grown grown = RandomBranch.of(seed);
      Random random = new Random(4000L + seed);
      int last = grown.limb().size();
      Spot spot = new Spot(grown.limb().get(last / 2 + random.nextInt(last - last / 2)), 1);
      TreeStand stand =
          new TreeStand(
              grown.tree(), grown.plan(), RandomBranch.Grown.species(), RodOptions.DEFAULT);
      Grab grab = grab(grown, spot);
      Weighing weighing = new Weighing(new Pull(grab, stand));
      AllChoices all =
          new AllChoices(stand, weighing.places(), weighing.anchors(), weighing.limb());
      return new Case(grown, spot, all.someTarget(spot, random), all);
    }

    LivePull pull() {
      return LivePull.of(grab(grown, spot));
    }

    Point3 start() {
      return new TreeStand(
              grown.tree(), grown.plan(), RandomBranch.Grown.species(), RodOptions.DEFAULT)
          .with(List.of())
          .point(spot);
    }
  }

  private static Grab grab(RandomBranch.Grown grown, Spot spot) {
    return Grab.anew(grown.tree(), grown.plan(), RandomBranch.Grown.species(), spot);
  }

  /** All lines weighed for a target, then asked. */
  private static Pulled weighed(LivePull pull, Point3 target) {
    pull.to(target);
    while (pull.weigh()) {
      // until nothing is left to weigh
    }
    return pull.to(target);
  }

  /** A hand's way to a point over some others, near and far. */
  private static void wander(LivePull pull, Case one, Random random) {
    Point3 start = one.start();
    double far = start.distance(one.target());
    for (int n = 0; n < 6; n++) {
      Vector3 off =
          new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      pull.to(start.toward(one.target(), 1.5 * random.nextDouble()).plus(off.times(0.5 * far)));
    }
  }

  @Test
  void settledDrag_isTheTrialOfItsProposal_onRandomBranches() {
    IntStream.range(0, DRAGS)
        .parallel()
        .forEach(
            seed -> {
              Case one = Case.of(seed);
              LivePull pull = one.pull();
              for (int n = 1; n <= 8; n++) {
                pull.to(one.start().toward(one.target(), n / 8.0));
              }
              Pulled live = weighed(pull, one.target());
              Pulled settled = pull.settled().orElseThrow();
              TrialResult trial =
                  Trial.run(
                      TrialRequest.of(
                          one.grown.tree(), settled.plan(), RandomBranch.Grown.species()));
              SegmentTrial bent = trial.segment(one.spot.segment()).orElseThrow();
              assertThat(bent.end().distance(settled.comesTo()))
                  .as("drag %d", seed)
                  .isLessThan(SAME_PLACE);
              assertThat(trial.lines()).as("drag %d", seed).isEqualTo(settled.trial().lines());
              assertThat(settled.comesTo().distance(live.comesTo()))
                  .as("live against settled, drag %d", seed)
                  .isLessThan(1e-3);
            });
  }

  @Test
  void drag_comesAsNearAsTryingEverything_onRandomBranches() {
    IntStream.range(0, BRUTE)
        .parallel()
        .forEach(
            seed -> {
              Case one = Case.of(seed);
              Pulled live = weighed(one.pull(), one.target());
              double least = one.all().least(one.spot(), one.target());
              // what lower risk and the place under the hand are worth, and the line that stays
              double way = one.start().distance(one.target());
              double worth = 2 * Math.max(0.002, 0.02 * 0.35) + NEAR + 0.25 * way;
              assertThat(live.miss() - least).as("drag %d", seed).isLessThan(worth);
            });
  }

  @Test
  void sameTarget_sameAnswerWhateverTheWay_withOneAnchor() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      Pulled first = weighed(one.pull(), one.target());
      AnchorPlace anchor = first.line().orElseThrow().tie().anchor();
      LivePull straight = one.pull();
      straight.fix(Optional.of(anchor));
      Pulled direct = straight.to(one.target());
      LivePull about = one.pull();
      about.fix(Optional.of(anchor));
      wander(about, one, new Random(seed));
      Pulled wandered = about.to(one.target());
      assertThat(wandered.comesTo().distance(direct.comesTo()))
          .as("drag %d", seed)
          .isLessThan(LIVE);
      assertThat(wandered.line().orElseThrow().tie().anchor()).isEqualTo(anchor);
    }
  }

  @Test
  void sameTarget_asNearWhateverTheWay_withAnyAnchor() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      Pulled direct = weighed(one.pull(), one.target());
      LivePull about = one.pull();
      wander(about, one, new Random(seed));
      Pulled wandered = weighed(about, one.target());
      double way = one.start().distance(one.target());
      double sticks = 0.001 + 0.2 * (direct.miss() + 0.007 + 0.5 * way);
      assertThat(wandered.miss()).as("drag %d", seed).isCloseTo(direct.miss(), within(sticks));
    }
  }

  @Test
  void handFartherAlongTheLine_drawsItInMore() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      LivePull pull = one.pull();
      pull.fix(Optional.of(weighed(one.pull(), one.target()).line().orElseThrow().tie().anchor()));
      double before = 0;
      for (int n = 2; n <= 10; n++) {
        Pulled live = pull.to(one.start().toward(one.target(), n / 10.0));
        if (live.line().isEmpty() || live.stays()) {
          continue;
        }
        double by = live.line().get().tie().shortening();
        assertThat(by).as("drag %d, step %d", seed, n).isGreaterThan(before - 2e-5);
        before = by;
      }
      assertThat(before).isPositive();
    }
  }

  @Test
  void nextAnchorBarelyBetter_doesNotTakeOver() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      LivePull pull = one.pull();
      AnchorPlace anchor = weighed(pull, one.target()).line().orElseThrow().tie().anchor();
      Random random = new Random(seed);
      for (int n = 0; n < 20; n++) {
        Vector3 tremble =
            new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        Pulled live = pull.to(one.target().plus(tremble.times(1e-4)));
        assertThat(live.line().orElseThrow().tie().anchor()).as("drag %d", seed).isEqualTo(anchor);
      }
    }
  }

  @Test
  void targetOutOfReach_answersAndNamesAnAnchorOrAReason() {
    Case one = Case.of(3);
    LivePull pull = one.pull();
    Vector3 way = one.target().minus(one.start());
    for (double far : new double[] {2, 5, 20, 1000}) {
      Pulled live = pull.to(one.start().plus(way.times(far)));
      assertThat(live.miss()).isPositive();
      assertThat(live.trial().outcome().holds()).isTrue();
    }
  }

  @Test
  void pushedBackIntoItsUnion_keepsTheLastPoseAndSaysSo() {
    Case one = Case.of(5);
    LivePull pull = one.pull();
    pull.fix(Optional.of(weighed(one.pull(), one.target()).line().orElseThrow().tie().anchor()));
    Pulled good = pull.to(one.target());
    Vector3 away = one.start().minus(one.target());
    Pulled live = pull.to(one.start().plus(away));
    assertThat(live.stays()).isTrue();
    assertThat(live.why()).isPresent();
    assertThat(live.trial()).isEqualTo(good.trial());
    assertThat(live.miss()).isCloseTo(good.comesTo().distance(live.target()), within(1e-12));
  }

  @Test
  void rootBaseGrabbed_isRefusedWithAReason() {
    RandomBranch.Grown grown = RandomBranch.of(1);
    LivePull base = LivePull.of(grab(grown, new Spot("t1", 0)));
    LivePull root = LivePull.of(grab(grown, new Spot("r1", 1)));
    assertThat(base.refused().orElseThrow().kind()).isEqualTo("held-fast");
    assertThat(root.refused().orElseThrow().kind()).isEqualTo("held-fast");
    assertThatIllegalStateException().isThrownBy(() -> base.to(new Point3(0, 0, 1)));
  }

  @Test
  void cutAwaySpotGrabbed_isRefused() {
    RandomBranch.Grown grown = RandomBranch.of(1);
    Plan cut = new PlanDraft("a").cuts(List.of(new Spot("b2", 0.5))).build();
    Grab grab = Grab.anew(grown.tree(), cut, RandomBranch.Grown.species(), new Spot("b3", 0.5));
    assertThatIllegalArgumentException().isThrownBy(() -> LivePull.of(grab));
  }

  @Test
  void treeOfOneSegment_isPulledToAPointOfItsOwn() {
    RandomBranch.Grown grown = RandomBranch.stick();
    LivePull pull = LivePull.of(grab(grown, new Spot("t1", 1)));
    Point3 target = new Point3(0.02, 0, 0.245);
    Pulled live = weighed(pull, target);
    assertThat(live.line()).isPresent();
    assertThat(live.line().get().tie().anchor().name()).isEqualTo("s1");
    assertThat(live.miss()).isLessThan(0.005);
  }

  @Test
  void freeHand_bringsThePlaceWhereItIs_andItsTrialAgrees() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      LiveHand hand = one.pull().hand();
      for (int n = 1; n <= 6; n++) {
        hand.to(one.start().toward(one.target(), n / 6.0));
      }
      hand.to(one.target());
      Handed live = hand.rested();
      assertThat(live.miss()).as("drag %d", seed).isLessThan(NEAR);
      Handed settled = hand.settled().orElseThrow();
      TrialResult trial =
          Trial.run(
              TrialRequest.of(one.grown.tree(), settled.plan(), RandomBranch.Grown.species()));
      SegmentTrial bent = trial.segment(one.spot.segment()).orElseThrow();
      assertThat(bent.end().distance(settled.comesTo())).isLessThan(SAME_PLACE);
      assertThat(settled.comesTo().distance(live.comesTo())).isLessThan(NEAR);
    }
  }
}
