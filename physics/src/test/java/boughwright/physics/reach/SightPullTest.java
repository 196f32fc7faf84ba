// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
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

/** Hands that pull at random branches along a line of sight, its depth left open. */
class SightPullTest {
  private static final int DRAGS = 20;

  /** The same line, the same solver with the same options. */
  private static final double SAME_PLACE = 1e-9;

  /** What a live answer is sought to, and the loose solving of it, on limbs of 0.35 m at most. */
  private static final double LIVE = 1.5e-4;

  private static final double MILLIMETRE = 1e-3;

  /** A place, and a line of sight through where some sensible line brings it. */
  private record Case(RandomBranch.Grown grown, Spot spot, Point3 point, Direction3 along) {
    static Case of(int seed) {
      RandomBranch.Grown grown = RandomBranch.of(seed);
      Random random = new Random(9000L + seed);
      int last = grown.limb().size();
      Spot spot = new Spot(grown.limb().get(last / 2 + random.nextInt(last - last / 2)), 1);
      Weighing weighing = new Weighing(new Pull(grab(grown, spot), stand(grown)));
      Point3 point =
          new AllChoices(stand(grown), weighing.places(), weighing.anchors(), weighing.limb())
              .someTarget(spot, random);
      return new Case(
          grown, spot, point, Direction3.ofAzimuth(6 * random.nextDouble(), random.nextDouble()));
    }

    private static TreeStand stand(RandomBranch.Grown grown) {
      return new TreeStand(
          grown.tree(), grown.plan(), RandomBranch.Grown.species(), RodOptions.DEFAULT);
    }

    LivePull pull() {
      return LivePull.of(grab(grown, spot));
    }

    Point3 start() {
      return stand(grown).with(List.of()).point(spot);
    }

    /** The line of sight part of the way there, from a point of it that is far off. */
    Aim.Sight sight(double part) {
      return new Aim.Sight(start().toward(point, part).plus(along.times(-3)), along);
    }

    Aim.Sight sight() {
      return sight(1);
    }

    TrialResult trial(Pulled pulled) {
      return Trial.run(TrialRequest.of(grown.tree(), pulled.plan(), RandomBranch.Grown.species()));
    }
  }

  private static Grab grab(RandomBranch.Grown grown, Spot spot) {
    return Grab.anew(grown.tree(), grown.plan(), RandomBranch.Grown.species(), spot);
  }

  private static Pulled weighed(LivePull pull, Aim target) {
    pull.to(target);
    while (pull.weigh()) {
      // until nothing is left to weigh
    }
    return pull.to(target);
  }

  /** Distance of a point from a line by the area of a parallelogram. */
  private static double off(Point3 point, Aim.Sight sight) {
    return point.minus(sight.from()).cross(sight.along().vector()).norm();
  }

  private static void wander(LivePull pull, Case one, Random random) {
    double far = one.start().distance(one.point());
    for (int n = 0; n < 6; n++) {
      Aim.Sight sight = one.sight(1.5 * random.nextDouble());
      Vector3 off =
          new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      pull.to(new Aim.Sight(sight.from().plus(off.times(0.5 * far)), sight.along()));
    }
  }

  @Test
  void missOfASight_isTheDistanceFromTheLine_andItsTargetLiesOnIt() {
    for (int seed = 0; seed < DRAGS; seed++) {
      Case one = Case.of(seed);
      Pulled live = weighed(one.pull(), one.sight());
      assertThat(live.miss())
          .as("drag %d", seed)
          .isCloseTo(off(live.comesTo(), one.sight()), within(1e-12));
      assertThat(off(live.target(), one.sight())).isLessThan(1e-12);
      assertThat(live.target().distance(live.comesTo())).isCloseTo(live.miss(), within(1e-12));
    }
  }

  /** What comes near the point comes near the line; less risk may cost some of it. */
  @Test
  void sight_isComeAboutAsNearAsAPointOfIt() {
    for (int seed = 0; seed < DRAGS; seed++) {
      Case one = Case.of(seed);
      Pulled toPoint = weighed(one.pull(), new Aim.At(one.point()));
      Pulled toSight = weighed(one.pull(), one.sight());
      double way = off(one.start(), one.sight());
      double worth = 4 * Math.max(0.002, 0.02 * 0.35) + 0.5 * way * toPoint.risk().breaking();
      assertThat(toSight.miss() - toPoint.miss()).as("drag %d", seed).isLessThan(worth);
    }
  }

