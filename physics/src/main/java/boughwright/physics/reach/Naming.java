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

  private Naming(Set<String> proposals, Set<String> lines, Set<String> hands) {
    this.proposals = proposals;
    this.lines = lines;
    this.hands = hands;
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
            .collect(Collectors.toSet()));
  }

  String proposal() {
    return free("reach", 1, proposals);
  }

  /** The id of the n-th line, counted from 0. */
  String line(int n) {
    return free("line", n + 1, lines);
  }

  String hand() {
    return free("hand", 1, hands);
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
