// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;

/** Faults and notes for programs. */
final class ProblemJson {
  private ProblemJson() {}

  static ArrayNode of(List<Problem> problems) {
    ArrayNode list = JsonAnswer.array();
    for (Problem problem : problems) {
      ObjectNode node = list.addObject();
      Place place = problem.place();
      node.put("severity", problem.severity().name().toLowerCase(Locale.ROOT));
      node.put("source", place.source());
      if (place.line() > 0) {
        node.put("line", place.line());
      }
      if (place.column() > 0) {
        node.put("column", place.column());
      }
      if (!place.subject().isEmpty()) {
        node.put("subject", place.subject());
      }
      node.put("kind", problem.kind());
      node.put("found", problem.found());
      node.put("remedy", problem.remedy());
    }
    return list;
  }
}
