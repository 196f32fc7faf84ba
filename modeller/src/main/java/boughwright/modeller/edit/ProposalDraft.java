// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.HandBend;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Proposal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A proposal while it is changed. Mutable, used by one edit. */
final class ProposalDraft {
  String id;
  Optional<String> about;
  final List<GuyLine> lines;
  final List<HungWeight> weights;
  final List<Coil> coils;
  final List<HandBend> hands;
  final List<Aid> aids;
  private final Map<String, Object> extras;

  ProposalDraft(Proposal from) {
    id = from.id();
    about = from.about();
    lines = new ArrayList<>(from.guyLines());
    weights = new ArrayList<>(from.hungWeights());
    coils = new ArrayList<>(from.coils());
    hands = new ArrayList<>(from.handBends());
    aids = new ArrayList<>(from.aids());
    extras = from.extras();
  }

  Proposal build() {
    return new Proposal(id, about, lines, weights, coils, hands, aids, extras);
  }
}
