// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.edit.PlanEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.viewer.command.Ran;
import boughwright.viewer.window.WindowRobot;
import com.fasterxml.jackson.databind.JsonNode;
import java.awt.Point;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import javax.swing.JButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pulls branches of the example in a window, by mouse and keyboard. */
class PullPanelTest {
  private static final String TIP = "b1d";

  /** Programs get twelve digits. */
  private static final double JSON_DIGITS = 1e-11;

  @TempDir private Path folder;
  private PullFrame window;
  private WindowRobot robot;

  @BeforeEach
  void open() {
    window = PullFrame.of(PullFrame.HORNBEAM);
    robot = window.robot;
    WindowRobot.doOnEvents(
        () -> {
          window.workspace.edit(PlanEdits.add(PlanEdits.empty("mine")));
          window.workspace.choosePlan("mine");
        });
  }

  @AfterEach
  void close() {
    if (window != null) {
      window.close();
    }
  }

  private Point3 tip() {
    return window.workspace.document().tree().segments().stream()
        .filter(segment -> segment.id().equals(TIP))
        .findFirst()
        .orElseThrow()
        .end();
  }

  private void pull(int right, int down) {
    Point at = window.pixel(tip());
    robot.drag(window.canvas.component(), at, new Point(at.x + right, at.y + down));
    settled();
  }

  private void settled() {
    robot.waitFor("the pull has settled", () -> robot.find("pull.add", JButton.class).isEnabled());
  }

  private JsonNode bend() throws InputException {
    Path file = folder.resolve("pulled.tree.json");
    Document document = WindowRobot.onEvents(window.workspace::document);
    TreeFiles.write(document, file);
    Ran ran = Ran.command("bend", file, "--plan", "mine", "--json");
    assertThat(ran.code()).as(ran.err()).isZero();
    return ran.json().get("trials").get(0);
  }

  private static String shown(double value, int decimals, String unit) {
    return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP) + " " + unit;
  }

  private void added() {
    window.reach("pull.add");
    robot.click("pull.add");
    robot.waitFor(
        "the plan has it", () -> window.workspace.plan().orElseThrow().proposals().size() == 1);
    window.patiently(
        "all is worked out",
        () -> window.panel.trials().of(window.workspace.plan().orElseThrow()).isPresent());
    robot.settle();
  }

  private void readingsAre(JsonNode trial) {
    JsonNode line = trial.get("guy_lines").get(0);
    assertThat(window.reading("pull.tension"))
        .isEqualTo(shown(line.get("tension_N").asDouble(), 1, "N"));
    assertThat(window.reading("pull.shortening"))
        .isEqualTo(shown(line.get("shortening_mm").asDouble(), 1, "mm"));
    assertThat(window.reading("pull.strain"))
        .isEqualTo(
            String.format("%.2f %%", 100 * trial.get("peak").get("bending_strain").asDouble()));
    assertThat(robot.words("pull.verdict")).contains(trial.get("verdict").get("reason").asText());
  }

  @Test
  void branchPulledAndAdded_showsWhatBendSaysOfTheSavedFile() throws InputException {
    pull(-20, 60);
    String live = window.reading("pull.tension");
    added();
    JsonNode trial = bend();
    readingsAre(trial);
    assertThat(window.reading("pull.tension")).isEqualTo(live);
    double crack = trial.get("risk").get("crack").get("p").asDouble();
    double known =
        WindowRobot.onEvents(
            () ->
                window
                    .workspace
                    .answer()
                    .orElseThrow()
                    .trial()
                    .risk()
                    .orElseThrow()
                    .of(boughwright.physics.trial.FailureMode.CRACK)
                    .orElseThrow()
                    .probability()
                    .p());
    assertThat(known).isCloseTo(crack, within(JSON_DIGITS));
  }

  @Test
  void valuesTypedAndAdded_showWhatBendSaysOfTheSavedFile() throws InputException {
    pull(-20, 60);
    window.reach("pull.drawn");
    robot.fill("pull.drawn", "7.5");
    robot.waitFor(
        "it is drawn in by 7.5 mm", () -> window.reading("pull.shortening").equals("7.5 mm"));
    added();
    readingsAre(bend());
    assertThat(bend().get("guy_lines").get(0).get("shortening_mm").asDouble()).isEqualTo(7.5);
  }

  @Test
  void addedBendUndone_isGoneAndRedoBringsItBack() {
    Document before = WindowRobot.onEvents(window.workspace::document);
    pull(-20, 60);
    added();
    Document after = WindowRobot.onEvents(window.workspace::document);
    WindowRobot.doOnEvents(window.workspace::undo);
    assertThat(WindowRobot.onEvents(window.workspace::document)).isEqualTo(before);
    WindowRobot.doOnEvents(window.workspace::redo);
    assertThat(WindowRobot.onEvents(window.workspace::document)).isEqualTo(after);
  }

  @Test
  void typedPullThatNothingHolds_keepsTheLastGoodPoseAndSaysSo() {
    pull(-20, 60);
    String good = window.reading("pull.tension");
    window.reach("pull.tension-typed");
    robot.fill("pull.tension-typed", "9000");
    robot.find("pull.trouble");
    robot.waitFor("it is said", () -> robot.words("pull.trouble").contains("No pose holds"));
    assertThat(window.reading("pull.tension")).isEqualTo(good);
  }

  @Test
  void twoPlansCompared_areTheTwoSingleAnswers() throws InputException {
    robot.waitFor("the plan is tried", () -> window.workspace.answer().isPresent());
    WindowRobot.doOnEvents(() -> window.compare.choose(java.util.List.of("a", "b")));
    robot.find("tabs", javax.swing.JTabbedPane.class);
    WindowRobot.doOnEvents(
        () -> robot.find("tabs", javax.swing.JTabbedPane.class).setSelectedIndex(1));
    window.patiently("both are known", () -> window.compare.isComplete());
    Path file = folder.resolve("both.tree.json");
    TreeFiles.write(WindowRobot.onEvents(window.workspace::document), file);
    for (int column = 0; column < 2; column++) {
      String plan = column == 0 ? "a" : "b";
      JsonNode trial =
          Ran.command("bend", file, "--plan", plan, "--json").json().get("trials").get(0);
      double hardest = 0;
      for (JsonNode line : trial.get("guy_lines")) {
        hardest = Math.max(hardest, line.get("tension_N").asDouble());
      }
      assertThat(window.compare.words("pull", column)).isEqualTo(shown(hardest, 1, "N"));
      assertThat(window.compare.words("strain", column))
          .isEqualTo(
              String.format("%.2f %%", 100 * trial.get("peak").get("bending_strain").asDouble()));
    }
  }
}
