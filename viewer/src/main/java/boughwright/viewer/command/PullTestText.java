// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.tree.PullTest;
import boughwright.modeller.units.ForceUnit;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.MoeBelief;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.PullAnswer;
import boughwright.physics.trial.PullCreep;
import boughwright.physics.trial.PullStrain;
import boughwright.physics.trial.Range;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.RangeWords;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What a pull test told, for the person at the bench. */
final class PullTestText {
  /** Half the width of the middle nine tenths of a standard normal [1]. */
  private static final double NINE_IN_TEN = 1.645;

  /** Up to this spread a range is said as plus or minus so many per cent [1]. */
  private static final double PER_CENT = 0.25;

  private final PullTestAnswer answer;
  private final PullAnswer pull;
  private final TextPage page = new TextPage();

  private PullTestText(PullTestAnswer answer) {
    this.answer = answer;
    pull = answer.pull();
  }

  static String of(PullTestAnswer answer, Optional<Path> written) {
    return new PullTestText(answer).write(written);
  }

  private String write(Optional<Path> written) {
    PullTest test = pull.test();
    page.title(
        "Pull test "
            + test.id()
            + " on "
            + test.segment()
            + test.doneOn().map(day -> ", " + day).orElse("")
            + ": "
            + answer.after().tree().name());
    readings();
    stiffness();
    fit();
    plans();
    notes();
    advice();
    page.heading(
        written
            .map(
                path ->
                    path
                        + ": written, with the test under pull_tests and the modulus under wood for "
                        + String.join(", ", pull.limb())
                        + "; the file as it was is "
                        + path.getFileName()
                        + "~")
            .orElse("Nothing is written (--dry-run)."));
    return page.toString();
  }

  private void readings() {
    TextTable table = new TextTable(1).row("pull", "", "moved", "base", "branch alone");
    for (PullTest.Reading read : pull.test().readings()) {
      table.row(
          Shown.newtons(read.force()),
          Shown.kilograms(ForceUnit.KILOGRAM_FORCE.fromNewtons(read.force())),
          Shown.millimetres(read.moved()),
          Shown.millimetres(read.baseMoved()),
          Shown.millimetres(read.moved() - read.baseMoved()));
    }
    page.blank().table(table);
  }

  private void stiffness() {
    page.heading("How stiff the branch is (modulus of elasticity, nine in ten)");
    page.table(
        new TextTable(1)
            .row("before any test", moe(pull.before()))
            .row(after(), moe(pull.after())));
    page.inner(
        "The force for a given bend there was known "
            + within(pull.force().before())
            + ", and is now known "
            + within(pull.force().after())
            + ".");
  }

  private String after() {
    List<String> ids = pull.tests().stream().map(PullTest::id).toList();
    return ids.size() == 1 ? "with this test" : "with tests " + String.join(", ", ids);
  }

  private static String moe(MoeBelief belief) {
    Range range = belief.range();
    return Shown.fixed(range.low() / 1e9, 1)
        + " to "
        + Shown.fixed(range.high() / 1e9, 1)
        + " GPa, most likely "
        + Shown.gigapascals(range.middle());
  }

  private static String within(double spread) {
    double wide = NINE_IN_TEN * spread;
    return spread > PER_CENT
        ? "within a factor of " + Shown.fixed(Math.exp(wide), 1)
        : "to about " + Shown.fixed(100 * wide, 0) + " % either way";
  }

