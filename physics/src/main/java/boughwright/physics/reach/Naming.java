// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.Proposal;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Ids of what is proposed that no other proposal of the plan has. */
final class Naming {
  private final Set<String> proposals;
  private final Set<String> lines;
  private final Set<String> hands;

  private final List<String> stems;

  private Naming(Set<String> proposals, Set<String> lines, Set<String> hands, List<String> stems) {
    this.proposals = proposals;
    this.lines = lines;
    this.hands = hands;
    this.stems = stems;
  }

  static Naming besides(List<Proposal> others) {
    return new Naming(
        others.stream().map(Proposal::id).collect(Collectors.toSet()),
        others.stream()
            .flatMap(proposal -> proposal.guyLines().stream())
            .map(GuyLine::id)
            .collect(Collectors.toSet()),
        others.stream()
            .flatMap(proposal -> proposal.handBends().stream())
            .map(HandBend::id)
            .collect(Collectors.toSet()),
        List.of("reach", "line", "hand"));
  }

  /** The same names in the short form that plans made by hand have: p1, g1, h1. */
  Naming numbered() {
    return new Naming(proposals, lines, hands, List.of("p", "g", "h"));
  }

  String proposal() {
    return free(stems.get(0), 1, proposals);
  }

  /** The id of the n-th line, counted from 0. */
  String line(int n) {
    return free(stems.get(1), n + 1, lines);
  }

  String hand() {
    return free(stems.get(2), 1, hands);
  }

  private static String free(String stem, int nth, Set<String> taken) {
    int left = nth;
    int number = 1;
    while (true) {
      String id = stem + number;
      if (!taken.contains(id) && --left == 0) {
        return id;
      }
      number++;
    }
  }
}
