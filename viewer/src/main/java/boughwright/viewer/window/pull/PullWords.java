// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.ForceUnit;
import boughwright.modeller.units.LengthUnit;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.AnchorSort;
import boughwright.physics.reach.Choice;
import boughwright.physics.reach.HoldingCoils;
import boughwright.physics.reach.Pulled;
import boughwright.physics.trial.Peak;
import boughwright.physics.trial.Range;
import boughwright.viewer.scene.Wording;
import java.util.Locale;
import java.util.Optional;

/** Lines, anchors and places in a grower's words. */
final class PullWords {
  private static final String NO_WIRE =
      "No wire brings it nearer at a risk of breaking of 1 in 20: all of it springs back.";

  private PullWords() {}

  /** An anchor, such as {@code screw s1} or {@code root r2, 40 % along}. */
  static String anchor(AnchorPlace anchor) {
    String name = VisibleText.of(anchor.name());
    if (anchor.anchor() instanceof Anchor.OnTree tree) {
      String sort =
          anchor.sort() == AnchorSort.ROOT
              ? "root"
              : anchor.sort() == AnchorSort.TRUNK ? "trunk" : "branch";
      return sort
          + " "
          + name
          + String.format(Locale.ROOT, ", %.0f %% along", 100 * tree.spot().along());
    }
    if (anchor.sort() == AnchorSort.RIM) {
      return "rim, " + bearing(anchor.at());
    }
    return kind(anchor.kind()) + " " + name;
  }

  private static String bearing(Point3 at) {
    return String.format(
        Locale.ROOT,
        "%.0f mm %s, %.0f mm %s",
        1000 * Math.abs(at.x()),
        at.x() < 0 ? "left" : "right",
        1000 * Math.abs(at.y()),
        at.y() < 0 ? "front" : "back");
  }

  private static String kind(Optional<AnchorKind> kind) {
    return kind.map(
            one ->
                switch (one) {
                  case SCREW -> "screw";
                  case RIM -> "rim";
                  case PEG -> "peg";
                  case FRAME -> "frame";
                })
        .orElse("point");
  }

  /** A line of a plan: from where to what. */
  static String line(GuyLine line) {
    String to =
        line.anchor() instanceof Anchor.OnTree tree
            ? VisibleText.of(tree.spot().segment())
            : kind(line.tackle().anchorKind());
    return VisibleText.of(line.id()) + ": " + VisibleText.of(line.at().segment()) + " to " + to;
  }

  /** Where wood is bent hardest. */
  static String place(Peak peak, DisplayUnits units) {
    String from =
        peak.fromUnion().isPresent()
            ? length(peak.fromUnion().getAsDouble(), units) + " from the union"
            : String.format(Locale.ROOT, "%.0f %% along", 100 * peak.along());
    return VisibleText.of(peak.segment()) + ", " + side(peak.side()) + ", " + from;
  }

  private static String side(String side) {
    return side.equals("left") || side.equals("right") ? side + " side" : side;
  }

  /** A force with as many decimals always, so that it stands still while it changes. */
  static String force(double newtons, DisplayUnits units) {
    return force(newtons, units, true);
  }

  private static String force(double newtons, DisplayUnits units, boolean named) {
    String pattern = units.force() == ForceUnit.NEWTON ? "%.1f" : "%.2f";
    String number = String.format(Locale.ROOT, pattern, units.force().fromNewtons(newtons));
    return named ? number + " " + units.force().symbol() : number;
  }

  /** A range of forces. */
  static String forces(Range range, DisplayUnits units) {
    return force(range.low(), units, false) + " to " + force(range.high(), units, true);
  }

  /** A length with as many decimals always. */
  static String length(double metres, DisplayUnits units) {
    String pattern = units.length() == LengthUnit.INCH ? "%.3f" : "%.1f";
    return String.format(Locale.ROOT, pattern, units.length().fromMetres(metres))
        + " "
        + units.length().symbol();
  }

  /** A strain, as everywhere. */
  static String strain(double strain) {
    return Wording.percent(strain);
  }

  /** Turns, to a tenth. */
  static String turns(double turns) {
    return String.format(Locale.ROOT, "%.1f", turns);
  }

  /** What is wrong with a line that was pulled, in sentences; empty for nothing. */
  static String trouble(Pulled pulled) {
    StringBuilder said = new StringBuilder();
    pulled
        .why()
        .ifPresent(
            why ->
                said.append(sentence(why.found()))
                    .append(
                        pulled.line().isPresent() ? " The last pose that holds is shown. " : " ")
                    .append(sentence(why.remedy())));
    pulled
        .line()
        .filter(line -> !pulled.stays())
        .ifPresent(
            line -> {
              if (line.blocked()) {
                said.append(" Wood stands in the way of this line.");
              }
              if (line.mustStopPad()) {
                said.append(
                    String.format(
                        Locale.ROOT,
                        " Stop its pad from sliding: the line meets the branch at %.0f degrees.",
                        Math.toDegrees(line.angle())));
              }
            });
    pulled
        .missing()
        .ifPresent(
            missing ->
                said.append(
                    String.format(
                        Locale.ROOT,
                        " No anchor there is does it. One %s, %.0f mm %s would leave %.0f mm.",
                        bearing(missing.at()),
                        1000 * Math.abs(missing.at().z()),
                        missing.at().z() < 0 ? "down" : "up",
                        1000 * missing.miss())));
    return said.toString().strip();
  }

  /** The wire that holds a bend, where it comes to rest, and how it is put on. */
  static String wire(Choice choice, DisplayUnits units) {
    return choice
        .bend()
        .map(
            bend ->
                String.format(
                    Locale.ROOT,
                    "%s%s, %s turns. Wind it on, bend the branch by hand %s, let go: it comes to rest"
                        + " %s from the place.",
                    Wording.wire(bend.coil()),
                    bend.coil().strands() == 1
                        ? ""
                        : ", " + bend.coil().strands() + " side by side",
                    turns(bend.work().turns()),
                    length(bend.hand().move(), units),
                    length(choice.miss(), units)))
        .orElse("");
  }

  /** Why no wire is offered for a bend by hand, what the best would bring, and what to do. */
  static String noWire(HoldingCoils found) {
    String best = found.best().map(one -> best(found, one)).orElse(NO_WIRE);
    String weak =
        found.strongest() > 0 && found.strongest() < 1
            ? String.format(
                Locale.ROOT,
                " The stoutest that can be wound stands %.0f %% of what the bent wood pushes back"
                    + " with.",
                100 * found.strongest())
            : "";
    return best + weak + " Bend it less, or hold it with a line.";
  }

  private static String best(HoldingCoils found, HoldingCoils.Best best) {
    String brings =
        String.format(
            Locale.ROOT,
            "The best wire brings it %.1f mm of %.1f mm at a risk of breaking of 1 in 20.",
            1000 * Math.max(0, best.brings()),
            1000 * found.way());
    return found.adds(best)
        ? brings
        : brings + " Hardly more than the wood keeps by itself once it is bent so far.";
  }

  static String sentence(String words) {
    String full = words.endsWith(".") ? words : words + ".";
    return full.substring(0, 1).toUpperCase(Locale.ROOT) + full.substring(1);
  }
}