  @Test
  void settledSight_isTheTrialOfItsProposal() {
    IntStream.range(0, DRAGS)
        .parallel()
        .forEach(
            seed -> {
              Case one = Case.of(seed);
              LivePull pull = one.pull();
              for (int n = 1; n <= 8; n++) {
                pull.to(one.sight(n / 8.0));
              }
              Pulled live = weighed(pull, one.sight());
              Pulled settled = pull.settled().orElseThrow();
              TrialResult trial = one.trial(settled);
              SegmentTrial bent = trial.segment(one.spot().segment()).orElseThrow();
              assertThat(bent.end().distance(settled.comesTo())).isLessThan(SAME_PLACE);
              assertThat(trial.lines()).isEqualTo(settled.trial().lines());
              assertThat(settled.comesTo().distance(live.comesTo())).isLessThan(MILLIMETRE);
            });
  }

  @Test
  void sameSight_sameAnswerWhateverTheWay_withOneAnchor() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      AnchorPlace anchor = weighed(one.pull(), one.sight()).line().orElseThrow().tie().anchor();
      LivePull straight = one.pull();
      straight.fix(Optional.of(anchor));
      Pulled direct = straight.to(one.sight());
      LivePull about = one.pull();
      about.fix(Optional.of(anchor));
      wander(about, one, new Random(seed));
      Pulled wandered = about.to(one.sight());
      // where the place moves along the sight, its depth is less sharp than its miss
      assertThat(wandered.miss()).as("drag %d", seed).isCloseTo(direct.miss(), within(LIVE));
      assertThat(wandered.comesTo().distance(direct.comesTo()))
          .as("drag %d", seed)
          .isLessThan(MILLIMETRE);
    }
  }

  @Test
  void lineThatSurelyBreaks_isNotOfferedWhereASaneOneComesWithinMillimetres() {
    for (int seed = 0; seed < DRAGS; seed++) {
      Case one = Case.of(seed);
      Pulled live = weighed(one.pull(), one.sight());
      boolean breaks = live.risk().breaking() > 0.95;
      boolean sane =
          live.others().stream()
              .anyMatch(other -> other.breaking() < 0.2 && other.miss() < live.miss() + 0.004);
      assertThat(breaks && sane).as("drag %d", seed).isFalse();
    }
  }

  /** Of lines that come about as near, none pulls half as hard at no more risk. */
  @Test
  void sight_isReachedByASmallPull() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      Pulled live = weighed(one.pull(), one.sight());
      for (Pulled.Other other : live.others()) {
        LivePull tied = one.pull();
        tied.fix(Optional.of(other.anchor()));
        Pulled instead = tied.to(one.sight());
        boolean better =
            !instead.stays()
                && instead.miss() < live.miss() - MILLIMETRE
                && instead.risk().breaking() <= live.risk().breaking()
                && instead.risk().kink() <= live.risk().kink()
                && tension(instead) < tension(live) / 2;
        assertThat(better).as("drag %d, %s", seed, other.anchor().name()).isFalse();
      }
    }
  }

  private static double tension(Pulled pulled) {
    return pulled.line().orElseThrow().at().tension();
  }

  @Test
  void freeHand_takesTheEasiestDepth_whateverTheWay() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      LiveHand straight = one.pull().hand();
      for (int n = 1; n <= 6; n++) {
        straight.to(one.sight(n / 6.0));
      }
      Handed direct = straight.rested();
      LiveHand toPoint = one.pull().hand();
      toPoint.to(one.point());
      Handed atPoint = toPoint.rested();
      LiveHand about = one.pull().hand();
      about.to(one.sight(1.4));
      about.to(new Aim.Sight(one.point().plus(new Vector3(0, 0, 0.01)), one.along()));
      about.to(one.sight());
      Handed wandered = about.rested();
      assertThat(direct.miss()).as("drag %d", seed).isLessThan(MILLIMETRE);
      assertThat(direct.miss()).isCloseTo(off(direct.comesTo(), one.sight()), within(1e-12));
      assertThat(direct.force().norm())
          .as("drag %d", seed)
          .isLessThan(1.02 * atPoint.force().norm());
      assertThat(wandered.comesTo().distance(direct.comesTo()))
          .as("drag %d", seed)
          .isLessThan(MILLIMETRE);
    }
  }

  @Test
  void movingHand_isCloseToWhereItComesToRest() {
    for (int seed = 0; seed < 10; seed++) {
      Case one = Case.of(seed);
      LiveHand hand = one.pull().hand();
      Handed live = hand.to(one.sight(0));
      for (int n = 1; n <= 30; n++) {
        live = hand.to(one.sight(n / 30.0));
      }
      assertThat(live.stays()).as("drag %d", seed).isFalse();
      Handed rested = hand.rested();
      assertThat(live.miss()).as("drag %d", seed).isCloseTo(rested.miss(), within(MILLIMETRE / 2));
      // its depth, which nobody sees, settles last
      assertThat(live.comesTo().distance(rested.comesTo()))
          .as("drag %d", seed)
          .isLessThan(2 * MILLIMETRE);
    }
  }
}
