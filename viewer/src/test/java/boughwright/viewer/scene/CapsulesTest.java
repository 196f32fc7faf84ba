// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.viewer.window.sketch.Sketches;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CapsulesTest {
  private static final Document HEDGE = InventedTrees.hedgeDocument();
  private static final Plan PLAN = HEDGE.plans().get(0);
  private static final int BALLS = 600;

  private static LiveTree tree() {
    return new LiveTree(HEDGE.tree(), Optional.of(PLAN));
  }

  /** A ball of the wood: its segment, middle and radius. */
  private record Ball(int segment, Point3 middle, double radius) {}

  /** Wood as very many balls, with radii from the calipers themselves. */
  private static List<Ball> balls(LiveTree tree, Capsules wood) {
    Skeleton skeleton = tree.skeleton();
    return java.util.stream.IntStream.range(0, skeleton.size())
        .filter(i -> !tree.kept().isGone(i))
        .boxed()
        .flatMap(
            i ->
                java.util.stream.IntStream.rangeClosed(0, BALLS)
                    .mapToObj(
                        n -> {
                          double u = tree.kept().left(i) * n / BALLS;
                          double d =
                              skeleton.segment(i).caliperStart() * (1 - u)
                                  + skeleton.segment(i).caliperEnd() * u;
                          return new Ball(i, wood.axis(i, u), d / 2);
                        }))
        .toList();
  }

  /** How far along a line the nearest ball begins; infinite where none is met. */
  private static double entry(Ball ball, Camera.Sight sight) {
    Vector3 to = ball.middle().minus(sight.from());
    double ahead = to.dot(sight.along().vector());
    double aside = to.cross(sight.along().vector()).norm();
    return aside > ball.radius()
        ? Double.POSITIVE_INFINITY
        : ahead - Math.sqrt(ball.radius() * ball.radius() - aside * aside);
  }

  /** A line through or beside some wood. */
  private static Camera.Sight sight(Random random, List<Ball> balls) {
    Ball aim = balls.get(random.nextInt(balls.size()));
    Vector3 aside =
        new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
            .times(0.5 * aim.radius());
    Direction3 toViewer = sight(random).along().opposite();
    return new Camera.Sight(aim.middle().plus(aside).plus(toViewer.times(3)), toViewer.opposite());
  }

  private static Camera.Sight sight(Random random) {
    double azimuth = 2 * Math.PI * random.nextDouble();
    Direction3 toViewer = Direction3.ofAzimuth(azimuth, random.nextDouble() - 0.3);
    Point3 through =
        new Point3(
            0.3 * random.nextGaussian() / 3,
            0.3 * random.nextGaussian() / 3,
            0.45 * random.nextDouble());
    return new Camera.Sight(through.plus(toViewer.times(3)), toViewer.opposite());
  }

  /**
   * Against wood made of balls at 600 places of each segment. The axis is a curve there and four
   * straight pieces here: the middle of a piece lies off the curve by less than {@code offAxis},
   * and where a line grazes the bark that is a long way along it, so grazing lines are left out.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void nearest_findsWhatManyBallsFind(boolean bent) {
    LiveTree tree = tree();
    Pose pose = bent ? tree.bent(Bending.drawnIn(HEDGE.tree(), PLAN)) : tree.measured();
    Capsules wood = tree.capsules(pose);
    List<Ball> balls = balls(tree, wood);
    Random random = new Random(11);
    double offAxis = 1.2e-3;
    int met = 0;
    int same = 0;
    for (int n = 0; n < 400; n++) {
      Camera.Sight sight = sight(random, balls);
      Ball first = null;
      double least = Double.POSITIVE_INFINITY;
      for (Ball ball : balls) {
        double entry = entry(ball, sight);
        if (entry < least) {
          least = entry;
          first = ball;
        }
      }
      Optional<Capsules.Struck> struck = wood.nearest(sight, i -> true);
      if (first != null && grazes(first, sight)) {
        continue;
      }
      assertThat(struck.isPresent()).as("line %d", n).isEqualTo(first != null);
      if (first != null) {
        met++;
        same += struck.get().segment() == first.segment() ? 1 : 0;
        assertThat(struck.get().away()).as("line %d", n).isCloseTo(least, within(2 * offAxis));
      }
    }
    assertThat(met).isGreaterThan(60);
    int atJointsBothAreRight = 6;
    assertThat(met - same).isLessThanOrEqualTo(met * atJointsBothAreRight / 100);
  }

  private static boolean grazes(Ball ball, Camera.Sight sight) {
    double aside = ball.middle().minus(sight.from()).cross(sight.along().vector()).norm();
    return aside > 0.7 * ball.radius();
  }

  @Test
  void all_isNearestFirst_eachSegmentOnce() {
    LiveTree tree = tree();
    Capsules wood = tree.capsules(tree.measured());
    Random random = new Random(3);
    int several = 0;
    for (int n = 0; n < 200; n++) {
      List<Capsules.Struck> all = wood.all(sight(random), i -> true);
      assertThat(all).isSortedAccordingTo((a, b) -> Double.compare(a.away(), b.away()));
      assertThat(all).extracting(Capsules.Struck::segment).doesNotHaveDuplicates();
      several += all.size() > 1 ? 1 : 0;
    }
    assertThat(several).isPositive();
  }

  /** From outside toward a place on the bark that the skeleton itself gives. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 40, 90, 181, 300})
  void round_countsAsWoundsDo_howeverTheTreeIsPlanted(double roundDeg) {
    Tree slanting =
        new Shoots()
            .base("t1", new double[] {0, 0, 200}, Shoots.taper(40, 40))
            .branch(
                "b1",
                new boughwright.modeller.plan.Spot("t1", 0.6),
                Shoots.way(70, 25, 180),
                Shoots.taper(14, 10))
            .tree("slanting");
    Plan tilted = new PlanDraft("a").planting(Optional.of(new Planting(0.4, 1))).build();
    LiveTree tree = new LiveTree(slanting, Optional.of(tilted));
    int branch = tree.skeleton().indexOf("b1");
    double round = Math.toRadians(roundDeg);
    Direction3 out = tree.skeleton().roundDirection(branch, round);
    Point3 from = tree.skeleton().point(branch, 0.8).plus(out.times(0.05));
    Camera.Sight sight =
        new Camera.Sight(tree.stand().place(from), tree.stand().turn().turn(out.opposite()));
    Capsules wood = tree.capsules(tree.measured());
    Capsules.Struck struck = wood.nearest(sight, i -> i == branch).orElseThrow();
    assertThat(Math.cos(wood.round(struck) - round)).isCloseTo(1, within(1e-6));
    assertThat(struck.along()).isCloseTo(0.8, within(1e-3));
    assertThat(tree.stand().measured(struck.axis()).distance(tree.skeleton().point(branch, 0.8)))
        .isLessThan(1e-4);
  }

  /** Very many segments are framed by balls: all wood is in them, and hardly anything else. */
  @Test
  void frameOfVeryManySegments_holdsAllWood_andIsHardlyLarger() {
    LiveTree many = new LiveTree(Sketches.bushy(200, 20).tree(), Optional.empty());
    Capsules wood = many.capsules(many.measured());
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (StagesView.Outline ball : wood.frame()) {
      for (int n = 0; n < ball.axis().size(); n++) {
        least = Math.min(least, ball.axis().get(n).x() - ball.radii().get(n));
        most = Math.max(most, ball.axis().get(n).x() + ball.radii().get(n));
      }
    }
    double slack = 0.02 * wood.bounds().diagonal();
    assertThat(least).isBetween(wood.bounds().low().x() - slack, wood.bounds().low().x());
    assertThat(most).isBetween(wood.bounds().high().x(), wood.bounds().high().x() + slack);
  }
}
