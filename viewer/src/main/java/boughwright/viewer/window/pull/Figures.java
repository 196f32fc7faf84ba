// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.plan.Plan;
import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.reach.Pulled;
import boughwright.physics.stage.Course;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.LineHardware;
import boughwright.physics.trial.LineTrial;
import boughwright.physics.trial.Odds;
import boughwright.physics.trial.Risk;
import boughwright.physics.trial.TrialResult;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Fold;
import boughwright.viewer.window.look.Reading;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.StringJoiner;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The big numbers of a bend. */
final class Figures {
  private static final double ROUNDING = 1e-9;

  private final Reading pull = new Reading("pull.tension", "Pull in one go");
  private final Reading drawn = new Reading("pull.shortening", "Drawn in");
  private final Reading turns = new Reading("pull.turns", "Turns");
  private final Reading miss = new Reading("pull.miss", "Stays off");
  private final Reading strain = new Reading("pull.strain", "Bent hardest");
  private final Reading breaking = new Reading("pull.breaking", "Breaking");
  private final Reading kink = new Reading("pull.kink", "Kink on the inside");
  private final JPanel panel;

  /**
   * What is shown.
   *
   * @param tree the tree
   * @param units units of display
   * @param plan the plan that is shown, with what is pulled
   * @param trial what the wood does
   * @param draft what is pulled, where that is shown
   * @param full everything that is told of it, once that is known
   */
  record Subject(
      Tree tree,
      DisplayUnits units,
      Plan plan,
      TrialResult trial,
      Optional<Draft> draft,
      Optional<Trying.Tried> full) {
    /** The trial with its risk, once that is known. */
    TrialResult best() {
      return full.map(Trying.Tried::trial).orElse(trial);
    }

    Explanations explain() {
      return Explanations.of(tree, trial);
    }
  }

  Figures() {
    panel = Controls.stack(new Fold(2, pull, drawn, turns, miss), strain, breaking, kink);
  }

  JComponent component() {
    return panel;
  }

  /** Nothing is known, and why. */
  void clear(String why) {
    for (Reading reading : new Reading[] {pull, drawn, turns, miss, strain, breaking, kink}) {
      reading.clear("");
    }
    pull.clear(why);
  }

  void show(Subject of) {
    Optional<LineTrial> line = line(of);
    if (line.isPresent()) {
      line(of, line.get());
    } else {
      hand(of);
    }
    of.draft()
        .ifPresentOrElse(
            draft ->
                miss.show(
                    PullWords.length(draft.miss(), of.units()),
                    draft.coil().isPresent() ? "once you let go" : "from your hand",
                    of.explain().miss()),
            () -> miss.clear("nothing is pulled now"));
    of.trial()
        .peak()
        .ifPresentOrElse(
            peak ->
                strain.show(
                    Wording.strain(peak), PullWords.place(peak, of.units()), of.explain().strain()),
            () -> strain.clear("nothing is bent"));
    odds(of);
  }

  /** The line that is pulled, or the one of the plan that pulls hardest. */
  private static Optional<LineTrial> line(Subject of) {
    if (of.draft().isPresent()) {
      return of.draft().get().drawn().map(Pulled.Line::at);
    }
    return of.trial().lines().stream().max(Comparator.comparingDouble(LineTrial::tension));
  }

  private void line(Subject of, LineTrial line) {
    pull.show(
        line.slack() ? "loose" : PullWords.force(line.tension(), of.units()),
        about(of, line),
        of.explain().pull());
    drawn.show(
        PullWords.length(line.shortening(), of.units()),
        "to " + PullWords.length(line.length(), of.units()),
        of.explain().drawnIn());
    turns(of, line);
  }

  /** Which line it is, how sure its pull is, and what it comes to by the stages. */
  private static String about(Subject of, LineTrial line) {
    StringJoiner about = new StringJoiner("; ");
    String range = range(of, line.id()).orElse("");
    if (of.draft().isEmpty()) {
      about.add("line " + line.id() + (range.isEmpty() ? "" : ": " + range));
    } else {
      about.add(range.isEmpty() ? "range to come" : range);
    }
    byStages(of, line.id())
        .ifPresent(tension -> about.add("by stages " + PullWords.force(tension, of.units())));
    return about.toString();
  }

