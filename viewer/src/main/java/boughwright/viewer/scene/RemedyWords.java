// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.review.Aftermath;
import boughwright.modeller.design.review.Balance;
import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Remedy;
import boughwright.modeller.design.review.Where;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.VisibleText;
import boughwright.physics.grow.Thickening;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;

/** What can be done about a fault of structure, and what that leaves, in words. */
public final class RemedyWords {
  /** A middle of the wood that moves less has not moved to the eye [m]. */
  private static final double UNMOVED = 0.5e-3;

  /** Tapers that differ less look the same [1]. */
  private static final double SAME_TAPER = 0.005;

  private final WoundWords wounds;

  /** Words for a tree whose wounds are told so. */
  public RemedyWords(WoundWords wounds) {
    this.wounds = Objects.requireNonNull(wounds, "wounds");
  }

  /** What is done, such as "remove". */
  public static String action(Remedy.Action action) {
    return switch (action) {
      case KEEP -> "keep";
      case SHORTEN -> "shorten";
      case REMOVE -> "remove";
      case SACRIFICE -> "keep as sacrifice";
      case GRAFT -> "graft needed";
      case BEND -> "bend instead";
    };
  }

  /** How it is done, or what comes of it if nothing is done. */
  public String first(Fault fault, Remedy remedy) {
    return switch (remedy.action()) {
      case KEEP -> FaultWords.ifKept(fault.kind()) + ".";
      case SHORTEN -> "cut " + FaultWords.place(remedy.cuts().get(0)) + ".";
      case REMOVE -> "take off " + names(remedy) + ".";
      case SACRIFICE -> sacrifice(remedy);
      case GRAFT -> "at " + FaultWords.place(place(remedy).spot()) + ".";
      case BEND ->
          "from "
              + FaultWords.place(place(remedy).spot())
              + ", "
              + Wording.tenths(place(remedy).caliper())
              + " thick there. Try what the wood takes first.";
    };
  }

  private static Where place(Remedy remedy) {
    return remedy.place().orElseThrow();
  }

  private static String names(Remedy remedy) {
    List<String> ids = remedy.cuts().stream().map(Spot::segment).distinct().toList();
    return VisibleText.of(String.join(", ", ids))
        + " with all that grows on "
        + (ids.size() == 1 ? "it" : "them");
  }

  private String sacrifice(Remedy remedy) {
    double now = place(remedy).caliper();
    double until = remedy.until().orElseThrow();
    return "let "
        + remedy.cuts().stream()
            .map(cut -> VisibleText.of(cut.segment()))
            .collect(Collectors.joining(", "))
        + " grow until the trunk is "
        + Wording.tenths(until)
        + " thick at "
        + FaultWords.place(place(remedy).spot())
        + " (now "
        + Wording.tenths(now)
        + "): "
        + YearsWords.of(Thickening.between(now, until, wounds.growth().ring()))
        + ". Then remove it; its wound is wider by then.";
  }

  /** The wounds, how the cuts are made, and what foliage goes. */
  public List<String> after(Aftermath aftermath) {
    List<String> words = new ArrayList<>();
    aftermath.cuts().forEach(cut -> words.add(wounds.wound(cut)));
    words.add(wounds.how(aftermath.cuts().get(0)));
    words.add(foliage(aftermath));
    return words;
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private static String foliage(Aftermath aftermath) {
    String most = percent(aftermath.mostLost()) + " of one session";
    String sessions =
        aftermath.sessions() == 1
            ? ", within the " + most
            : ": more than the " + most + ", so in " + aftermath.sessions() + " sessions";
    String left = "";
    if (aftermath.leftOnBranch().isPresent()) {
      double share = aftermath.leftOnBranch().getAsDouble();
      left =
          share < 0.005
              ? " Nothing live is left on what is cut: it must bud from old wood."
              : " What is cut keeps " + percent(share) + " of its own.";
    }
    return GroundWords.share(aftermath.lost())
        + " of the tree's foliage goes"
        + sessions
        + "."
        + left;
  }

  /** What becomes of balance and taper. */
  public static String shape(Aftermath aftermath) {
    String balance = balance(aftermath);
    String taper = taper(aftermath);
    if (balance.isEmpty() && taper.isEmpty()) {
      return "Balance and taper stay.";
    }
    return (balance.isEmpty() ? "The balance stays." : balance)
        + " "
        + (taper.isEmpty() ? "The taper stays." : taper);
  }

  private static String balance(Aftermath aftermath) {
    Balance before = aftermath.balance().before();
    Balance after = aftermath.balance().after();
    double right = after.right() - before.right();
    double behind = after.behind() - before.behind();
    if (Math.hypot(right, behind) < UNMOVED) {
      return "";
    }
    List<String> ways = new ArrayList<>();
    if (Math.abs(right) >= UNMOVED) {
      ways.add(Wording.millimetres(Math.abs(right)) + (right > 0 ? " right" : " left"));
    }
    if (Math.abs(behind) >= UNMOVED) {
      ways.add(Wording.millimetres(Math.abs(behind)) + (behind > 0 ? " back" : " forward"));
    }
    boolean over =
        Math.hypot(after.right(), after.behind()) < Math.hypot(before.right(), before.behind());
    return "The middle of the wood moves "
        + (ways.isEmpty() ? "slightly" : String.join(" and ", ways))
        + (over ? ", nearer to the root base." : ", away from the root base.");
  }

  private static String taper(Aftermath aftermath) {
    double before = aftermath.taper().before();
    double after = aftermath.taper().after();
    return Math.abs(after - before) < SAME_TAPER
        ? ""
        : String.format(
            Locale.ROOT,
            "Half way up, the trunk is %.2f as thick as its base; now %.2f.",
            after,
            before);
  }
}
