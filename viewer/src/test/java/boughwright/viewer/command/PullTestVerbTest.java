// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Tree;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pull tests from the command line: what is written, what is questioned, what is left alone. */
class PullTestVerbTest {
  /** A weight that bends the branch a little [kg]. */
  private static final String WEIGHT = "0.5";

  /** A pull with it at the end of the branch; how far it moved is to be added. */
  private static final String PULL = "--segment b1 --along 1 --hung-kg " + WEIGHT + " --moved-mm ";

  @TempDir private Path folder;
  private Path file;

  /** How far that weight moves it if the wood is as soft as expected [mm]. */
  private double usual;

  @BeforeEach
  void writeTree() throws IOException {
    file =
        TreeFixture.write(
            folder,
            "pulled.tree.json",
            TreeFixture.branchedText("Pulled (invented)")
                .replace("\"bark_mm\": 0.5,", "\"bark_mm\": 0.5, \"my_note\": \"keep me\","));
    JsonNode dry = pull("--hung-kg", WEIGHT, "--moved-mm", "1", "--dry-run", "--accept").json();
    usual = 1 / dry.get("fit").get("moved_over_expected").doubleValue();
  }

  private Ran pull(String... more) {
    List<Object> words = new ArrayList<>(List.of("pulltest", file, "--segment", "b1"));
    words.addAll(List.of("--along", "1", "--json", "--no-risk"));
    words.addAll(Arrays.asList(more));
    if (!words.contains("--done-on")) {
      words.addAll(List.of("--done-on", "2026-03-05"));
    }
    return Ran.command(words.toArray());
  }

  private static String mm(double value) {
    return Double.toString(value);
  }

  private Tree tree() throws InputException {
    return TreeFiles.read(file).document().tree();
  }

  @Test
  void test_andItsResult_areWritten_andTheOldFileIsKept() throws Exception {
    byte[] before = Files.readAllBytes(file);
    Ran ran = pull("--hung-kg", WEIGHT, "--moved-mm", mm(0.8 * usual));
    assertThat(ran.err()).isEmpty();
    JsonNode answer = ran.json();
    assertThat(Files.readAllBytes(folder.resolve("pulled.tree.json~"))).isEqualTo(before);
    assertThat(Files.readString(file)).contains("\"my_note\": \"keep me\"");
    PullTest test = tree().pullTests().get(0);
    assertThat(test.id()).isEqualTo("pt1");
    assertThat(test.doneOn()).hasValue(LocalDate.of(2026, 3, 5));
    assertThat(test.readings().get(0).force()).isCloseTo(0.5 * 9.80665, within(1e-9));
    assertThat(test.direction().z()).isEqualTo(-1);
    double moe = answer.get("after").get("moe_GPa").doubleValue();
    assertThat(tree().overrideFor("b1").orElseThrow().moe().getAsDouble())
        .isCloseTo(1e9 * moe, within(1e-3 * 1e9 * moe));
    assertThat(tree().overrideFor("b1").orElseThrow().source())
        .hasValue("pull test pt1 2026-03-05");
    assertThat(tree().overrideFor("t1")).isEmpty();
    assertThat(moe).isGreaterThan(answer.get("before").get("moe_GPa").doubleValue());
    assertThat(answer.get("after").get("moe_cv").doubleValue())
        .isLessThan(0.6 * answer.get("before").get("moe_cv").doubleValue());
    assertThat(answer.get("written").booleanValue()).isTrue();
  }

  @Test
  void laterTests_countTogether_andLeaveLessDoubt() throws Exception {
    JsonNode first = pull("--hung-kg", WEIGHT, "--moved-mm", mm(0.8 * usual)).json();
    JsonNode second =
        pull("--hung-kg", WEIGHT, "--moved-mm", mm(0.82 * usual), "--done-on", "2026-03-06").json();
    assertThat(second.get("tests")).hasSize(2);
    assertThat(second.get("before")).isEqualTo(first.get("before"));
    assertThat(second.get("after").get("moe_cv").doubleValue())
        .isLessThan(first.get("after").get("moe_cv").doubleValue());
    assertThat(tree().overrides()).hasSize(1);
    assertThat(tree().overrideFor("b1").orElseThrow().source())
        .hasValue("pull tests pt1, pt2 2026-03-06");
  }

  @Test
  void dryRun_changesNothing() throws IOException {
    byte[] before = Files.readAllBytes(file);
    Ran ran = pull("--hung-kg", WEIGHT, "--moved-mm", mm(usual), "--dry-run");
    assertThat(ran.code()).isZero();
    assertThat(ran.json().get("written").booleanValue()).isFalse();
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
    assertThat(folder.resolve("pulled.tree.json~")).doesNotExist();
  }

