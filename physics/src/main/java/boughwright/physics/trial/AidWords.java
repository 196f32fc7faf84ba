// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.GuyLine;
import boughwright.physics.trial.AidEffect.Cut;
import boughwright.physics.trial.AidEffect.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What an aid does and costs, in words for a grower. */
final class AidWords {
  private static final String PRACTICE = " (common practice, no source)";

  /** Genera whose foliage hangs on the vein of live wood below it. */
  private static final Set<String> VEINED =
      Set.of("juniperus", "taxus", "thuja", "chamaecyparis", "cupressus");

  /** Genera that bleed when they are cut while sap rises. */
  private static final Set<String> BLEEDING =
      Set.of("acer", "betula", "carpinus", "juglans", "vitis", "ostrya");

  /** Genera that answer wounds with gum and die back from them. */
  private static final Set<String> GUMMING = Set.of("prunus");

  private AidWords() {}

  static AidEffect of(TrialRequest request, Aid aid, AidTrial with, AidTrial without) {
    List<Cut> cuts = aid.kind() == Aid.Kind.RELIEF_CUT ? with.cuts(aid) : List.of();
    List<String> says = new ArrayList<>();
    says.add(effect(with.figures(), without.figures()));
    says.addAll(special(aid, with.figures(), without.figures(), cuts));
    return new AidEffect(
        AidEffect.word(aid.kind()),
        aid.segment(),
        without.figures(),
        with.figures(),
        cuts,
        says,
        price(aid.kind(), genus(request)));
  }

  static AidEffect ofLever(GuyLine line, AidTrial with, AidTrial without) {
    return new AidEffect(
        "lever",
        line.id(),
        without.figures(),
        with.figures(),
        List.of(),
        List.of(effect(with.figures(), without.figures())),
        "A lever bends the branch where it is lashed on as well: lash it over pads along at least"
            + " three thicknesses of the branch"
            + PRACTICE
            + ". It stores more energy than it looks: stand beside it, wear eye protection.");
  }

  private static String effect(Optional<Figures> with, Optional<Figures> without) {
    if (with.isEmpty() || without.isEmpty()) {
      return (with.isEmpty() ? "With" : "Without") + " it no pose holds.";
    }
    return "Without it " + said(without.get()) + ". With it " + said(with.get()) + ".";
  }

  private static String said(Figures figures) {
    String pull =
        figures.pull() > 0 ? String.format(Locale.ROOT, "a pull of %.1f N, ", figures.pull()) : "";
    return String.format(
        Locale.ROOT,
        "%sthe end that moves most comes %.0f mm, the outside is stretched by %.2f %%",
        pull,
        1e3 * figures.moved(),
        100 * figures.tensionStrain());
  }

  private static List<String> special(
      Aid aid, Optional<Figures> with, Optional<Figures> without, List<Cut> cuts) {
    return switch (aid.kind()) {
      case WRAP -> wrap(with, without);
      case RELIEF_CUT -> cuts.stream().map(AidWords::cut).toList();
      case SLOT, HOLLOW -> List.of();
    };
  }

  private static List<String> wrap(Optional<Figures> with, Optional<Figures> without) {
    List<String> says = new ArrayList<>();
    boolean splits =
        with.isPresent()
            && without.isPresent()
            && with.get().split().isPresent()
            && without.get().split().isPresent();
    if (splits) {
      says.add(
          String.format(
              Locale.ROOT,
              "Splitting uses %.0f %% of what the wood bears without it, %.0f %% with it.",
              100 * without.get().split().getAsDouble(),
              100 * with.get().split().getAsDouble()));
    }
    says.add(
        "It changes no force and no probability of a crack; it holds a crack together, so that the"
            + " branch may live"
            + PRACTICE
            + ".");
    return says;
  }

  private static String cut(Cut cut) {
    String turned =
        String.format(
            Locale.ROOT,
            "The cut %.0f %% along %s by %.2f° and would be shut at %.1f°",
            100 * cut.along(),
            cut.closed() < 0 ? "gapes" : "closes",
            Math.toDegrees(Math.abs(cut.closed())),
            Math.toDegrees(cut.full()));
    if (cut.closed() < 0) {
      return turned + ": it lies on the outside of the bend, where it tears. Turn it round.";
    }
    return cut.isShut()
        ? turned
            + ": it shuts first, and from then on it is wood on wood, stiffer than computed here."
            + " Cut wider, or make more cuts."
        : turned + ".";
  }

  private static String genus(TrialRequest request) {
    String name = request.species().botanicalName().toLowerCase(Locale.ROOT);
    return name.split("[^a-z]", 2)[0];
  }

  private static String price(Aid.Kind kind, String genus) {
    return switch (kind) {
      case WRAP ->
          "Wet wrap keeps bark wet and buds in the dark: take it off when the bend holds, at the"
              + " latest before the next growing season"
              + PRACTICE
              + ".";
      case HOLLOW ->
          "The heartwood it takes is dead, but the way in is a wound that stays open for years, and"
              + " water stands in it: drill so that it drains"
              + PRACTICE
              + ".";
      case SLOT, RELIEF_CUT -> wound(kind, genus);
    };
  }

  private static String wound(Aid.Kind kind, String genus) {
    String way = kind == Aid.Kind.SLOT ? "A slot along the grain" : "A cut across the grain";
    if (VEINED.contains(genus)) {
      return way
          + (kind == Aid.Kind.SLOT
              ? " takes the live vein it lies on, with the foliage it feeds: lay it in dead wood"
                  + " or between veins"
              : " ends every vein it crosses, and the foliage above it dies back: cut only dead"
                  + " wood")
          + PRACTICE
          + ".";
    }
    if (GUMMING.contains(genus)) {
      return way
          + " brings gum and die-back in this genus: leave it, and bend in more stages"
          + PRACTICE
          + ".";
    }
    String season = BLEEDING.contains(genus) ? "; it bleeds while sap rises, so not then" : "";
    return way
        + " closes over in some years, and rots before it does: cut clean, bind it, seal it"
        + season
        + (kind == Aid.Kind.RELIEF_CUT
            ? "; cut less than half round, or what is above starves"
            : "")
        + PRACTICE
        + ".";
  }
}
