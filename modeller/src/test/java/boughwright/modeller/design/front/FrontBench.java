// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.plan.TreeStyle;
import java.util.List;

/**
 * Compares the search for fronts with a look at every pose, at full resolution; takes long.
 *
 * <p>Arguments: how many scattered trees, and how many of them are swept in full.
 */
public final class FrontBench {
  private FrontBench() {}

  /** Prints times and whether both found the same. */
  public static void main(String[] words) {
    int trees = Integer.parseInt(words[0]);
    int swept = Integer.parseInt(words[1]);
    int same = 0;
    for (int seed = 0; seed < trees; seed++) {
      FrontGauge gauge =
          new FrontGauge(ScatteredTrees.subject(ScatteredTrees.tree(seed)), Eye.LEVEL);
      TreeStyle style = TreeStyle.values()[seed % TreeStyle.values().length];
      FrontRules rules = FrontRules.of(style);
      FrontGrid grid = FrontGrid.of(FrontRange.square(Math.toRadians(25)));
      long start = System.nanoTime();
      Fronts found = new FrontSearch(gauge, rules, grid).run(FrontWatch.NOBODY).orElseThrow();
      double took = (System.nanoTime() - start) / 1e9;
      System.out.print(seed + " " + style + " search " + took + " s, blur " + found.blur());
      if (seed < swept) {
        start = System.nanoTime();
        Fronts all = new FrontSweep(gauge, rules, grid).run(FrontWatch.NOBODY).orElseThrow();
        boolean equal = poses(all).equals(poses(found));
        same += equal ? 1 : 0;
        System.out.print(", sweep " + (System.nanoTime() - start) / 1e9 + " s, same " + equal);
        if (!equal) {
          System.out.print("\n  " + poses(found) + "\n  " + poses(all));
        }
      }
      System.out.println();
    }
    System.out.println(same + " of " + Math.min(trees, swept) + " the same");
  }

  static List<String> poses(Fronts fronts) {
    return fronts.fronts().stream().map(front -> front.pose() + " " + front.top()).toList();
  }
}
