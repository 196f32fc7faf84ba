// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.tree.Extras;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One bend of a plan.
 *
 * @param id name within the plan
 * @param about the segment it is about
 * @param guyLines lines
 * @param hungWeights weights
 * @param coils coiled wires
 * @param extras fields of the file that this version does not know
 */
public record Proposal(
    String id,
    Optional<String> about,
    List<GuyLine> guyLines,
    List<HungWeight> hungWeights,
    List<Coil> coils,
    Map<String, Object> extras) {
  public Proposal {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(about, "about");
    guyLines = List.copyOf(guyLines);
    hungWeights = List.copyOf(hungWeights);
    coils = List.copyOf(coils);
    extras = Extras.copyOf(extras);
  }

  /** The same proposal with each of its guy-lines changed. */
  public Proposal withLines(UnaryOperator<GuyLine> change) {
    List<GuyLine> changed = guyLines.stream().map(change).toList();
    return new Proposal(id, about, changed, hungWeights, coils, extras);
  }
}
