// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Limit;
import boughwright.modeller.edit.FrontEdits;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.TreeStyle;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewVerbTest {
  private static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");
  private static final Path LARCH = Path.of("../examples/larch.tree.json");

  @TempDir private Path folder;

  private Path copy() throws IOException {
    return Files.copy(HORNBEAM, folder.resolve("hornbeam.tree.json"));
  }

  private static Ran review(Path file, Object... more) {
    return Ran.verb("review", file, more);
  }

  private static JsonNode fault(JsonNode answer, String kind) {
    return Ran.one(answer.get("faults"), "kind", kind);
  }

  private static JsonNode option(JsonNode fault, String action) {
    return Ran.one(fault.get("options"), "action", action);
  }

  @Test
  void text_tellsFirstHowMany_thenEachWithMeasureLimitAndOptions() {
    Ran ran = review(HORNBEAM);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out().lines().findFirst().orElseThrow())
        .contains("faults found; what matters most comes first");
    assertThat(ran.words())
        .contains("Competing leader: a1")
        .contains("of the apex's height at its tip: a fault from 0.80 (our choice, no source)")
        .contains("remove: take off a1 with all that grows on it.")
        .contains("closes in ")
        .contains("of the tree's foliage goes, within the 50 % of one session")
        .contains("Branch too low: b1")
        .contains(
            "keep as sacrifice: let b1 grow until the trunk is 72.4 mm thick at the start of t1")
        .contains("Not judged")
        .contains("no front is chosen; give --plan or --front-deg")
        .doesNotContain("Crossing branches");
    assertThat(ran.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
  }

  @Test
  void oldTrunkThatThePlanLeaves_competesWithItsNewLeader() {
    JsonNode answer = review(HORNBEAM, "--plan", "a", "--json").json();
    JsonNode leader = fault(answer, "competing_leader");
    assertThat(leader.get("segments").get(0).asText()).isEqualTo("t5");
    assertThat(leader.get("where").get("segment").asText()).isEqualTo("t5");
    assertThat(leader.get("measures").get(0).get("value").asDouble()).isGreaterThan(0.7);
    JsonNode wound = option(leader, "remove").get("wounds").get(0);
    assertThat(wound.get("across").asBoolean()).isTrue();
    assertThat(answer.get("front_azimuth_deg").asDouble()).isCloseTo(20, within(1e-9));
    assertThat(answer.get("not_judged")).isEmpty();
  }

  /** Years by formula 11 worked out here: half the width over 1.3 times the ring of a box. */
  @Test
  void json_tellsTheWoundAndItsYears() {
    JsonNode answer = review(HORNBEAM, "--json").json();
    JsonNode low = fault(answer, "too_low");
    JsonNode wound = option(low, "remove").get("wounds").get(0);
    assertThat(wound.get("width_mm").asDouble()).isCloseTo(11.8, within(1e-9));
    assertThat(wound.get("on").get("segment").asText()).isEqualTo("t2");
    assertThat(wound.get("years_to_close").get("likely").asDouble())
        .isCloseTo(11.8 / 2 / (1.3 * Math.sqrt(0.5 * 2)), within(1e-6));
    assertThat(wound.get("late").asBoolean()).isTrue();
    assertThat(option(low, "sacrifice").get("until_caliper_mm").asDouble())
        .isCloseTo(434.193 / 6, within(0.01));
    assertThat(answer.get("limits")).hasSize(Limit.values().length);
    assertThat(answer.get("limits").get("codominant").get("origin").asText())
        .isEqualTo("published");
  }

  @Test
  void larch_bearsCutsAsAConifer() {
    JsonNode answer = review(LARCH, "--json").json();
    assertThat(answer.get("wood").asText()).isEqualTo("conifer");
  }

  @Test
  void limitsAndStyle_changeWhatIsAFault() {
    JsonNode usual = review(HORNBEAM, "--json").json();
    JsonNode easier =
        review(HORNBEAM, "--json", "--limits", "first-branch=0.1, leader-angle-deg=5").json();
    assertThat(usual.get("faults").size()).isGreaterThan(easier.get("faults").size());
    assertThat(easier.get("limits").get("leader_angle_deg").get("value").asDouble())
        .isCloseTo(5, within(1e-9));
    Ran clump = review(HORNBEAM, "--style", "clump");
    assertThat(clump.words())
        .contains("Judged as clump")
        .doesNotContain("Branch too low: b1")
        .contains("Branch too low, competing leader: no fault in this style.");
  }

  /** The style that the file wishes counts until another is typed. */
  @Test
  void styleOfTheFile_isTakenUnlessOneIsTyped() throws Exception {
    Path file = copy();
    Document document = TreeFiles.read(file).document();
    TreeFiles.write(FrontEdits.style(Optional.of(TreeStyle.CLUMP)).of(document), file);
    assertThat(review(file).words())
        .contains("Judged as clump")
        .contains("Branch too low, competing leader: no fault in this style.");
    assertThat(review(file, "--json").json().get("style").asText()).isEqualTo("clump");
    assertThat(review(file, "--style", "upright").words())
        .contains("Judged as upright")
        .contains("Branch too low: b1");
  }

  @Test
  void measureAtItsLimit_isToldAsJustThere_andSizesOfOneWoundAreRoundedAlike() {
    assertThat(review(LARCH).words()).contains("0.25 0.25 just").doesNotContain(" 0 %");
    assertThat(review(HORNBEAM).words()).contains("(shaped 35 to 59 mm)");
  }

  @Test
  void treeWithoutBranches_isToldPlainly() {
    Ran ran = review(TreeFixture.cantilever(folder));
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.out()).startsWith("No fault found, judged as upright.");
    assertThat(ran.words())
        .contains("the trunk line t1 and 0 branches")
        .contains("no branch is thick and long enough to be judged")
        .contains("the trunk was measured as one straight segment");
  }

  @Test
  void cutOfAFault_goesIntoANewPlan_andTheFaultIsGone() throws IOException {
    Path file = copy();
    JsonNode before = review(file, "--plan", "b", "--json").json();
    String number = fault(before, "too_low").get("number").asText();
    Ran added = review(file, "--plan", "b", "--json", "--remove", number, "--add-to-plan", "r");
    assertThat(added.code()).as(added.err()).isZero();
    assertThat(added.json().get("added_to_plan").asText()).isEqualTo("r");
    assertThat(Files.exists(folder.resolve("hornbeam.tree.json~"))).isTrue();
    JsonNode after = review(file, "--plan", "r", "--json").json();
    for (JsonNode one : after.get("faults")) {
      assertThat(one.get("segments").get(0).asText()).isNotEqualTo("b1");
    }
    assertThat(Ran.command("check", file).code()).isZero();
  }

  @Test
  void cutThatTakesALineOfThePlan_isRefused_andNothingIsChanged() throws IOException {
    Path file = copy();
    String before = Files.readString(file);
    JsonNode answer = review(file, "--plan", "a", "--json").json();
    String number = String.valueOf(fault(answer, "too_low").get("number").asInt());
    Ran ran = review(file, "--plan", "a", "--remove", number, "--add-to-plan", "a");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("b1c");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void whatCannotBeUsed_isRefusedTogether() throws IOException {
    Path file = copy();
    String before = Files.readString(file);
    Ran ran =
        review(
            file,
            "--plan",
            "z",
            "--style",
            "windy",
            "--limits",
            "branch-calliper=0.6,twig-caliper-mm=-1,x",
            "--front-deg",
            "north",
            "--size",
            "10x10",
            "--remove",
            "1");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("there is no plan \"z\"")
        .contains("\"windy\" is none of upright")
        .contains("Did you mean branch-caliper")
        .contains("--limits twig-caliper-mm")
        .contains("\"x\" is no limit with its value")
        .contains("--front-deg")
        .contains("there is no picture")
        .contains("no plan takes the cuts");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void numbersThatAreNoFault_orHaveNoCut_areRefused() throws IOException {
    Path file = copy();
    Ran none = review(file, "--remove", "77", "--add-to-plan", "r");
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.err().lines()).hasSize(1);
    assertThat(none.err()).contains("there is no fault 77");
    Ran noCut = review(LARCH, "--plan", "a", "--remove", "1", "--add-to-plan", "r");
    assertThat(noCut.code()).isEqualTo(2);
    assertThat(noCut.err()).contains("is not removed by a cut");
    Ran taken = review(file, "--remove", "1", "--add-to-plan", "a");
    assertThat(taken.err()).contains("there is a plan \"a\" already");
    assertThat(review(file, "--add-to-plan", "r").err()).contains("nothing is said to remove");
  }
}
