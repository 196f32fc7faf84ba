// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.CoilWork;
import boughwright.physics.trial.WireChoice;
import boughwright.viewer.scene.FailureWords;
import boughwright.viewer.scene.Wording;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Coils for the person who winds them. */
final class CoilText {
  /** Lengths to cut are told in steps of this, rounded up [m]. */
  private static final double CUT_STEP = 0.01;

  /** What springs back less than this needs no word [1]. */
  private static final double STAYS = 0.97;

  private CoilText() {}

  /** What coils hold, how far to bend beyond, and how to wind them. */
  static void write(TextPage page, List<CoilHold> holds) {
    for (CoilHold hold : holds) {
      page.heading("Coils of proposal " + hold.proposal());
      held(page, hold);
      overbend(page, hold);
      hold.coils().forEach(work -> work(page, work));
    }
    if (!holds.isEmpty()) {
      page.inner(
          "Wear eye protection: wire ends whip. Cut each end off flush or bend it in against the"
              + " bark, so that none stands out at the height of an eye. To take wire off, cut it"
              + " at every turn; never unwind it.");
    }
  }

  private static void held(TextPage page, CoilHold hold) {
    boolean byHand = !hold.hands().isEmpty();
    TextTable table =
        new TextTable(1).row("end of " + hold.segment() + " moves, bent", whole(hold.forced()));
    if (byHand) {
      table.row("let go, held by the coils", whole(hold.held()));
    }
    page.table(table.row("let go and unwired at once", whole(hold.unwired())));
    page.inner(
        (hold.holds() ? "Strong enough to hold it there: " : "Not strong enough by itself: ")
            + "at its weakest place the coil stands "
            + times(hold.strength())
            + " the pull of the bent wood; once is enough."
            + (byHand || hold.holds() ? "" : " The lines hold it; the coil shares their load."));
    if (byHand) {
      page.inner(
          "Let go, about "
              + part(hold.kept().middle())
              + " of the movement stays if the turns slip on the bark, up to "
              + part(hold.kept().high())
              + " if they grip it; nobody has measured how far yours grip.");
    }
  }

  private static String part(double part) {
    return Shown.fixed(100 * part, 0) + " %";
  }

  private static void overbend(TextPage page, CoilHold hold) {
    if (hold.kept().middle() >= STAYS || hold.hands().isEmpty()) {
      return;
    }
    Optional<CoilHold.Overbend> found = hold.overbend();
    if (found.isEmpty()) {
      page.inner(
          "Wood and wire spring back when you let go, and here no bend further than planned comes to"
              + " rest in its place: use a guy-line, or bend in stages.");
      return;
    }
    CoilHold.Overbend over = found.get();
    page.inner(
        "Wood and wire spring back when you let go, so bend further than you want it to stay. Let"
            + " go, look, and bend on until it rests there, with turns that slip at most:");
    for (CoilHold.HandPull hand : over.hands()) {
      page.point(
          "hand bend "
              + hand.id()
              + " to "
              + whole(hand.move())
              + " ("
              + newtons(hand.force())
              + "), then let go.");
    }
    page.inner(
        "That strains the wood "
            + times(over.strain())
            + " as hard as planned: put it in the plan and look at the risk before you do it.");
  }

  private static void work(TextPage page, CoilWork work) {
    Coil coil = work.coil();
    page.inner(
        "Wire "
            + Wording.gauge(coil.gauge())
            + ", "
            + Wording.material(coil.metal())
            + ", "
            + strands(coil.strands())
            + ", from "
            + coil.from().segment()
            + " to "
            + coil.to().segment()
            + ":");
    page.table(
        new TextTable(1)
            .row("  cut, each strand", whole(CUT_STEP * Math.ceil(work.cut() / CUT_STEP)))
            .row("  turns", Shown.fixed(work.turns(), 0))
            .row("  one turn every", pitch(work.pitch()))
            .row("  free bark between turns, least", whole(work.gap())));
    page.further("Start: " + work.anchorage() + ".");
    page.further(hand(work));
    work.outside()
        .ifPresent(
            place ->
                page.further(
                    "Let a turn cross the outside of the bend: "
                        + FailureWords.marked(place)
                        + "."));
  }

  private static String pitch(CoilWork.Pitch pitch) {
    String first = whole(pitch.atStart());
    String last = whole(pitch.atEnd());
    return first.equals(last) ? first : first + ", " + last + " at the end";
  }

  private static String hand(CoilWork work) {
    String planned = word(work.coil().hand());
    if (work.tightens().isEmpty()) {
      return "Hand: either; the bend hardly twists the branch. Planned: " + planned + "-handed.";
    }
    String right = word(work.tightens().get());
    return work.isWrongHand()
        ? "Hand: wind it "
            + right
            + "-handed; the twist of this bend opens a "
            + planned
            + "-handed coil."
        : "Hand: " + right + "-handed is right; the twist of this bend tightens it.";
  }

  private static String word(Hand hand) {
    return hand == Hand.RIGHT ? "right" : "left";
  }

  private static String strands(int count) {
    return count == 1 ? "one strand" : count + " strands side by side";
  }

  private static String times(double factor) {
    return Shown.fixed(factor, factor < 1.5 ? 2 : factor < 10 ? 1 : 0) + " times";
  }

  /** A length that is measured with a rule at the bench. */
  private static String whole(double length) {
    return Shown.fixed(1000 * length, 0) + " mm";
  }

  private static String newtons(double force) {
    return Shown.fixed(force, force < 9.95 ? 1 : 0) + " N";
  }

  /** Which wire is strong enough for a bend. */
  static void choices(TextPage page, List<WireChoice> choices) {
    choices.forEach(choice -> choice(page, choice));
  }

  private static void choice(TextPage page, WireChoice choice) {
    page.heading(
        "Wire that would hold it (" + choice.segment() + ", " + whole(choice.move()) + ")");
    TextTable table =
        new TextTable(1).row("metal", "1 strand", "2 strands", "3 strands", "bend by hand to");
    choice.rows().stream()
        .map(WireChoice.Row::metal)
        .distinct()
        .forEach(
            metal ->
                table.row(
                    Wording.material(metal),
                    gauge(choice.row(metal, 1)),
                    gauge(choice.row(metal, 2)),
                    gauge(choice.row(metal, 3)),
                    goes(choice.simplest(metal))));
    page.table(table);
    page.inner(
        "Gauges: the thinnest sold that stands the pull of the bent wood. Bend by hand to: so far"
            + " with the fewest strands, and it springs back to "
            + whole(choice.move())
            + ". With no wire "
            + part(choice.alone())
            + " of the bend stays at once.");
    page.inner(
        "One third of the branch would be "
            + Shown.millimetres(choice.byRule())
            + ". "
            + choice.why());
  }

  private static String gauge(Optional<WireChoice.Row> row) {
    OptionalDouble gauge = row.map(WireChoice.Row::gauge).orElse(OptionalDouble.empty());
    return gauge.isPresent() ? Wording.gauge(gauge.getAsDouble()) : "none";
  }

  private static String goes(Optional<WireChoice.Row> row) {
    OptionalDouble hand = row.map(WireChoice.Row::hand).orElse(OptionalDouble.empty());
    return hand.isPresent() ? whole(hand.getAsDouble()) : "-";
  }
}
