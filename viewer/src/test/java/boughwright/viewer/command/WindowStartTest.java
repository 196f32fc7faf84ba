// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.window.shell.Start;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the window opens, and what is said where it cannot. */
class WindowStartTest {
  private static final Path LARCH = Path.of("..", "examples", "larch.tree.json");

  @TempDir Path folder;

  private final List<Optional<Start.Given>> opened = new ArrayList<>();

  private int run(String... words) {
    Console console = new Console(quiet(), quiet(), false, false);
    return Boughwright.run(console, new Opener(), List.of(words));
  }

  private static java.io.PrintStream quiet() {
    return Ran.stream(new java.io.ByteArrayOutputStream());
  }

  /** A display that only notes what it is asked to show. */
  private final class Opener implements WindowOpener {
    @Override
    public boolean hasDisplay() {
      return true;
    }

    @Override
    public void open(Optional<Start.Given> given) throws InputException {
      opened.add(given);
    }
  }

  @Test
  void noVerb_opensTheWindowOnTheLastTree() {
    assertThat(run()).isZero();
    assertThat(opened).containsExactly(Optional.empty());
  }

  @Test
  void view_opensTheWindowOnTheFileAndThePlan() {
    assertThat(run("view", LARCH.toString(), "--plan", "b")).isZero();
    assertThat(opened).hasSize(1);
    Start.Given given = opened.get(0).orElseThrow();
    assertThat(given.file()).isEqualTo(LARCH);
    assertThat(given.tree().document().tree().name()).startsWith("Larch");
    assertThat(given.plan()).contains("b");
  }

  @Test
  void view_withAFaultyFile_opensNothing() {
    assertThat(run("view", folder.resolve("none.tree.json").toString())).isEqualTo(2);
    assertThat(opened).isEmpty();
  }

  @Test
  void noVerb_withoutADisplay_printsTheUsagePage() {
    assertThat(Ran.command().out()).contains("VERB");
  }

  @Test
  void view_withoutADisplay_saysOneLineAndTheRemedy() throws Exception {
    Process process = child("-Djava.awt.headless=true", "view", LARCH.toString());
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isEqualTo(2);
    assertThat(out).isEmpty();
    assertThat(err.lines()).singleElement().asString().contains("no display", "--screenshot");
  }

  @Test
  void aDisplayNobodyAnswersAt_countsAsNone() throws Exception {
    ProcessBuilder builder = builder("-Dx=y", "view", LARCH.toString());
    builder.environment().put("DISPLAY", ":987");
    Process process = builder.start();
    process.getOutputStream().close();
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isEqualTo(2);
    assertThat(err.lines()).singleElement().asString().contains("no display");
  }

  private Process child(String option, String... words) throws java.io.IOException {
    return builder(option, words).start();
  }

  private ProcessBuilder builder(String option, String... words) {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(
        List.of(option, "-cp", System.getProperty("java.class.path"), Boughwright.class.getName()));
    line.addAll(Arrays.asList(words));
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("BOUGHWRIGHT_HOME", folder.toString());
    return builder;
  }
}
