// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.InputException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Compares the search for fronts with a look at every pose, at full resolution; takes long.
 *
 * <p>Arguments: from which of the random trees to which they are swept in full; or a tree file, of
 * which search and a single reading are timed.
 */
public final class FrontBench {
  private static final int TIMES = 9;

  private FrontBench() {}

  /** Prints times and whether both found the same. */
  public static void main(String[] words) throws InputException {
    if (words.length == 1) {
      time(Path.of(words[0]));
      return;
    }
    int same = 0;
    int from = Integer.parseInt(words[0]);
    int to = Integer.parseInt(words[1]);
    for (int seed = from; seed < to; seed++) {
      same += isSame(seed) ? 1 : 0;
      System.out.println(same + " of " + (seed - from + 1) + " the same");
    }
  }

  private static boolean isSame(int seed) {
    FrontGauge gauge =
        new FrontGauge(Stand.bare(Stand.random(new Random(seed)).skeleton()), Eye.LEVEL);
    TreeStyle style = TreeStyle.values()[seed % TreeStyle.values().length];
    FrontRules rules = FrontRules.of(style);
    FrontGrid grid = FrontGrid.of(FrontRange.square(Math.toRadians(25)));
    long start = System.nanoTime();
    Fronts found = new FrontSearch(gauge, rules, grid).run(FrontWatch.NOBODY).orElseThrow();
    double took = seconds(start);
    start = System.nanoTime();
    Fronts all = new FrontSweep(gauge, rules, grid).run(FrontWatch.NOBODY).orElseThrow();
    boolean same = poses(all).equals(poses(found));
    System.out.println(
        seed
            + " "
            + style
            + ": search "
            + took
            + " s, off by "
            + found.blur()
            + ", every pose "
            + seconds(start)
            + " s, same "
            + same);
    if (!same) {
      System.out.println("  " + poses(found) + "\n  " + poses(all));
    }
    return same;
  }

  private static void time(Path file) throws InputException {
    FrontCase tree =
        FrontCase.of(TreeFiles.read(file).document(), Optional.empty(), FrontWishes.UNSAID);
    FrontRules rules = FrontRules.of(TreeStyle.UPRIGHT);
    FrontGrid grid = FrontGrid.of(FrontRange.usual(TreeStyle.UPRIGHT));
    for (int n = 0; n < TIMES; n++) {
      FrontGauge gauge = tree.gauge();
      long start = System.nanoTime();
      Fronts found = new FrontSearch(gauge, rules, grid).run(FrontWatch.NOBODY).orElseThrow();
      double search = seconds(start);
      start = System.nanoTime();
      for (int k = 0; k < 200; k++) {
        gauge.read(new FrontPose(0.03 * k, 0.001 * k, -0.001 * k));
      }
      double reading = seconds(start) / 200;
      start = System.nanoTime();
      FrontDoubt.of(tree, rules, found);
      System.out.println(
          "search "
              + search
              + " s, off by "
              + found.blur()
              + ", reading "
              + 1000 * reading
              + " ms, measured again "
              + seconds(start)
              + " s");
    }
  }

  private static double seconds(long start) {
    return (System.nanoTime() - start) / 1e9;
  }

  static List<String> poses(Fronts fronts) {
    return fronts.fronts().stream().map(front -> front.pose() + " " + front.top()).toList();
  }
}
