// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.JsonAnswer.number;

import boughwright.modeller.species.Species;
import boughwright.physics.trial.PlainBranch;
import boughwright.physics.trial.TipPull;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** The answer for one plain branch, for programs. */
final class BranchJson {
  private BranchJson() {}

  static String of(BranchAnswer answer) {
    TipPull pull = answer.pull();
    Species species = answer.species();
    PlainBranch branch = pull.branch();
    ObjectNode node = JsonAnswer.object();
    node.put("species", species.key());
    node.put("length_mm", number(1000 * branch.length()));
    node.putArray("calipers_mm")
        .add(number(1000 * branch.caliperStart()))
        .add(number(1000 * branch.caliperEnd()));
    node.put("bark_mm", number(1000 * branch.bark()));
    branch.caliperError().ifPresent(error -> node.put("caliper_error_mm", number(1000 * error)));
    node.put("tip_mm", number(1000 * pull.tipDown()));
    node.put("converged", pull.trial().outcome().converged());
    node.put("stable", pull.trial().outcome().stable());
    node.put("response", ResponseWord.FIBRE);
    if (pull.trial().outcome().holds()) {
      node.put("force_N", number(pull.force()));
      answer.force().ifPresent(range -> node.set("force_range_N", RiskJson.range(range)));
      node.put("tip_in_mm", number(1000 * pull.tipIn()));
      pull.trial().peak().ifPresent(peak -> node.set("peak", TrialJson.peak(peak)));
      node.set("error_estimate", TrialJson.errors(pull.trial()));
    } else {
      node.put("reason", pull.trial().outcome().where());
    }
    answer.risk().ifPresent(risk -> node.set("risk", RiskJson.of(risk)));
    answer.verdict().ifPresent(v -> node.set("verdict", VerdictJson.of(v, Optional.of(species))));
    answer.wire().ifPresent(choice -> node.set("wire", CoilJson.choice(choice)));
    WarmthText.putInto(node, answer.celsius());
    node.set("limits", Published.json(species));
    node.put("held", answer.risk().isPresent() ? "length" : "weight");
    node.set("warnings", JsonAnswer.words(pull.trial().warnings()));
    node.set("assumptions", JsonAnswer.words(pull.trial().assumptions()));
    return JsonAnswer.text(node);
  }
}
