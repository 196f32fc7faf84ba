// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.bench;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Bending;
import boughwright.viewer.scene.Shoots;
import java.util.Random;

/** An invented tree with a given number of segments, and one branch of ten that is bent. */
final class BigTree {
  private static final int TRUNK = 20;
  private static final int BRANCH = 10;

  final Tree tree;
  final Plan plan =
      new PlanDraft("a").build();

  BigTree(int segments) {
    Random random = new Random(1);
    Shoots shoots =
        new Shoots().base("t1", new double[] {0, 0, 30}, Shoots.taper(70, 68));
    int made = 1;
    for (int n = 2; n <= TRUNK; n++, made++) {
      shoots.on("t" + n, "t" + (n - 1), Shoots.way(40 * n, 85, 30), taper(70 - 3 * n));
    }
    for (int b = 1; made < segments; b++) {
      double azimuth = 137.5 * b;
      double start = Math.max(7, 18 - 0.05 * b);
      String on = "t" + (3 + b % (TRUNK - 3));
      shoots.branch(
          name(b, 1),
          new Spot(on, 0.2 + 0.6 * random.nextDouble()),
          Shoots.way(azimuth, 15 + 30 * random.nextDouble(), 25),
          taper(start));
      made++;
      for (int k = 2; k <= BRANCH && made < segments; k++, made++) {
        double turn = 12 * random.nextGaussian();
        shoots.on(
            name(b, k),
            name(b, k - 1),
            Shoots.way(azimuth + turn, 20 + turn, 25),
            taper(start * (1 - 0.05 * k)));
      }
    }
    tree = shoots.tree("Invented, " + segments + " segments");
  }

  private static String name(int branch, int k) {
    return "b" + branch + "." + k;
  }

  private static Shoots.Taper taper(double start) {
    return Shoots.taper(start, 0.97 * start);
  }

  /** The trunk bent a little, so that all that grows on it moves. */
  TrialResult leaning() {
    return new Bending(tree).bend("t2", new Vector3(0, 2, 0)).result(plan);
  }

  /** The first branch bent down, more or less. */
  TrialResult bent(double curvature) {
    Bending bending = new Bending(tree);
    for (int k = 1; k <= BRANCH; k++) {
      bending.bend(name(1, k), new Vector3(curvature, 0.3 * curvature, 0));
    }
    return bending.result(plan);
  }
}
