// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Hand;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.CoilWork;
import boughwright.physics.trial.WireChoice;
import boughwright.viewer.scene.FailureWords;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Coils for the person who winds them. */
final class CoilText {
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
  }

  private static void held(TextPage page, CoilHold hold) {
    page.table(
        new TextTable(1)
            .row("end of " + hold.segment() + ", bent", Shown.millimetres(hold.forced()))
            .row("let go, held by the coils", Shown.millimetres(hold.held()))
            .row("let go and unwired at once", Shown.millimetres(hold.unwired())));
    page.inner(strong(hold));
    page.inner(
        "Let go, about "
            + percent(hold.kept().middle())
            + " of the movement stays if the turns slip on the bark as they like, and up to "
            + percent(hold.kept().high())
            + " if they grip it and cannot slip; how far yours grip nobody has measured. So bend"
            + " beyond, let go, look, and bend on until it rests where you want it.");
  }

  private static String strong(CoilHold hold) {
    return (hold.holds() ? "Strong enough to hold it there: " : "Not strong enough by itself: ")
        + "at its weakest place the coil stands "
        + times(hold.strength())
        + " the moment with which the bent wood pulls back; it needs 1.";
  }

  private static String percent(double part) {
    return Shown.fixed(100 * part, 0) + " %";
  }

  private static void overbend(TextPage page, CoilHold hold) {
    if (hold.kept().middle() >= STAYS || hold.hands().isEmpty()) {
      return;
    }
    Optional<CoilHold.Overbend> found = hold.overbend();
    if (found.isEmpty()) {
      page.inner(
          "No bend further than planned comes to rest there. Use a guy-line, or bend in stages.");
      return;
    }
    CoilHold.Overbend over = found.get();
    for (CoilHold.HandPull hand : over.hands()) {
      page.inner(
          "To rest where the plan wants it with turns that slip, take hand bend "
              + hand.id()
              + " to "
              + Shown.millimetres(hand.move())
              + " ("
              + Shown.newtons(hand.force())
              + "), then let go.");
    }
    page.inner(
        "That strains the wood "
            + times(over.strain())
            + " what the plan does: put it in the plan and look at its risk before you do it.");
  }

  private static void work(TextPage page, CoilWork work) {
    Coil coil = work.coil();
    page.inner(
        "Wire "
            + Shown.fixed(1000 * coil.gauge(), 2)
            + " mm, "
            + coil.metal().word()
            + ", "
            + strands(coil.strands())
            + ", from "
            + coil.from().segment()
            + " to "
            + coil.to().segment()
            + ":");
    page.table(
        new TextTable(1)
            .row("  cut, each strand", Shown.millimetres(work.cut()))
            .row("  turns", Shown.fixed(work.turns(), 1))
            .row("  one turn every, at the start", Shown.millimetres(work.pitch().atStart()))
            .row("  one turn every, at the end", Shown.millimetres(work.pitch().atEnd()))
            .row("  free bark between turns, least", Shown.millimetres(work.gap())));
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
    return Shown.fixed(factor, factor < 10 ? 2 : 0) + " times";
  }

  /** Which wire is strong enough for a bend. */
  static void choices(TextPage page, List<WireChoice> choices) {
    choices.forEach(choice -> choice(page, choice));
  }

  private static void choice(TextPage page, WireChoice choice) {
    page.heading(
        "Wire that would hold it ("
            + choice.segment()
            + ", "
            + Shown.millimetres(choice.move())
            + ")");
    TextTable table =
        new TextTable(1).row("metal", "1 strand", "2 strands", "3 strands", "bend by hand to");
    choice.rows().stream()
        .map(WireChoice.Row::metal)
        .distinct()
        .forEach(
            metal ->
                table.row(
                    metal.word(),
                    gauge(choice.row(metal, 1)),
                    gauge(choice.row(metal, 2)),
                    gauge(choice.row(metal, 3)),
                    goes(choice.simplest(metal))));
    page.table(table);
    page.inner(
        "Gauges are the thinnest sold that stand the moment of the bent wood; the last column is"
            + " how far to bend with the fewest strands so that it rests at "
            + Shown.millimetres(choice.move())
            + ". With no wire "
            + Shown.fixed(100 * choice.alone(), 0)
            + " % of the bend stays at once.");
    page.inner(
        "One third of the branch would be "
            + Shown.millimetres(choice.byRule())
            + ". "
            + choice.why());
  }

  private static String gauge(Optional<WireChoice.Row> row) {
    OptionalDouble gauge = row.map(WireChoice.Row::gauge).orElse(OptionalDouble.empty());
    return gauge.isPresent() ? Shown.millimetres(gauge.getAsDouble()) : "none";
  }

  private static String goes(Optional<WireChoice.Row> row) {
    OptionalDouble hand = row.map(WireChoice.Row::hand).orElse(OptionalDouble.empty());
    return hand.isPresent() ? Shown.millimetres(hand.getAsDouble()) : "-";
  }
}
