// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.stage;

import boughwright.physics.trial.Hardware;
import boughwright.physics.trial.LineHardware;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Turns of the tighteners of a plan's lines, stage by stage. */
final class StepTurns {
  /** Turns of each line that has some, by line id, shape (stages). */
  private final List<Map<String, LineHardware.Turns>> stages = new ArrayList<>();

  /**
   * For the poses of all stages, in order.
   *
   * @param request the plan
   */
  StepTurns(TrialRequest request, List<TrialResult> poses) {
    boolean any =
        request.proposals().stream()
            .flatMap(proposal -> proposal.guyLines().stream())
            .anyMatch(line -> line.tackle().tightener().isPresent());
    for (TrialResult pose : poses) {
      Map<String, LineHardware.Turns> found = new TreeMap<>();
      if (any) {
        for (LineHardware line : Hardware.of(request, pose).lines()) {
          line.turns().ifPresent(turns -> found.put(line.line(), turns));
        }
      }
      stages.add(found);
    }
  }

  /** Turns of a line at a stage, in words; empty where it has no tightener that turns. */
  Optional<String> said(int stage, String line) {
    return Optional.ofNullable(stages.get(stage).get(line))
        .map(
            turns -> {
              double before = stage == 0 ? turns.in() : all(stages.get(stage - 1).get(line));
              double more = all(turns) - before;
              return CourseWords.format(
                  "%.1f turns %s (%.1f in all)",
                  Math.abs(more), more < 0 ? "out" : "more", all(turns));
            });
  }

  /** Turns in each tightener at the end of a stage, by line id [1]. */
  Map<String, Double> in(int stage) {
    Map<String, Double> in = new TreeMap<>();
    stages.get(stage).forEach((line, turns) -> in.put(line, all(turns)));
    return in;
  }

  private static double all(LineHardware.Turns turns) {
    return turns.in() + turns.toAdd();
  }

  /** The lines that jam on the way, each a sentence with the stage up to which it can be turned. */
  List<String> jams() {
    List<String> out = new ArrayList<>();
    for (String line : stages.get(0).keySet()) {
      for (int k = 0; k < stages.size(); k++) {
        LineHardware.Turns turns = stages.get(k).get(line);
        if (turns.left().isPresent() && turns.left().getAsDouble() < 0) {
          out.add(
              CourseWords.format(
                  "The strands of %s jam at %.1f turns in all; %s takes %.1f. Tie it shorter first,"
                      + " or use a turnbuckle.",
                  line,
                  all(turns) + turns.left().getAsDouble(),
                  stages.size() == 1 ? "the bend" : "step " + (k + 1),
                  all(turns)));
          break;
        }
      }
    }
    return out;
  }
}
