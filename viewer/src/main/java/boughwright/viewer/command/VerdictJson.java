// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.species.Species;
import boughwright.physics.trial.Verdict;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Optional;

/** The verdict for programs. */
final class VerdictJson {
  private VerdictJson() {}

  static ObjectNode of(Verdict verdict, Optional<Species> species) {
    ObjectNode node = JsonAnswer.object();
    node.put("level", verdict.level().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    node.put("words", VerdictText.line(verdict, species));
    node.put("reason", verdict.reason());
    if (!verdict.firstChange().isBlank()) {
      node.put("first_change", verdict.firstChange());
    }
    node.set("season", JsonAnswer.words(verdict.season()));
    node.set("life", JsonAnswer.words(verdict.life()));
    return node;
  }
}
