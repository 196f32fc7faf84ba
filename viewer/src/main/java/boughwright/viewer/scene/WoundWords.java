// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.ReviewRules;
import boughwright.modeller.design.review.WoodKind;
import boughwright.modeller.design.review.WoundLeft;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The wound a cut leaves, in words.
 *
 * @param skeleton the tree
 * @param front how it stands before the viewer; without one sides are told from azimuth 0
 * @param rules by what it is judged
 * @param growth how wounds close
 */
public record WoundWords(
    Skeleton skeleton, Optional<FrontPose> front, ReviewRules rules, Growth growth) {
  /** A wound above this share of what it is on is never made at once (common practice) [1]. */
  private static final double WIDEST = 0.5;

  public WoundWords {
    Objects.requireNonNull(skeleton, "skeleton");
    Objects.requireNonNull(front, "front");
    Objects.requireNonNull(rules, "rules");
    Objects.requireNonNull(growth, "growth");
  }

  /**
   * How wounds close.
   *
   * @param ring how fast the tree thickens
   * @param time when in the year the cut is made
   */
  public record Growth(YearlyRing ring, CutTime time) {}

  /** Its size, its place and when it closes. */
  public String wound(WoundLeft wound) {
    WoundClosure closure = WoundClosure.of(wound.width(), growth.ring(), growth.time());
    return "Wound "
        + Wording.tenths(wound.width())
        + " wide "
        + (wound.across() ? "across " + VisibleText.of(wound.cut().segment()) : beside(wound))
        + ": "
        + YearsWords.closes(closure)
        + "."
        + wide(wound);
  }

  private String beside(WoundLeft wound) {
    return "on "
        + VisibleText.of(wound.on().segment())
        + ", "
        + side(wound)
        + ", "
        + Wording.tenths(wound.height())
        + " along the grain as cut (shaped "
        + Math.round(1000 * WoundLeft.SHAPED_SHORTEST * wound.width())
        + " to "
        + Wording.millimetres(WoundLeft.SHAPED_LONGEST * wound.width())
        + ")";
  }

  /** Which way the wound faces, seen from the front. */
  private String side(WoundLeft wound) {
    int on = skeleton.indexOf(wound.on().segment());
    Direction3 out = skeleton.roundDirection(on, wound.round());
    Direction3 seen = front.map(pose -> pose.toViewer().turn(out)).orElse(out);
    if (Math.abs(seen.z()) > Math.max(Math.abs(seen.x()), Math.abs(seen.y()))) {
      return seen.z() > 0 ? "on its upper side" : "on its underside";
    }
    if (Math.abs(seen.x()) > Math.abs(seen.y())) {
      return seen.x() > 0 ? "at the right" : "at the left";
    }
    return seen.y() > 0 ? "at the back" : "at the front";
  }

  private String wide(WoundLeft wound) {
    if (wound.across() || wound.share() <= rules.value(Limit.WOUND_WIDTH)) {
      return "";
    }
    return String.format(Locale.ROOT, " It is %.2f of the caliper it is on: ", wound.share())
        + (wound.share() > WIDEST ? "too wide to cut at once." : "take it off in stages.");
  }

  /** How its cut is made. */
  public String how(WoundLeft wound) {
    double angle = Math.toDegrees(wound.advice().angle());
    String hollow =
        wound.advice().depth() > 0
            ? ", then hollow the wound " + Wording.tenths(wound.advice().depth()) + " deep"
            : "";
    return (angle == 0
            ? "Cut along the wood it sits on, outside the collar"
            : String.format(Locale.ROOT, "Cut at %.0f° to its length", angle))
        + ", leave a stub of "
        + Wording.millimetres(wound.advice().stub())
        + " until it has dried"
        + hollow
        + (rules.wood() == WoodKind.CONIFER ? " (the stub may stay as deadwood)." : ".");
  }
}
