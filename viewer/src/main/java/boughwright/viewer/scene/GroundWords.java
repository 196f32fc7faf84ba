// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.Level;
import boughwright.modeller.design.ground.RootBase;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.ground.RootLevel;
import boughwright.modeller.design.ground.RootMass;
import boughwright.modeller.design.ground.Unsaid;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The root base at a front and planting angle, in words. */
public final class GroundWords {
  private GroundWords() {}

  /** The whole account in one line. */
  public static String brief(GroundAnswer answer) {
    if (answer.base().isEmpty()) {
      return answer.roots().isEmpty() ? "no roots in the file" : "only roots straight down";
    }
    RootBase base = answer.base().get();
    List<String> parts = new ArrayList<>();
    parts.add(level(base));
    parts.add(buried(base));
    answer.roots().ifPresent(roots -> parts.add(fits(answer, roots)));
    return parts.stream().filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
  }

  /** Whether the roots start level. */
  public static String level(RootBase base) {
    if (base.levels().size() == 1) {
      return "one root";
    }
    return (base.isLevel() ? "roots level" : "roots uneven")
        + " within "
        + Wording.millimetres(base.unevenness());
  }

  private static String buried(RootBase base) {
    long buried = count(base, Level.State.BURIED);
    long clear = count(base, Level.State.CLEAR);
    List<String> parts = new ArrayList<>();
    if (buried > 0) {
      parts.add(buried + " of " + base.levels().size() + " buried");
    }
    if (clear > 0) {
      parts.add(clear + " in the air");
    }
    return String.join(", ", parts);
  }

  private static long count(RootBase base, Level.State state) {
    return base.levels().stream().filter(level -> level.then().state() == state).count();
  }

  private static String fits(GroundAnswer answer, RootMass roots) {
    if (answer.unsaid().contains(Unsaid.CONTAINER_UNDER_TRUNK)) {
      return "the trunk stands beyond the container";
    }
    List<String> parts = new ArrayList<>();
    if (roots.loss().cutShare() > 0) {
      parts.add("cuts take " + share(roots.loss().cutShare()) + " of the root wood");
    } else if (answer.fit().isPresent()) {
      parts.add("fits the container");
    }
    int lifted = roots.loss().lifted().size();
    if (lifted > 0) {
      parts.add(lifted + (lifted == 1 ? " root lifted" : " roots lifted") + " out of the soil");
    }
    if (roots.steps().tilts().isEmpty()) {
      parts.add("no number of repottings does it");
    } else if (!roots.steps().atOnce()) {
      parts.add("in " + roots.steps().tilts().size() + " repottings");
    }
    return String.join(", ", parts);
  }

  /** A share in whole per cent, never told as nothing. */
  public static String share(double share) {
    long percent = Math.round(100 * share);
    return percent == 0 && share > 0 ? "less than 1 %" : percent + " %";
  }

  /** What is seen of the start of a root. */
  public static String state(Level level) {
    return switch (level.state()) {
      case BURIED -> by("buried", level.buriedBy());
      case SHOWING -> "at the soil line";
      case CLEAR -> by("in the air", level.clearBy());
    };
  }

  private static String by(String state, double length) {
    return Math.round(1000 * length) == 0
        ? "just " + state
        : state + " by " + Wording.millimetres(length);
  }

  /** A height [m] in whole millimetres with its sign. */
  public static String height(double height) {
    long mm = Math.round(1000 * height);
    return (mm > 0 ? "+" : "") + mm;
  }

  /** Years from one repotting to the next. */
  public static String interval(RootCare care) {
    return care.fewestYears() + " to " + care.mostYears() + " years";
  }

  /** Said where the roots do not allow a tilt in any number of steps. */
  public static String noSteps() {
    return "No number of repottings does it: too little of the roots would be left.";
  }

  /** Names of roots, as one list. */
  public static String names(List<RootLevel> levels) {
    return levels.stream().map(level -> level.root().id()).collect(Collectors.joining(", "));
  }

  /** What cannot be said, and why. */
  public static String unsaid(Unsaid what) {
    return switch (what) {
      case NO_ROOTS ->
          "No root leaves the trunk in this file: nothing can be said of the root base.";
      case ONLY_TAP_ROOTS ->
          "All roots go down under the trunk: there is no root base to level, only depth and fit"
              + " are told.";
      case TOO_FEW_ROOTS ->
          "Fewer than three roots: no plane goes through them, so which planting angle levels them"
              + " cannot be said.";
      case ROOTS_ON_A_LINE ->
          "All roots leave the trunk along one line: how the root base tilts across it cannot be"
              + " said.";
      case NO_CONTAINER ->
          "No container is given: what fits and where it would tip cannot be said.";
      case CONTAINER_UNDER_TRUNK ->
          "The trunk base does not stand inside this container: it is too small, or placed beside"
              + " it. Nothing is said of cuts.";
      case NO_MASS ->
          "The container is not weighed: where the centre of mass stands is told of the tree's wood"
              + " alone.";
      case MASS_TOO_SMALL ->
          "The mass given for tree, soil and container is less than the tree's own wood weighs."
              + " Weigh it again.";
      case NOTHING_BEARS ->
          "Fewer than three places of the roots bear the tree in the soil: what keeps it from"
              + " rocking cannot be said.";
    };
  }
}