  /**
   * The pull of a line right after the last of several stages that do the whole bend: the wood has
   * given by then.
   */
  private static OptionalDouble byStages(Subject of, String id) {
    List<Course.Step> stages =
        of.full().flatMap(Trying.Tried::course).stream()
            .filter(course -> course.reached() > 1 - ROUNDING)
            .flatMap(course -> course.steps().stream())
            .filter(step -> step.act() == Course.Act.BEND || step.act() == Course.Act.TIGHTEN)
            .toList();
    return stages.size() < 2
        ? OptionalDouble.empty()
        : stages.get(stages.size() - 1).pose().lines().stream()
            .filter(line -> line.id().equals(planned(of, id)))
            .mapToDouble(LineTrial::tension)
            .findFirst();
  }

  private static Optional<String> range(Subject of, String id) {
    return of.best()
        .risk()
        .map(Risk::tensions)
        .map(all -> all.get(planned(of, id)))
        .map(range -> PullWords.forces(range, of.units()));
  }

  /** What a line is called in what was tried. */
  private static String planned(Subject of, String id) {
    return of.draft().isEmpty()
        ? id
        : of.full()
            .map(full -> full.trial().lines())
            .filter(lines -> !lines.isEmpty())
            .map(lines -> lines.get(lines.size() - 1).id())
            .orElse(id);
  }

  private void turns(Subject of, LineTrial line) {
    Optional<LineHardware.Turns> said =
        of.full()
            .flatMap(full -> full.heldBy().hardware())
            .flatMap(
                all -> all.lines().stream().filter(one -> one.line().equals(line.id())).findFirst())
            .flatMap(LineHardware::turns);
    if (said.isPresent()) {
      turns.show(
          PullWords.turns(said.get().in() + said.get().toAdd()),
          "to add: " + PullWords.turns(said.get().toAdd()),
          of.explain().turns("as the plan says"));
      return;
    }
    Pulled.Turns usual = Pulled.turns(line);
    turns.show(
        PullWords.turns(usual.turns()),
        usual.turns() > usual.most()
            ? "too many for cord: its strands jam at " + PullWords.turns(usual.most())
            : "if double cord",
        of.explain().turns(Pulled.ASSUMED_TACKLE));
  }

  private void hand(Subject of) {
    drawn.clear("no line");
    turns.clear("no line");
    Optional<Draft> hand = of.draft().filter(draft -> draft.force().isPresent());
    Optional<BentByHand> bent = BentByHand.of(of);
    if (bent.isPresent()) {
      wire(of, bent.get());
    } else if (hand.isPresent()) {
      pull.show(
          PullWords.force(hand.get().force().get().norm(), of.units()),
          "by hand",
          of.explain().force());
    } else if (BentByHand.isToCome(of)) {
      for (Reading reading : new Reading[] {pull, drawn, turns}) {
        reading.clear("is being worked out");
      }
    } else {
      pull.clear(of.draft().isPresent() ? "no line does it" : "the plan has no line");
    }
  }

  private void wire(Subject of, BentByHand bent) {
    String by = of.draft().isEmpty() ? "bend " + VisibleText.of(bent.proposal()) + ": " : "";
    pull.show(PullWords.force(bent.force(), of.units()), by + "by hand", of.explain().force());
    drawn.show(
        PullWords.length(bent.move(), of.units()),
        "by hand, then let go",
        of.explain().bentByHand());
    turns.show(
        PullWords.turns(bent.work().turns()),
        Wording.wire(bent.work().coil()),
        of.explain().wound());
  }

  private static String drawn(Risk risk) {
    return "from " + risk.samples() + " tries";
  }

  private void odds(Subject of) {
    Optional<Risk> risk = of.best().risk();
    if (risk.isPresent()) {
      int samples = risk.get().samples();
      breaking.show(
          Odds.words(risk.get().breaking()), drawn(risk.get()), of.explain().drawn(samples));
      risk.get()
          .of(FailureMode.KINK)
          .ifPresentOrElse(
              one ->
                  kink.show(
                      Odds.words(one.probability()), drawn(risk.get()), of.explain().kink(samples)),
              () -> kink.clear("nothing is squeezed"));
      return;
    }
    Optional<Draft> draft = of.draft();
    if (draft.isEmpty()) {
      breaking.clear("is being worked out");
      kink.clear("is being worked out");
      return;
    }
    String guess =
        draft.get().settled() ? "guessed, is being worked out" : "guessed while you drag";
    breaking.show(Odds.words(draft.get().risk().breaking()), guess, of.explain().guessed());
    kink.show(Odds.words(draft.get().risk().kink()), guess, of.explain().kink(0));
  }
}
