// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.Target;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.TrialResult;
import java.util.Locale;

/** Words for targets, anchors and what is missing. */
final class ReachWords {
  private ReachWords() {}

  /** The place that is brought somewhere. */
  static String place(Target target) {
    double along = target.spot().along();
    String segment = target.spot().segment();
    return along == 1
        ? "the end of " + segment
        : segment + " at " + Shown.plain(Math.rint(1000 * along) / 1000) + " of its length";
  }

  /** What is wanted, after the place. */
  static String wanted(Target target) {
    if (target instanceof Target.Point point) {
      return "to " + point(point.point());
    }
    if (target instanceof Target.Heading heading) {
      return "to run along " + direction(heading.direction());
    }
    return "upright over the root base";
  }

  /** What a choice leaves missing, in the unit a person measures it in. */
  static String missing(Target target, Choice choice) {
    return missing(target, choice.comesTo(), choice.heads(), choice.miss());
  }

  /** The same of a distance of which no pose is at hand. */
  static String missing(Target target, double miss) {
    return target instanceof Target.Heading heading
        ? degrees(miss / heading.arm())
        : Shown.millimetres(miss);
  }

  private static String missing(Target target, Point3 at, Direction3 way, double miss) {
    if (target instanceof Target.Upright upright) {
      return Shown.millimetres(upright.beside(at).norm())
          + " and "
          + degrees(upright.up().angleTo(way));
    }
    return missing(target, miss);
  }

  private static String degrees(double angle) {
    return Shown.fixed(Math.toDegrees(angle), 1) + " degrees";
  }

  /** What a line is tied to. */
  static String anchor(AnchorPlace anchor) {
    return switch (anchor.sort()) {
      case ROOT, TRUNK, BRANCH -> onTree(anchor);
      case POINT -> kind(anchor) + " " + anchor.name() + " (" + point(anchor.at()) + ")";
      case RIM -> "the rim of the container at " + point(anchor.at());
    };
  }

  private static String onTree(AnchorPlace anchor) {
    double along = ((Anchor.OnTree) anchor.anchor()).spot().along();
    return anchor.sort().word()
        + " "
        + anchor.name()
        + ", "
        + Shown.fixed(100 * along, 0)
        + " % along it";
  }

  private static String kind(AnchorPlace anchor) {
    return anchor.kind().map(kind -> kind.name().toLowerCase(Locale.ROOT)).orElse("point");
  }

  /** The odds of breaking: drawn where they were, else guessed; a dash for wood without limits. */
  static String breaking(ReachAnswer.Drawn drawn) {
    TrialResult trial = drawn.trial();
    if (trial.risk().isPresent()) {
      return Odds.words(trial.risk().get().breaking().p());
    }
    double guess = drawn.choice().risk().breaking();
    return guess > 0 ? Odds.words(guess) : "-";
  }

  /** What brings it there, with its verb. */
  static String means(Choice choice) {
    if (choice.bend().isPresent()) {
      return choice.lines().isEmpty() ? "A coil brings " : "A coil and a line bring ";
    }
    return choice.lines().size() == 1 ? "One line brings " : "Two lines bring ";
  }

  /** How many lines, and the coil. */
  static String count(Choice choice) {
    int lines = choice.lines().size();
    if (choice.bend().isEmpty()) {
      return String.valueOf(lines);
    }
    return lines == 0 ? "coil" : "coil + " + lines;
  }

  static String why(Choice.Why why) {
    return switch (why) {
      case NEAREST -> "comes nearest";
      case LEAST_RISK -> "risks least";
      case LEAST_PULL -> "pulls least";
      case ONE_LINE -> "takes one line only";
      case COIL -> "is held by wire";
      case COIL_AND_LINE -> "by wire and a line";
      case ANOTHER_WAY -> "is another way";
    };
  }

  static String point(Point3 point) {
    return Shown.fixed(1000 * point.x(), 0)
        + ","
        + Shown.fixed(1000 * point.y(), 0)
        + ","
        + Shown.fixed(1000 * point.z(), 0)
        + " mm";
  }

  private static String direction(Direction3 way) {
    return Shown.fixed(way.x(), 2) + "," + Shown.fixed(way.y(), 2) + "," + Shown.fixed(way.z(), 2);
  }
}
