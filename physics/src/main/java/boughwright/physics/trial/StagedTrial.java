// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodLoads;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodSolver;
import boughwright.physics.rod.RodStart;
import java.util.ArrayList;
import java.util.List;

/**
 * Tries the proposals of a plan in stages: drawn in, let out, drawn in again. Wood that has flowed
 * in one stage remembers it in the next; time between the stages is not counted.
 *
 * <p>A stage is a part of the plan's loads: 0 is let out (lines as long as measured, or without
 * tension, weights taken down), 1 is all of them. Within a stage all fibres are taken to go one
 * way.
 */
public final class StagedTrial {
  private StagedTrial() {}

  /**
   * Tries the stages one after another.
   *
   * @param request what to try
   * @param parts part of the plan's loads at the end of each stage, 0 or more [1]
   * @return a result for each stage, up to the first whose pose does not hold
   */
  public static List<TrialResult> run(TrialRequest request, List<Double> parts) {
    if (parts.stream().anyMatch(part -> !(part >= 0) || part.isInfinite())) {
      throw new IllegalArgumentException("parts of the loads are 0 or more, not " + parts);
    }
    Skeleton skeleton = new Skeleton(request.tree());
    Timber timber =
        new Timber(
            new Cutting(skeleton, request.plan().cuts()),
            TrialWood.best(skeleton, request.species()));
    Rigging rigging =
        Rigging.of(
            request.plan(), new TreeRods(timber, request.plan().clamp()), request.proposals());
    List<TrialResult> results = new ArrayList<>();
    TreeRods rods = rigging.rods();
    RodLoads before = null;
    RodSolution held = null;
    for (double part : parts) {
      RodLoads loads = rigging.part(part);
      RodSolution next =
          held == null
              ? RodSolver.solve(rigging.model(rods), loads, request.options())
              : RodSolver.solve(
                  rigging.model(rods), new RodStart(held, before), loads, request.options());
      results.add(new Trial(request, new Attempt(rods, rigging.loads(), next)).result());
      if (!next.status().holds()) {
        return results;
      }
      rods = rods.after(next.pose());
      held = next;
      before = loads;
    }
    return results;
  }
}
