// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.species.Species;
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
    Set<SegmentWood> kinds = new LinkedHashSet<>();
    for (int i = 0; i < timber.skeleton().size(); i++) {
      if (!timber.isGone(i)) {
        kinds.add(timber.wood(i));
      }
    }
    if (kinds.stream().anyMatch(kind -> !kind.isElastic())) {
      out.add(
          "Wood bends as live green wood: in tension along a straight line, on the inside of the"
              + " bend flowing at its crushing stress. The pose is that of whole wood, before any"
              + " crack or kink.");
    }
    if (kinds.stream().anyMatch(SegmentWood::isElastic)) {
      out.add(
          "Wood is taken as straight-line elastic: it neither yields nor cracks in this trial, so"
              + " no verdict and no probability is given.");
    }
    kinds.forEach(kind -> out.add(kind(kind)));
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
    if (request.proposals().stream().anyMatch(proposal -> !proposal.coils().isEmpty())) {
      out.add(
          "Coiled wire hardens as it is wound on, follows the wood without slipping, and unloads by"
              + " the same line at twice its size (Masing); it does not creep.");
    }
    boolean unsaid =
        request.proposals().stream()
            .flatMap(proposal -> proposal.guyLines().stream())
            .anyMatch(line -> line.tackle().strand().isEmpty());
    out.add(
        (unsaid ? "Guy-lines whose strand nobody gave do not stretch. " : "")
            + "Roots, trunk base and container do not give way.");
    return out;
  }

  private static String kind(SegmentWood kind) {
    String flow =
        kind.isElastic()
            ? ""
            : String.format(
                Locale.ROOT, "; flows when compressed by %.2f %%", 100 * kind.yieldStrain());
    return String.format(
        Locale.ROOT, "Modulus %.2f GPa (%s)%s.", kind.moe() / 1e9, kind.basis(), flow);
  }

  List<String> warnings() {
    List<String> out = new ArrayList<>();
    Species species = request.species();
    boolean tableWood = request.tree().wood() instanceof TreeWood.OfSpecies;
    if (tableWood && species.isProxy()) {
      out.add(species.botanicalName() + ": " + species.proxyFor().orElseThrow() + ".");
    }
    out.addAll(CoilNotes.of(timber.skeleton(), request.proposals()));
    return out;
  }
}
