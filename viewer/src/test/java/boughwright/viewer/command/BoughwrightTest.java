// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as a whole. */
class BoughwrightTest {
  private static final int HANG_SECONDS = 60;

  @TempDir private Path folder;

  @Test
  void noVerb_showsWhatThereIs() {
    Ran ran = Ran.command();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).contains("check", "bend", "branch", "species", "measure", "view");
    assertThat(Ran.command("--help").out()).isEqualTo(ran.out());
  }

  @Test
  void version_isThatOfTheBuild() {
    assertThat(Ran.command("--version").out()).matches("Boughwright [0-9]+\\.[0-9]+\\.[0-9]+\n");
    assertThat(Ran.command("bend", "-V").out()).isEqualTo(Ran.command("-V").out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "bend", "branch", "species", "measure", "view"})
  void help_ofAVerb_hasAnExample_andFitsTheTerminal(String verb) {
    Ran ran = Ran.command(verb, "--help");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).contains("Example", "java -jar boughwright.jar " + verb, "--json");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  @Test
  void defect_isOneLine_thatAsksToReportIt() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = new Console(Ran.stream(err), Ran.stream(err), false, false);
    int code = new ProblemHandler(console).defect(new IllegalStateException("a\nb"));
    String text = err.toString(StandardCharsets.UTF_8);
    assertThat(code).isEqualTo(ExitCode.DEFECT);
    assertThat(text.lines()).hasSize(1);
    assertThat(text).contains("defect of Boughwright", "IllegalStateException: a<U+000A>b");
  }

  @Test
  void defect_showsItsTrace_whenAsked() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = new Console(Ran.stream(err), Ran.stream(err), false, true);
    new ProblemHandler(console).defect(new IllegalStateException("a"));
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("\tat boughwright.viewer.command");
  }

  @Test
  void answerThatCannotBePrinted_isNoSuccess() {
    PrintStream full =
        new PrintStream(
            new OutputStream() {
              @Override
              public void write(int b) throws IOException {
                throw new IOException("no space left");
              }
            });
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = new Console(full, Ran.stream(err), false, false);
    assertThat(Boughwright.run(console, List.of("species"))).isEqualTo(ExitCode.REFUSED);
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("could not be printed");
  }

  @Test
  void process_printsUtf8_whateverItsLocale() throws IOException, InterruptedException {
    Path file = TreeFixture.branched(folder, "Gelenk\u00F6hre \u677E (erfunden)");
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Dfile.encoding=US-ASCII",
            "-Duser.language=de",
            "-cp",
            System.getProperty("java.class.path"),
            "boughwright.viewer.command.Boughwright",
            "bend",
            file.toString(),
            "--no-risk");
    builder.environment().put("LC_ALL", "C");
    builder.redirectError(folder.resolve("err").toFile());
    Process process = builder.start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(HANG_SECONDS, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isZero();
    assertThat(out).isEqualTo(Ran.command("bend", file, "--no-risk").out()).contains("\u677E");
    assertThat(folder.resolve("err")).isEmptyFile();
  }

  @Test
  void commands_knowNoGraphics() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideInAPackage("boughwright.viewer.command..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("boughwright.viewer.gl..", "org.lwjgl..", "java.awt..", "javax.swing..")
        .check(
            new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("boughwright.viewer"));
  }
}
