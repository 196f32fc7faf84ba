// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Random trees under random lines and a weight, with a fixed seed: the two routes to a pose, and
 * lines by tension against the same lines by length, meet in one pose. They share the elements but
 * not the way. A few trees have two stable poses, or no smooth way between; so most must agree.
 */
class RandomTreeTest {
  private static final int TREES = 150;

  /** Trees that may go another way. */
  private static final int OTHERWISE = 2;

  /** Twice the error aimed at, on paths of up to 2 m through five limbs [m]. */
  private static final double SAME = 2 * 2 * RodOptions.DEFAULT.positionError();

  private final Random random = new Random(7);

  private Vector3 vector(double size) {
    return new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
        .times(size);
  }

  private RodCase tree() {
    List<RodCase.Limb> limbs = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      double radius = i == 0 ? 0.008 : 0.005;
      int parent = i == 0 ? -1 : random.nextInt(i);
      double at = i == 0 ? 0 : limbs.get(parent).length() * (0.2 + 0.6 * random.nextDouble());
      double tip = radius * (0.3 + 0.5 * random.nextDouble());
      limbs.add(
          new RodCase.Limb(
              parent,
              at,
              i == 0 ? Vector3.ZERO : vector(0.003),
              i == 0 ? Rotation.NONE : Rotation.ofVector(vector(0.6)),
              0.2 + 0.2 * random.nextDouble(),
              new RodCase.Wood(radius, tip, 5e9, 5e9 / 16),
              vector(1)));
    }
    List<RodCase.Tie> ties = new ArrayList<>();
    int lines = 1 + random.nextInt(3);
    for (int k = 0; k < lines; k++) {
      ties.add(tie(limbs));
    }
    double tip = limbs.get(count - 1).length();
    Vector3 weight = new Vector3(0, 0, -3 * random.nextDouble());
    RodCase.Pull pull = new RodCase.Pull(RodCase.Place.on(count - 1, tip), weight);
    return new RodCase(Rods.rootFrame(1.2, 0.4), limbs, List.of(pull), ties, List.of());
  }

  private RodCase.Tie tie(List<RodCase.Limb> limbs) {
    int limb = random.nextInt(limbs.size());
    double s = limbs.get(limb).length() * (0.3 + 0.7 * random.nextDouble());
    RodCase.Place place = new RodCase.Place(limb, s, new Vector3(0.003, 0, 0));
    if (limbs.size() > 1 && random.nextInt(4) == 0) {
      int other = (limb + 1) % limbs.size();
      RodCase.Place end = RodCase.Place.on(other, limbs.get(other).length() * random.nextDouble());
      return new RodCase.Tie(place, null, end, 10 * random.nextDouble(), Double.NaN, 0);
    }
    Point3 anchor = new Point3(0.3 * random.nextGaussian(), 0.3 * random.nextGaussian(), -0.1);
    return RodCase.Tie.tight(place, anchor, 40 * random.nextDouble());
  }

  private static RodCase byLength(RodCase tree, RodSolution solution) {
    List<RodCase.Tie> ties = new ArrayList<>();
    for (int k = 0; k < tree.ties().size(); k++) {
      RodCase.Tie tie = tree.ties().get(k);
      double length = solution.lines().get(k).length();
      ties.add(new RodCase.Tie(tie.at(), tie.anchor(), tie.other(), tie.tension(), length, 0));
    }
    return new RodCase(tree.baseFrame(), tree.limbs(), tree.pulls(), ties, tree.spreads());
  }

  private static boolean agree(RodCase tree, RodSolution a, RodSolution b) {
    boolean same = b.status().holds();
    for (int i = 0; i < tree.limbs().size(); i++) {
      double tip = tree.limbs().get(i).length();
      Point3 there = tree.section(b.pose(), i, tip).position();
      same &= tree.section(a.pose(), i, tip).position().distance(there) < SAME;
    }
    return same;
  }

  @Test
  void randomTrees_reachOnePoseByEitherRouteAndByLength() {
    int directly = 0;
    int byLength = 0;
    for (int n = 0; n < TREES; n++) {
      RodCase tree = tree();
      RodSolution followed = tree.solve();
      assertThat(followed.status().holds()).as("tree " + n + followed.status()).isTrue();
      RodOptions direct = RodOptions.DEFAULT.withRoute(RodOptions.Route.DIRECT);
      directly +=
          agree(tree, followed, RodSolver.solve(tree.model(), tree.loads(), direct)) ? 1 : 0;
      byLength += agree(tree, followed, byLength(tree, followed).solve()) ? 1 : 0;
    }
    if (Boolean.getBoolean("boughwright.measured")) {
      System.out.printf(
          "RandomTreeTest: of %d trees %d directly, %d by length%n", TREES, directly, byLength);
    }
    assertThat(directly).isGreaterThanOrEqualTo(TREES - OTHERWISE);
    assertThat(byLength).isGreaterThanOrEqualTo(TREES - OTHERWISE);
  }
}
