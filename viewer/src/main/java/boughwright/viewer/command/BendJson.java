// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.direction;
import static boughwright.viewer.command.JsonAnswer.number;
import static boughwright.viewer.command.JsonAnswer.point;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Tree;
import boughwright.physics.trial.LetGo;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.SegmentTrial;
import boughwright.physics.trial.TrialResult;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.scene.Mark;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * What a bend gave, for programs: millimetres, newtons, newton metres; directions of length one.
 */
final class BendJson {
  private final String response;
  private final Optional<Species> limits;
  private final Said said;

  private BendJson(Tree tree, Said said) {
    this.said = said;
    response = ResponseWord.of(tree);
    limits = TrialSpecies.limitsOf(tree);
  }

  static String of(BendAnswer answer) {
    ObjectNode node = JsonAnswer.object();
    BendJson json = new BendJson(answer.file().document().tree(), answer.said());
    node.set("trials", JsonAnswer.list(answer.tried(), json::trial));
    node.put("tree", answer.file().document().tree().name());
    answer.picture().ifPresent(picture -> node.put("picture", picture));
    node.set("notes", ProblemJson.of(answer.file().warnings()));
    return JsonAnswer.text(node);
  }

  private ObjectNode trial(BendAnswer.Tried tried) {
    TrialResult trial = tried.trial();
    boolean holds = trial.outcome().holds();
    ObjectNode node = JsonAnswer.object();
    node.put("plan", trial.plan());
    node.set("proposals", JsonAnswer.words(trial.proposals()));
    node.put("converged", trial.outcome().converged());
    node.put("stable", trial.outcome().stable());
    node.put("response", response);
    if (holds) {
      pose(trial, node);
      tried.apex().ifPresent(apex -> node.set("apex", apex(tried, apex)));
      node.set("error_estimate", TrialJson.errors(trial));
    } else {
      if (trial.outcome().unstableModes() > 0) {
        node.put("unstable_modes", trial.outcome().unstableModes());
      }
      node.put("reason", trial.outcome().where());
    }
    trial.risk().ifPresent(risk -> node.set("risk", RiskJson.of(risk)));
    trial.verdict().ifPresent(v -> node.set("verdict", VerdictJson.of(v, limits)));
    tried.letGo().ifPresent(found -> node.set("let_go", letGo(found)));
    Means.putInto(node, tried.means());
    WarmthText.putInto(node, said.celsius());
    tried
        .course()
        .ifPresent(course -> node.set("course", CourseJson.of(course, Optional.of(said.on()))));
    limits.ifPresent(species -> node.set("limits", Published.json(species)));
    node.put("held", trial.held());
    node.set("warnings", JsonAnswer.words(trial.warnings()));
    node.set("assumptions", JsonAnswer.words(trial.assumptions()));
    return node;
  }

  private static ObjectNode letGo(LetGo found) {
    ObjectNode node = JsonAnswer.object();
    node.put("segment", found.segment());
    node.put("moved_mm", number(1000 * found.moved()));
    node.put("stays_mm", number(1000 * found.stays()));
    return node;
  }

  private static void pose(TrialResult trial, ObjectNode node) {
    node.set("guy_lines", JsonAnswer.list(trial.lines(), BendJson::line));
    node.set("pose", JsonAnswer.list(trial.segments(), BendJson::pose));
    trial.peak().ifPresent(peak -> node.set("peak", TrialJson.peak(peak)));
    node.set("segments", JsonAnswer.list(trial.segments(), BendJson::segment));
  }

  private static ObjectNode line(LineTrial line) {
    ObjectNode node = JsonAnswer.object();
    node.put("id", line.id());
    node.put("tension_N", number(line.tension()));
    node.put("length_mm", number(1000 * line.length()));
    node.put("shortening_mm", number(1000 * line.shortening()));
    node.put("slack", line.slack());
    return node;
  }

  private static ObjectNode pose(SegmentTrial segment) {
    ObjectNode node = JsonAnswer.object();
    node.put("segment", segment.segment());
    node.set("start_mm", point(segment.start()));
    node.set("end_mm", point(segment.end()));
    node.set("start_direction", direction(segment.startDirection()));
    node.set("end_direction", direction(segment.endDirection()));
    return node;
  }

  private static ObjectNode segment(SegmentTrial segment) {
    ObjectNode node = JsonAnswer.object();
    node.put("segment", segment.segment());
    node.put("bending_strain", number(segment.bendingStrain()));
    node.put("moment_Nm", number(segment.moment()));
    node.put("torsion_Nm", number(segment.torsion()));
    node.put("axial_N", number(segment.axial()));
    return node;
  }

  private static ObjectNode apex(BendAnswer.Tried tried, Mark.Apex apex) {
    ObjectNode node = JsonAnswer.object();
    tried.choice().plan().apex().ifPresent(id -> node.put("segment", id));
    node.put("right_mm", number(1000 * apex.right()));
    node.put("behind_mm", number(1000 * apex.behind()));
    node.put("above_soil_mm", number(1000 * apex.at().z()));
    return node;
  }
}