  private void fit() {
    page.heading("Does it fit?");
    PullAnswer.Fit fit = pull.fit();
    page.point(
        "The point moved "
            + Shown.fixed(Math.exp(fit.lnOverExpected()), 2)
            + " times as far as expected of such wood; nine in ten lie within a factor of "
            + Shown.fixed(Math.exp(NINE_IN_TEN * fit.expected().spread()), 1)
            + ".");
    fit.others()
        .ifPresent(
            others ->
                page.point(
                    "Alone it would make the wood "
                        + Shown.fixed(Math.exp(Math.abs(others.lnSofter())), 2)
                        + (others.lnSofter() > 0 ? " times as soft" : " times as stiff")
                        + " as the other tests of this tree do: "
                        + apart(others.deviations())));
    page.point(
        pull.test().readings().size() > 1
            ? "The second load against the first: " + apart(fit.loadsApart())
            : "One load only: a second one, twice as heavy, would check it.");
    PullStrain strain = pull.strain();
    strain
        .gentle()
        .ifPresent(
            most ->
                page.point(
                    "The hardest bent fibre was squeezed by "
                        + Shown.percent(strain.peak().compressionStrain())
                        + "; wood begins to flow at about "
                        + Shown.percent(strain.yieldStrain())
                        + ", so up to about "
                        + Shown.newtons(most)
                        + " ("
                        + Shown.kilograms(ForceUnit.KILOGRAM_FORCE.fromNewtons(most))
                        + ") there the branch stays springy."));
  }

  private static String apart(double deviations) {
    double far = Math.abs(deviations);
    return far > 2.6
        ? "they do not agree."
        : far > NINE_IN_TEN ? "they agree only roughly." : "they agree.";
  }

  private void plans() {
    for (PullTestAnswer.Change change : answer.plans()) {
      if (change.after().risk().isEmpty() || change.before().risk().isEmpty()) {
        continue;
      }
      page.heading("Plan " + change.after().plan() + ", before and after the test");
      TextTable table = new TextTable(3);
      change.after().lines().forEach(line -> tension(table, line.id(), change));
      row(table, "crack", change, FailureMode.CRACK);
      row(table, "wrinkles inside", change, FailureMode.KINK);
      page.table(table);
      if (change.after().held().equals("length")) {
        page.inner(
            "Held by length, the bend is the same however stiff the wood is: the test narrows the"
                + " pull, and hardly the chance of cracking.");
      }
    }
  }

  private static void tension(TextTable table, String line, PullTestAnswer.Change change) {
    table.row("pull of " + line, "before", pull(change.before(), line));
    table.row("", "after", pull(change.after(), line));
  }

  private static String pull(TrialResult trial, String line) {
    return Optional.ofNullable(trial.risk().orElseThrow().tensions().get(line))
        .map(RangeWords::newtons)
        .orElse("no pose");
  }

  private static void row(
      TextTable table, String what, PullTestAnswer.Change change, FailureMode mode) {
    table.row(what, "before", chance(change.before(), mode));
    table.row("", "after", chance(change.after(), mode));
  }

  private static String chance(TrialResult trial, FailureMode mode) {
    return trial
        .risk()
        .orElseThrow()
        .of(mode)
        .map(failure -> Odds.words(failure.probability()))
        .orElse("nothing bent");
  }

  private void notes() {
    if (!pull.notes().isEmpty()) {
      page.heading("Mind");
      pull.notes()
          .forEach(
              note ->
                  page.point(
                      Character.toUpperCase(note.words().charAt(0))
                          + note.words().substring(1)
                          + ". "
                          + note.remedy()
                          + "."));
    }
  }

  private void advice() {
    page.heading("How to read one");
    page.point(
        "Load the branch once lightly and let go, set your mark, load, and read half a minute"
            + " later. A branch goes on moving: about "
            + late(300)
            + " further after 5 minutes, "
            + late(3600)
            + " after an hour, "
            + late(86_400)
            + " after a day, and a late reading takes the wood for softer than it is.");
    page.point(
        "Hold the trunk at the branch and wedge the pot, or read how far the start of the branch"
            + " moves and give it with --base-moved-mm.");
    page.point("A weight that drops or a line that slips flies: wear eye protection.");
    page.point(
        "Stand clear of the line of pull, load slowly, stop at the first sound. This is for trees"
            + " in containers. The numbers are estimates.");
  }

  private static String late(double seconds) {
    Range further = PullCreep.further(seconds);
    return Shown.fixed(100 * further.middle(), 0)
        + " % ("
        + Shown.fixed(100 * further.low(), 0)
        + " to "
        + Shown.fixed(100 * further.high(), 0)
        + ")";
  }
}
