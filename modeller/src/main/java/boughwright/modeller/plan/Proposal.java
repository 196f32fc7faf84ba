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
 * @param handBends pulls by hand while it is bent, let go afterwards
 * @param aids what is done to the wood first
 * @param extras fields of the file that this version does not know
 */
public record Proposal(
    String id,
    Optional<String> about,
    List<GuyLine> guyLines,
    List<HungWeight> hungWeights,
    List<Coil> coils,
    List<HandBend> handBends,
    List<Aid> aids,
    Map<String, Object> extras) {
  public Proposal {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(about, "about");
    guyLines = List.copyOf(guyLines);
    hungWeights = List.copyOf(hungWeights);
    coils = List.copyOf(coils);
    handBends = List.copyOf(handBends);
    aids = List.copyOf(aids);
    extras = Extras.copyOf(extras);
  }

  /** A proposal without hands and aids. */
  public Proposal(
      String id,
      Optional<String> about,
      List<GuyLine> guyLines,
      List<HungWeight> hungWeights,
      List<Coil> coils,
      Map<String, Object> extras) {
    this(id, about, guyLines, hungWeights, coils, List.of(), List.of(), extras);
  }

  /** The same proposal with each of its guy-lines changed. */
  public Proposal withLines(UnaryOperator<GuyLine> change) {
    List<GuyLine> changed = guyLines.stream().map(change).toList();
    return new Proposal(id, about, changed, hungWeights, coils, handBends, aids, extras);
  }

  /** The same proposal with other coils. */
  public Proposal withCoils(List<Coil> others) {
    return new Proposal(id, about, guyLines, hungWeights, others, handBends, aids, extras);
  }

  /** The same proposal with other pulls by hand. */
  public Proposal withHandBends(List<HandBend> others) {
    return new Proposal(id, about, guyLines, hungWeights, coils, others, aids, extras);
  }

  /** The same proposal with other aids. */
  public Proposal withAids(List<Aid> others) {
    return new Proposal(id, about, guyLines, hungWeights, coils, handBends, others, extras);
  }
}
