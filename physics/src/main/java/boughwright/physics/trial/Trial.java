// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.rod.RodSolution;
import boughwright.physics.rod.RodStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tries the proposals of a plan on a tree: cuts first, then all proposals together. */
public final class Trial {
  private final TrialRequest request;
  private final TreeRods rods;
  private final PlanLoads loads;
  private final RodSolution solution;

  /** For what came of a request. */
  Trial(TrialRequest request, Attempt attempt) {
    this.request = request;
    rods = attempt.rods();
    loads = attempt.loads();
    solution = attempt.solution();
  }

  /** Tries a request. */
  public static TrialResult run(TrialRequest request) {
    Skeleton skeleton = new Skeleton(request.tree());
    Attempt attempt =
        Attempt.of(
            request.plan(),
            new Cutting(skeleton, request.plan().cuts()),
            request.proposals(),
            TrialWood.best(skeleton, request.species()),
            request.options());
    return new Trial(request, attempt).result();
  }

  TrialResult result() {
    boolean holds = solution.status().holds();
    TrialNotes notes = new TrialNotes(request, rods.timber());
    Optional<Peak> peak =
        holds
            ? new PeakSearch(rods, solution.pose()).find(request.plan().frontAzimuth().orElse(0))
            : Optional.empty();
    return new TrialResult(
        request.plan().id(),
        request.proposals().stream().map(Proposal::id).toList(),
        outcome(),
        holds ? lines() : List.of(),
        holds ? new PoseReader(rods, solution.pose()).segments(peak) : List.of(),
        peak,
        loads.held(),
        new TrialResult.ErrorEstimate(
            solution.error().position(), solution.error().tension(), solution.error().strain()),
        Optional.empty(),
        Optional.empty(),
        notes.warnings(),
        notes.assumptions());
  }

  private Outcome outcome() {
    RodStatus status = solution.status();
    if (status.holds()) {
      return new Outcome(true, true, 0, "");
    }
    TreeRods.Run run = rods.run(status.span());
    Skeleton skeleton = rods.timber().skeleton();
    int i = run.piece().segment();
    String where =
        String.format(
            Locale.ROOT,
            "%s; it held up to %.0f %% of the pull%s, and \"%s\" gives way first, %.0f mm along",
            status.reason(),
            100 * status.part(),
            hardestPull(),
            skeleton.segment(i).id(),
            1000 * run.toSegment(status.s()));
    boolean balanced = status.converged() || status.unstableModes() > 0;
    return new Outcome(balanced, status.stable(), status.unstableModes(), where);
  }

  /** What the hardest pulling line had come to, where lines are held by length; else nothing. */
  private String hardestPull() {
    double most = 0;
    String id = "";
    for (int i = 0; i < loads.lines().size(); i++) {
      boolean byLength = !(loads.lines().get(i).hold() instanceof Hold.Tension);
      double tension = solution.lines().get(i).tension();
      if (byLength && tension > most) {
        most = tension;
        id = loads.lines().get(i).id();
      }
    }
    String what = "line \"" + id + "\"";
    for (int i = 0; i < loads.hands().size(); i++) {
      double force = solution.lines().get(loads.lines().size() + i).tension();
      if (force > most) {
        most = force;
        what = "the hand \"" + loads.hands().get(i).id() + "\"";
      }
    }
    return most > 0 ? String.format(Locale.ROOT, ", when %s pulled %.0f N", what, most) : "";
  }

  private List<LineTrial> lines() {
    List<LineTrial> out = new ArrayList<>();
    for (int i = 0; i < loads.lines().size(); i++) {
      GuyLine line = loads.lines().get(i);
      RodSolution.LineState state = solution.lines().get(i);
      Point3 pad = state.at();
      Point3 anchor = state.other();
      out.add(
          new LineTrial(
              line.id(),
              state.tension(),
              state.length(),
              loads.restLength(i) - state.length(),
              state.slack(),
              pad,
              anchor));
    }
    return out;
  }
}