  /** The pull is half a kilogram every time, given as some other number of some other unit. */
  @ParameterizedTest
  @CsvSource({
    "--force-N, 0.5, 1, --scale-kg 0.5",
    "--hung-kg, 4.9, 1, --force-N 4.9",
    "--hung-kg, 500, 1, --hung-kg 0.5",
    "--scale-kg, 17.6, 1, --scale-kg 0.498",
    "--hung-kg, 0.5, 25.4, in",
  })
  void wrongUnit_isQuestioned_andTheRightOneProposed(
      String option, String typed, double movedFactor, String proposed) throws IOException {
    byte[] before = Files.readAllBytes(file);
    Ran ran =
        pull(
            option,
            typed,
            "--moved-mm",
            mm(usual / movedFactor),
            "--moved-error-mm",
            "0.05",
            "--direction",
            "0,0,-1");
    assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(ran.err().lines()).hasSize(1);
    assertThat(ran.err()).contains(proposed, "--accept");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void poundsForKilograms_areCalledOut_afterAnEarlierTest() {
    assertThat(pull("--hung-kg", WEIGHT, "--moved-mm", mm(usual)).code()).isZero();
    Ran ran = pull("--scale-kg", "1.1", "--moved-mm", mm(usual), "--direction", "0,0,-1");
    assertThat(ran.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(ran.err()).contains("other tests", "--scale-kg 0.49895");
    Ran accepted =
        pull("--scale-kg", "1.1", "--moved-mm", mm(usual), "--direction", "0,0,-1", "--accept");
    assertThat(accepted.code()).isZero();
    assertThat(accepted.json().get("notes").get(0).get("kind").textValue())
        .isEqualTo("not-like-the-others");
  }

  @Test
  void sameTest_isNotCountedTwice() {
    assertThat(pull("--hung-kg", WEIGHT, "--moved-mm", mm(usual)).code()).isZero();
    Ran again = pull("--hung-kg", WEIGHT, "--moved-mm", mm(usual));
    assertThat(again.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(again.err()).contains("already as \"pt1\"");
  }

  @Test
  void modulusGivenByHand_isReplacedOnlyWhenAsked_andStaysTold() throws Exception {
    String byHand = "\"wood\": {\"b*\": {\"moe_GPa\": 4.1, \"source\": \"my guess\"}}, \"plans\"";
    Files.writeString(file, Files.readString(file).replace("\"plans\"", byHand));
    Ran refused = pull("--hung-kg", WEIGHT, "--moved-mm", mm(usual));
    assertThat(refused.code()).isEqualTo(ExitCode.REFUSED);
    assertThat(refused.err()).contains("\"b*\"", "4.10 GPa", "my guess", "--replace");
    Ran ran = pull("--hung-kg", WEIGHT, "--moved-mm", mm(usual), "--replace");
    assertThat(ran.code()).isZero();
    assertThat(tree().overrideFor("b1").orElseThrow().source())
        .hasValue("pull test pt1 2026-03-05; before: 4.1 GPa, my guess");
    assertThat(tree().overrideFor("b9").orElseThrow().moe()).hasValue(4.1e9);
  }

  @Test
  void secondLoad_andBase_areTaken() {
    JsonNode answer =
        pull(
                "--hung-kg",
                WEIGHT,
                "--moved-mm",
                mm(usual + 0.1),
                "--base-moved-mm",
                "0.1",
                "--second-hung-kg",
                "1",
                "--second-moved-mm",
                mm(2 * usual + 0.2),
                "--second-base-moved-mm",
                "0.2")
            .json();
    assertThat(answer.get("test").get("readings")).hasSize(2);
    assertThat(answer.get("test").get("readings").get(1).get("base_moved_mm").doubleValue())
        .isEqualTo(0.2);
    assertThat(Math.abs(answer.get("fit").get("deviations_of_second_load").doubleValue()))
        .isLessThan(1);
  }

  @Test
  void dayNotGiven_isToday() throws InputException {
    Ran ran = Ran.line("pulltest", file, PULL + mm(usual) + " --no-risk");
    assertThat(ran.code()).isZero();
    assertThat(tree().pullTests().get(0).doneOn().orElseThrow())
        .isBetween(LocalDate.now().minusDays(1), LocalDate.now());
  }

  @Test
  void text_saysWhatWasLearned_whenToRead_andWhatToMind() {
    Ran ran = Ran.line("pulltest", file, PULL + mm(usual) + " --done-on 2026-03-05 --no-risk");
    assertThat(ran.code()).isZero();
    assertThat(ran.words())
        .contains("Pull test pt1 on b1, 2026-03-05")
        .contains("nine in ten", "before any test", "with this test")
        .contains("within a factor of", "either way")
        .contains("half a minute", "further after 5 minutes")
        .contains("stays springy", "eye protection")
        .contains("pulled.tree.json~");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(80));
  }

  /** One plan held by length, so that the force follows the stiffness. */
  @Test
  void plans_areShownBeforeAndAfter_andTheForceIsKnownBetter() throws IOException {
    String text = Files.readString(file);
    int first = text.indexOf("{\"id\": \"a\"");
    int second = text.indexOf("{\"id\": \"b\"");
    Files.writeString(file, text.substring(0, first) + text.substring(second));
    Ran ran = Ran.line("pulltest", file, PULL + mm(usual) + " --json --dry-run");
    JsonNode plan = ran.json().get("plans").get(0);
    assertThat(width(plan.get("after"))).isLessThan(0.7 * width(plan.get("before")));
    assertThat(plan.get("after").get("risk").get("crack").get("p").doubleValue())
        .isBetween(0.0, 1.0);
  }

  private static double width(JsonNode trial) {
    JsonNode pull = trial.get("tensions_N").get("g1");
    return Math.log(pull.get(2).doubleValue() / pull.get(0).doubleValue());
  }
}
