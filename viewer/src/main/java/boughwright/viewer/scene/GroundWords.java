// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.design.ground.Balance;
import boughwright.modeller.design.ground.ContainerFit;
import boughwright.modeller.design.ground.GroundAnswer;
import boughwright.modeller.design.ground.Level;
import boughwright.modeller.design.ground.RootBase;
import boughwright.modeller.design.ground.RootCare;
import boughwright.modeller.design.ground.RootLevel;
import boughwright.modeller.design.ground.RootLoss;
import boughwright.modeller.design.ground.RootMass;
import boughwright.modeller.design.ground.TieDown;
import boughwright.modeller.design.ground.TiltSteps;
import boughwright.modeller.design.ground.Unsaid;
import boughwright.modeller.problem.VisibleText;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The root base at a front and planting angle, in words. */
public final class GroundWords {
  /** Behind a rule of the trade that nobody published. */
  public static final String PRACTICE = " (common practice, no source)";

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
    return isSeen(length) ? state + " by " + Wording.millimetres(length) : "just " + state;
  }

  /** A height [m] in whole millimetres with its sign. */
  public static String height(double height) {
    long mm = Math.round(1000 * height);
    return (mm > 0 ? "+" : "") + mm;
  }

  /** How far off level the starts of roots may be. */
  public static String allowed(RootBase base) {
    return "the trade allows " + Wording.tenths(base.tolerance()) + ", a tenth of the trunk";
  }

  /** The root whose start is farthest off level. */
  public static String farthest(RootBase base) {
    return "farthest off is " + VisibleText.of(base.farthest().root().id());
  }

  /** What soil lower and higher at the trunk would do, each where it does something. */
  public static List<String> soil(RootBase base) {
    List<String> words = new ArrayList<>();
    if (isSeen(base.lowerToShow())) {
      words.add(
          "Soil "
              + Wording.millimetres(base.lowerToShow())
              + " lower would show the start of every root.");
    }
    if (isSeen(base.raiseToCover())) {
      words.add(
          "Soil "
              + Wording.millimetres(base.raiseToCover())
              + " higher would leave no start with air beneath.");
    }
    return words;
  }

  /** Whether a length is worth a word: half a millimetre. */
  private static boolean isSeen(double length) {
    return Math.round(1000 * length) > 0;
  }

  /** How far the start of a root went up or down as the tree was tilted. */
  public static String rise(RootLevel level) {
    long mm = Math.round(1000 * Math.abs(level.rise()));
    return mm == 0
        ? "its start as high as measured"
        : "its start " + mm + " mm " + (level.rise() > 0 ? "higher" : "lower") + " than as measured";
  }

  /** How deep the container is below the soil line. */
  public static String room(ContainerFit fit) {
    return "from the soil line to the floor there are " + Wording.millimetres(fit.soilDepth());
  }

  /** Roots that dry, as no end of theirs is in the soil any more; blank for none. */
  public static String lifted(RootLoss loss) {
    return loss.lifted().isEmpty()
        ? ""
        : "Every end comes out of the soil and would dry: "
            + loss.lifted().stream()
                .map(root -> VisibleText.of(root.id()))
                .collect(Collectors.joining(", "))
            + ".";
  }

  /** In how many repottings the roots allow a tilt. */
  public static String steps(TiltSteps steps, RootCare care) {
    if (steps.tilts().isEmpty()) {
      return "No number of repottings does it: too little of the roots would be left.";
    }
    if (steps.atOnce()) {
      return "The roots allow this tilt in one repotting.";
    }
    String tilts =
        steps.tilts().stream()
            .map(tilt -> String.valueOf(Math.round(Math.toDegrees(tilt))))
            .collect(Collectors.joining(", then "));
    return "The roots allow it in steps only: "
        + steps.tilts().size()
        + " repottings, "
        + care.fewestYears()
        + " to "
        + care.mostYears()
        + " years apart"
        + PRACTICE
        + ". Tilt from as measured, in degrees: "
        + tilts
        + ".";
  }

  /** Where a mass stands, seen from the front. */
  public static String place(Balance.Body body) {
    return Wording.beside(body.centre().x(), body.centre().y());
  }

  /** Whether the mass stands over the floor of the container; blank where nobody can say. */
  public static String margin(Balance balance) {
    if (balance.margin().isEmpty()) {
      return "";
    }
    double margin = balance.margin().get();
    String what =
        balance.whole().isPresent()
            ? "The centre of mass stands "
            : "The centre of mass of the tree alone stands ";
    return margin < 0
        ? what
            + Wording.millimetres(-margin)
            + " beyond the edge of the container: it falls over unless it is held."
        : what
            + Wording.millimetres(margin)
            + " inside the nearest edge of the floor; it tips over at a slope of "
            + Math.round(Math.toDegrees(balance.tips().orElseThrow()))
            + " degrees.";
  }

  /** What rocks the tree untied. */
  public static String untied(TieDown down) {
    return down.rocksAt() <= 0
        ? "Untied it falls over by itself."
        : "Untied it rocks at " + push(down.rocksAt()) + ".";
  }

  private static String push(double force) {
    return force < 0.1 ? "less than " + Wording.newtons(0.1) : Wording.newtons(force);
  }

  /** What so many ties evenly round have to hold. */
  public static String tied(TieDown down, int count, double distance) {
    OptionalDouble tension = down.tension(TieDown.round(count, distance));
    String push = "a push of " + Wording.newtons(down.push().force());
    return tension.isEmpty()
        ? count + " ties beside the trunk cannot hold it against " + push
        : tension.getAsDouble() == 0
            ? "it needs no ties against " + push
            : count
                + " ties, each of "
                + Wording.newtons(tension.getAsDouble())
                + ", hold it against "
                + push;
  }

  /** Names of roots, as one list. */
  public static String names(List<RootLevel> levels) {
    return levels.stream()
        .map(level -> VisibleText.of(level.root().id()))
        .collect(Collectors.joining(", "));
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
