// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.DeadFace;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether a bent limb lives on, apart from breaking. */
final class LifeOutlook {
  /** Below this part of the girth a strip is not counted on; our choice [1]. */
  private static final double STRIP = 0.25;

  private final Skeleton skeleton;
  private final Cutting cutting;

  LifeOutlook(TrialRequest request) {
    skeleton = new Skeleton(request.tree());
    cutting = new Cutting(skeleton, request.plan().cuts());
  }

  /** What becomes of the limb beyond a place that may fail, each a sentence. */
  List<String> beyond(FailurePlace place, boolean barkSlips) {
    int i = skeleton.indexOf(place.segment());
    List<String> out = new ArrayList<>();
    if (skeleton.segment(i).kind() == Kind.DEADWOOD) {
      out.add("The bend lies in deadwood: nothing there has to be kept alive.");
      return out;
    }
    out.add(growth(i));
    out.add(strip(i, place));
    if (barkSlips) {
      out.add(
          "Bark slips in this season: a pad or a line that turns tears it from the wood, and what"
              + " lies beyond dies though nothing cracked (common practice, no source).");
    }
    return out;
  }

  private String growth(int from) {
    List<String> live = new ArrayList<>();
    boolean unsaid = false;
    for (int i : limb(from)) {
      Segment segment = skeleton.segment(i);
      Optional<Boolean> said =
          segment.kind() == Kind.DEADWOOD ? Optional.of(false) : segment.live();
      unsaid |= said.isEmpty();
      if (said.orElse(false)) {
        live.add(segment.id());
      }
    }
    if (!live.isEmpty()) {
      return "Live growth is left beyond the bend, on "
          + String.join(", ", live.subList(0, Math.min(3, live.size())))
          + (live.size() > 3 ? " and " + (live.size() - 3) + " more." : ".");
    }
    return unsaid
        ? "Whether live growth is left beyond the bend was not said (\"live\" on "
            + skeleton.segment(from).id()
            + " and what it carries): without it the limb dies whether it cracks or not."
        : "No live growth is left beyond the bend: the limb dies back whether it cracks or not.";
  }

  /** A segment and all it carries that the cuts leave. */
  private List<Integer> limb(int from) {
    List<Integer> out = new ArrayList<>(List.of(from));
    for (int next = 0; next < out.size(); next++) {
      out.addAll(skeleton.children(out.get(next)));
    }
    out.removeIf(cutting::isGone);
    return out;
  }

  private String strip(int i, FailurePlace place) {
    double live = liveShare(skeleton.segment(i).features().deadFace(), place.round());
    String share =
        String.format(
            Locale.ROOT,
            "If it cracks half through, as green wood does (Ennos and van Casteren 2010, Proc. R."
                + " Soc. B 277), about %.0f %% of its girth stays live",
            100 * live);
    return live >= STRIP
        ? share
            + ", on the "
            + opposite(place.side())
            + "; a limb can live on that if the crack is closed and held at once (common practice,"
            + " no source)."
        : share + ": too little to count on (our choice).";
  }

  /** Part of the girth that is neither on the cracked half nor dead [1]. */
  static double liveShare(Optional<DeadFace> dead, double crackRound) {
    double gone = Math.PI;
    if (dead.isPresent()) {
      double between = Math.abs(Math.IEEEremainder(dead.get().round() - crackRound, 2 * Math.PI));
      double halves = Math.PI / 2 + dead.get().width() / 2;
      double smaller = Math.min(Math.PI, dead.get().width());
      double near = Math.max(0, Math.min(smaller, halves - between));
      double far = Math.max(0, halves - (2 * Math.PI - between));
      gone += dead.get().width() - Math.min(smaller, near + far);
    }
    return Math.max(0, 1 - gone / (2 * Math.PI));
  }

  private static String opposite(String side) {
    return switch (side) {
      case "top" -> "underside";
      case "underside" -> "top";
      case "left" -> "right";
      case "right" -> "left";
      case "front" -> "back";
      case "back" -> "front";
      default -> "other side";
    };
  }
}
