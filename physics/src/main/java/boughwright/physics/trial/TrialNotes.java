// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.physics.wood.SegmentWood;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What a person must know about a trial besides its numbers. */
final class TrialNotes {
  private final TrialRequest request;
  private final Timber timber;

  TrialNotes(TrialRequest request, Timber timber) {
    this.request = request;
    this.timber = timber;
  }

  List<String> assumptions() {
    List<String> out = new ArrayList<>();
    out.add(
        "Wood is taken as straight-line elastic: it neither yields nor cracks in this trial, so no"
            + " verdict and no probability is given.");
    Set<SegmentWood> kinds = new LinkedHashSet<>();
    for (int i = 0; i < timber.skeleton().size(); i++) {
      if (!timber.isGone(i)) {
        kinds.add(timber.wood(i));
      }
    }
    for (SegmentWood kind : kinds) {
      out.add(String.format(Locale.ROOT, "Modulus %.2f GPa (%s).", kind.moe() / 1e9, kind.basis()));
    }
    if (request.tree().unions() == Unions.SURFACE) {
      out.add("Branches bend from the bark of their parent outward; unions themselves are rigid.");
    }
    out.add(
        request.plan().selfWeight()
            ? String.format(
                Locale.ROOT,
                "Own weight is counted at %.0f kg/m3, wood and bark without foliage (from memory).",
                OwnWeight.GREEN_DENSITY)
            : "The measured pose already holds the tree's own weight, which is left out.");
    out.add("Guy-lines do not stretch. Roots, trunk base and container do not give way.");
    return out;
  }

  List<String> warnings() {
    List<String> out = new ArrayList<>();
    Species species = request.species();
    boolean tableWood = request.tree().wood() instanceof TreeWood.OfSpecies;
    if (tableWood && species.isProxy()) {
      out.add(species.botanicalName() + ": " + species.proxyFor().orElseThrow() + ".");
    }
    boolean coils = request.proposals().stream().anyMatch(proposal -> !proposal.coils().isEmpty());
    if (coils) {
      out.add("Coiled wire is not counted in this trial.");
    }
    boolean fibre =
        !(request.tree().wood() instanceof TreeWood.Own own)
            || own.response().orElse(Response.FIBRE) == Response.FIBRE;
    if (fibre) {
      out.add(
          "Real wood flows on the inside of a bend above about a quarter of a per cent: beyond that"
              + " it needs less force than stated here, and stays partly bent.");
    }
    return out;
  }
}
