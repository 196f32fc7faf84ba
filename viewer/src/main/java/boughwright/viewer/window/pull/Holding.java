// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.problem.VisibleText;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.stage.Course;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.CoilHold;
import boughwright.physics.trial.HardwareFinding;
import boughwright.physics.trial.LineHardware;
import boughwright.physics.trial.Odds;
import boughwright.viewer.scene.Wording;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.Shade;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;

/** What holds a bend, and its stages: the short of it, and all of it when asked. */
final class Holding {
  private static final int SHORT = 3;

  private final Prose holds = Controls.prose("");
  private final Prose stages = Controls.prose("");
  private final JToggleButton details = Controls.toggle("Details");
  private final JPanel panel = Controls.section("What holds it", holds);
  private final JPanel course = Controls.section("In stages", stages, details);
  private Optional<Trying.Tried> shown = Optional.empty();
  private boolean working;
  private DisplayUnits units = DisplayUnits.USUAL;

  Holding() {
    Controls.named(details, "pull.details", "All that is said of what holds it and of its stages");
    details.setMnemonic('d');
    details.addActionListener(event -> write());
    holds.setName("pull.holds");
    stages.setName("pull.stages");
  }

  List<JComponent> components() {
    return List.of(panel, course);
  }

  /**
   * Shows what is known.
   *
   * @param isWorking whether more is to come
   * @param in what lengths and forces are told in
   */
  void show(Optional<Trying.Tried> tried, boolean isWorking, DisplayUnits in) {
    shown = tried;
    working = isWorking;
    units = in;
    write();
  }

  private void write() {
    if (shown.isEmpty()) {
      String why = working ? "Is being worked out." : "Nothing is known yet.";
      holds.say(why, Shade.QUIET);
      stages.say(why, Shade.QUIET);
      return;
    }
    boolean all = details.isSelected();
    say(holds, String.join("\n\n", holds(shown.get(), all)));
    say(
        stages,
        shown
            .get()
            .course()
            .map(one -> String.join("\n\n", stages(one, all)))
            .orElse("Nothing is bent, so there are no stages."));
    panel.revalidate();
  }

  private void say(Prose prose, String words) {
    prose.say(units.inWords(words), Shade.INK);
  }

  private static List<String> holds(Trying.Tried tried, boolean all) {
    List<String> lines = new ArrayList<>();
    tried
        .heldBy()
        .hardware()
        .ifPresent(
            hardware -> {
              for (LineHardware line : hardware.lines()) {
                findings(VisibleText.of(line.line()) + ": ", line.findings(), all, lines);
              }
              findings("", hardware.standing(), all, lines);
            });
    for (CoilHold coil : tried.heldBy().coils()) {
      lines.add(
          "Wire of "
              + VisibleText.of(coil.proposal())
              + String.format(
                  Locale.ROOT,
                  ": %.0f %% of the bend stays when the hands let go (%.0f to %.0f %%).",
                  100 * coil.kept().middle(),
                  100 * coil.kept().low(),
                  100 * coil.kept().high()));
    }
    return lines.isEmpty() ? List.of("Everything bears what is asked of it.") : lines;
  }

  private static void findings(
      String of, List<HardwareFinding> findings, boolean all, List<String> into) {
    for (HardwareFinding finding : findings) {
      if (all || finding.level() != HardwareFinding.Level.FINE) {
        into.add(of + finding.sentence());
      }
    }
  }

  private static List<String> stages(Course course, boolean all) {
    List<String> lines = new ArrayList<>();
    int most = all ? course.steps().size() : SHORT;
    course.steps().stream().limit(most).forEach(step -> lines.add(step(step)));
    int left = course.steps().size() - lines.size();
    if (left > 0) {
      lines.add("And " + left + (left == 1 ? " more step." : " more steps."));
    }
    int notes = all || course.steps().isEmpty() ? course.notes().size() : 1;
    course.notes().stream().limit(notes).forEach(lines::add);
    return lines;
  }

  private static String step(Course.Step step) {
    long day = Math.round(step.time() / Wording.DAY);
    String odds =
        step.odds().map(one -> " Breaking up to here: " + Odds.words(one.p()) + ".").orElse("");
    return String.format(Locale.ROOT, "Day %d: %s%s", day, step.words(), odds);
  }
}
