// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.review.Aftermath;
import boughwright.modeller.design.review.Balance;
import boughwright.modeller.design.review.Fault;
import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.Remedy;
import boughwright.modeller.design.review.WoodKind;
import boughwright.modeller.design.review.WoundLeft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.grow.Thickening;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.Years;
import boughwright.viewer.scene.FaultWords;
import java.util.ArrayList;
import java.util.List;

/** What can be done about a fault, and what that leaves, in words. */
final class RemedyText {
  /** A middle of the wood that moves less has not moved to the eye [m]. */
  private static final double UNMOVED = 0.5e-3;

  /** Tapers that differ less look the same [1]. */
  private static final double SAME_TAPER = 0.005;

  /** A wound above this share of what it is on is never made at once (common practice) [1]. */
  private static final double WIDEST = 0.5;

  private final ReviewAnswer answer;
  private final Skeleton skeleton;

  RemedyText(ReviewAnswer answer) {
    this.answer = answer;
    skeleton = answer.skeleton();
  }

  void write(TextPage page, Fault fault, Remedy remedy) {
    page.point(ReviewWords.action(remedy.action()) + ": " + first(fault, remedy));
    if (remedy.action() != Remedy.Action.SACRIFICE) {
      remedy.aftermath().ifPresent(aftermath -> after(page, aftermath));
    }
  }

  private String first(Fault fault, Remedy remedy) {
    return switch (remedy.action()) {
      case KEEP -> FaultWords.ifKept(fault.kind()) + ".";
      case SHORTEN -> "cut " + cut(remedy.aftermath().orElseThrow().wounds().get(0)) + ".";
      case REMOVE -> "take off " + names(remedy) + ".";
      case SACRIFICE -> sacrifice(remedy);
      case GRAFT -> "at " + ReviewWords.place(remedy.place().orElseThrow()) + ".";
      case BEND ->
          "from "
              + ReviewWords.place(remedy.place().orElseThrow())
              + ", "
              + Shown.millimetres(remedy.place().orElseThrow().caliper())
              + " thick; \"bend\" and \"reach\" say what the wood takes.";
    };
  }

  private static String names(Remedy remedy) {
    List<String> ids = remedy.cuts().stream().map(cut -> cut.segment()).toList();
    return VisibleText.of(String.join(", ", ids))
        + " with all that grows on "
        + (ids.size() == 1 ? "it" : "them");
  }

  private static String cut(WoundLeft wound) {
    return VisibleText.of(wound.cut().segment())
        + " at "
        + Shown.fixed(100 * wound.cut().along(), 0)
        + " % of its length";
  }

  private String sacrifice(Remedy remedy) {
    double now = remedy.place().orElseThrow().caliper();
    double until = remedy.until().orElseThrow();
    return "let "
        + VisibleText.of(remedy.cuts().get(0).segment())
        + " grow until the trunk at "
        + ReviewWords.place(remedy.place().orElseThrow())
        + " reaches "
        + Shown.millimetres(until)
        + " (now "
        + Shown.millimetres(now)
        + "): "
        + years(Thickening.between(now, until, answer.ring()))
        + ". Then remove it; its wound is wider by then.";
  }

  private void after(TextPage page, Aftermath aftermath) {
    aftermath.wounds().forEach(wound -> page.further(wound(wound)));
    page.further(how(aftermath.wounds().get(0)));
    page.further(foliage(aftermath) + " " + balance(aftermath) + taper(aftermath));
  }

  private String wound(WoundLeft wound) {
    String size = Shown.millimetres(wound.width()) + " wide";
    String place =
        wound.across()
            ? "across " + VisibleText.of(wound.cut().segment())
            : "on "
                + VisibleText.of(wound.on().segment())
                + ", "
                + side(wound)
                + ", "
                + Shown.millimetres(wound.height())
                + " along the grain as cut (shaped "
                + Shown.fixed(1000 * WoundLeft.SHAPED_SHORTEST * wound.width(), 0)
                + " to "
                + Shown.millimetres(WoundLeft.SHAPED_LONGEST * wound.width())
                + " long)";
    return "Wound " + size + " " + place + ": " + closing(wound) + wide(wound);
  }

