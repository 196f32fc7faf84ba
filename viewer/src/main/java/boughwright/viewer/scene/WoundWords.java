// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.review.AdvisedCut;
import boughwright.modeller.design.review.Limit;
import boughwright.modeller.design.review.ReviewRules;
import boughwright.modeller.design.review.WoodKind;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.problem.VisibleText;
import boughwright.physics.grow.CutTime;
import boughwright.physics.grow.WoundClosure;
import boughwright.physics.grow.YearlyRing;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The wound a cut leaves, in words.
 *
 * @param front how it stands before the viewer; without one sides are told from azimuth 0
 * @param rules by what it is judged
 * @param growth how wounds close
 */
public record WoundWords(Optional<FrontPose> front, ReviewRules rules, Growth growth) {
  /** A wound above this share of what it is on is never made at once (common practice) [1]. */
  private static final double WIDEST = 0.5;

  public WoundWords {
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
  public String wound(AdvisedCut cut) {
    WoundClosure closure = WoundClosure.of(cut.width(), growth.ring(), growth.time());
    return "Wound "
        + Wording.tenths(cut.width())
        + " wide "
        + (cut.face().across()
            ? "across " + VisibleText.of(cut.face().cut().segment())
            : beside(cut))
        + ": "
        + YearsWords.closes(closure)
        + "."
        + wide(cut);
  }

  private String beside(AdvisedCut cut) {
    return "on "
        + VisibleText.of(cut.face().on().segment())
        + ", "
        + side(cut)
        + ", "
        + Wording.tenths(cut.height())
        + " along the grain as cut (shaped "
        + Math.round(1000 * AdvisedCut.SHAPED_SHORTEST * cut.width())
        + " to "
        + Wording.millimetres(AdvisedCut.SHAPED_LONGEST * cut.width())
        + ")";
  }

  /** Which way the wound faces, seen from the front. */
  private String side(AdvisedCut cut) {
    Direction3 out = cut.face().normal();
    Direction3 seen = front.map(pose -> pose.toViewer().turn(out)).orElse(out);
    if (Math.abs(seen.z()) > Math.max(Math.abs(seen.x()), Math.abs(seen.y()))) {
      return seen.z() > 0 ? "on its upper side" : "on its underside";
    }
    if (Math.abs(seen.x()) > Math.abs(seen.y())) {
      return seen.x() > 0 ? "at the right" : "at the left";
    }
    return seen.y() > 0 ? "at the back" : "at the front";
  }

  private String wide(AdvisedCut cut) {
    if (cut.face().across() || cut.share() <= rules.value(Limit.WOUND_WIDTH)) {
      return "";
    }
    return String.format(Locale.ROOT, " It is %.2f of the caliper it is on: ", cut.share())
        + (cut.share() > WIDEST ? "too wide to cut at once." : "take it off in stages.");
  }

  /** How its cut is made. */
  public String how(AdvisedCut cut) {
    double angle = Math.toDegrees(cut.advice().angle());
    String hollow =
        cut.advice().depth() > 0
            ? ", then hollow the wound " + Wording.tenths(cut.advice().depth()) + " deep"
            : "";
    return (angle == 0
            ? "Cut along the wood it sits on, outside the collar"
            : String.format(Locale.ROOT, "Cut at %.0f° to its length", angle))
        + ", leave a stub of "
        + Wording.millimetres(cut.advice().stub())
        + " until it has dried"
        + hollow
        + (rules.wood() == WoodKind.CONIFER ? " (the stub may stay as deadwood)." : ".");
  }
}
