// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.tree.Kind;
import java.util.ArrayList;
import java.util.List;

/** Long stretches of the trunk line and of its branches that carry nothing. */
final class BareStretches {
  private final Structure structure;

  BareStretches(Structure structure) {
    this.structure = structure;
  }

  List<Found> find() {
    List<Found> out = new ArrayList<>();
    trunk(out);
    for (Shoot stem : structure.stems()) {
      structure.judgedOn(stem).stream()
          .filter(shoot -> !structure.isStem(shoot))
          .forEach(shoot -> branch(shoot, out));
    }
    return out;
  }

  /** Where shoots leave, twigs too. */
  private List<Double> nodes(Shoot shoot) {
    return structure.on(shoot).stream()
        .filter(one -> one.live() && one.kind() != Kind.DEADWOOD)
        .map(one -> one.seat().at())
        .toList();
  }

  /** Up to the last branch: beyond it the leader goes on. */
  private void trunk(List<Found> out) {
    double from = 0;
    for (double node : nodes(structure.main())) {
      Limit limit = from == 0 ? Limit.BARE_BASE : Limit.BARE_TRUNK;
      look(new Found.Subject.Stretch(structure.main(), from, node), limit, out);
      from = node;
    }
  }

  /** From its parent's bark up to its last side branch. */
  private void branch(Shoot shoot, List<Found> out) {
    double from = shoot.seat().parentCaliper() / 2;
    for (double node : nodes(shoot)) {
      if (node > from) {
        look(new Found.Subject.Stretch(shoot, from, node), Limit.BARE_BRANCH, out);
        from = node;
      }
    }
  }

  private void look(Found.Subject.Stretch stretch, Limit limit, List<Found> out) {
    double length = stretch.to() - stretch.from();
    double share = length / stretch.shoot().line().length();
    double calipers = length / stretch.caliper();
    if (share > structure.limit(limit) && calipers >= structure.limit(Limit.BARE_CALIPERS)) {
      out.add(
          Found.stretch(
              FaultKind.BARE_STRETCH,
              stretch,
              List.of(
                  structure.measured(limit, share),
                  structure.measured(Limit.BARE_CALIPERS, calipers))));
    }
  }
}