  /** Which way the wound faces, seen from the front. */
  private String side(WoundLeft wound) {
    int on = skeleton.indexOf(wound.on().segment());
    Direction3 out = skeleton.roundDirection(on, wound.round());
    Direction3 seen = answer.front().map(pose -> pose.toViewer().turn(out)).orElse(out);
    if (Math.abs(seen.z()) > Math.max(Math.abs(seen.x()), Math.abs(seen.y()))) {
      return seen.z() > 0 ? "on its upper side" : "on its underside";
    }
    if (Math.abs(seen.x()) > Math.abs(seen.y())) {
      return seen.x() > 0 ? "at the right" : "at the left";
    }
    return seen.y() > 0 ? "at the back" : "at the front";
  }

  private String closing(WoundLeft wound) {
    WoundClosure closure = answer.closure(wound);
    String late =
        closure.isLate()
            ? ", too late to keep decay out"
            : closure.mayBeLate() ? ", perhaps too late to keep decay out" : "";
    return "closes in " + years(closure.years()) + late + ".";
  }

  private String wide(WoundLeft wound) {
    if (wound.across() || wound.share() <= answer.review().rules().value(Limit.WOUND_WIDTH)) {
      return "";
    }
    String share = Shown.fixed(wound.share(), 2) + " of the trunk's caliper";
    return wound.share() > WIDEST
        ? " It is " + share + ": too wide to cut at once."
        : " It is " + share + ": take it off in stages.";
  }

  static String years(Years years) {
    if (Double.isInfinite(years.likely())) {
      return "more years than can be told at this growth";
    }
    String high = Double.isInfinite(years.high()) ? "never" : count(years.high());
    return count(years.likely()) + " years (" + count(years.low()) + " to " + high + ")";
  }

  private static String count(double years) {
    return Shown.fixed(years, years < 9.95 ? 1 : 0);
  }

  private String how(WoundLeft wound) {
    List<String> words = new ArrayList<>();
    words.add(
        wound.advice().angle() == 0
            ? "cut along the trunk, outside the collar"
            : "cut at "
                + Shown.fixed(Math.toDegrees(wound.advice().angle()), 0)
                + "° to its length");
    words.add(
        "leave a stub of " + Shown.millimetres(wound.advice().stub()) + " until it has dried");
    if (wound.advice().depth() > 0) {
      words.add("then hollow the wound " + Shown.millimetres(wound.advice().depth()) + " deep");
    }
    boolean conifer = answer.review().rules().wood() == WoodKind.CONIFER;
    String kind = conifer ? " (conifer; the stub may stay as deadwood)" : "";
    return ReviewWords.capital(String.join(", ", words)) + kind + ".";
  }

  private static String foliage(Aftermath aftermath) {
    String lost = Shown.fixed(100 * aftermath.lost(), 0) + " % of the tree's foliage goes";
    String most = Shown.fixed(100 * aftermath.mostLost(), 0) + " %";
    String sessions =
        aftermath.sessions() == 1
            ? ", within the " + most + " of one session"
            : ": more than the "
                + most
                + " of one session, so in "
                + aftermath.sessions()
                + " sessions";
    String left = "";
    if (aftermath.leftOnBranch().isPresent()) {
      double share = aftermath.leftOnBranch().getAsDouble();
      left =
          share < 0.005
              ? " Nothing live is left on the branch: it must bud from old wood."
              : " " + Shown.fixed(100 * share, 0) + " % of its own is left on it.";
    }
    return lost + sessions + "." + left;
  }

  private String balance(Aftermath aftermath) {
    Balance before = aftermath.balance().before();
    Balance after = aftermath.balance().after();
    double right = after.right() - before.right();
    double behind = after.behind() - before.behind();
    if (Math.hypot(right, behind) < UNMOVED) {
      return "The balance stays.";
    }
    List<String> ways = new ArrayList<>();
    if (Math.abs(right) >= UNMOVED) {
      ways.add(Shown.millimetres(Math.abs(right)) + " to the " + (right > 0 ? "right" : "left"));
    }
    if (Math.abs(behind) >= UNMOVED) {
      ways.add(Shown.millimetres(Math.abs(behind)) + (behind > 0 ? " back" : " forward"));
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
        ? " The taper stays."
        : " Half way up, the trunk has "
            + Shown.fixed(after, 2)
            + " of the caliper of its base, before "
            + Shown.fixed(before, 2)
            + ".";
  }
}
