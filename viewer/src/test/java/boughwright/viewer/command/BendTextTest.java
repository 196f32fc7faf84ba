// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person reads. */
class BendTextTest {
  private static final int COLUMNS = 80;

  @TempDir private Path folder;

  private Ran bend(String name) {
    Ran ran = Ran.command("bend", TreeFixture.branched(folder, name), "--no-risk");
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    return ran;
  }

  @Test
  void firstLine_saysElastic_andNoVerdict() {
    Ran ran = Ran.command("bend", TreeFixture.cantilever(folder));
    assertThat(ran.out().lines().findFirst().orElseThrow())
        .contains("straight-line elastic", "no verdict");
    assertThat(ran.out()).doesNotContain("What can go wrong");
  }

  @Test
  void firstLine_saysThatNoRiskWasAskedFor() {
    assertThat(bend("First (invented)").out().lines().findFirst().orElseThrow())
        .contains("no risk was asked for", "no verdict");
  }

  @Test
  void answer_namesForceTighteningPlaceStrainLimitsAndApex() {
    assertThat(bend("All of it (invented)").words())
        .contains("plan a, proposals p1, p2", "plan b, proposal p1")
        .containsPattern("g1 +b1 +12\\.0 N +1\\.22 kg +[0-9.]+ mm +[0-9.]+ mm")
        .containsPattern("Segment b1, [0-9.]+ mm from the union of its limb, stretched on top\\.")
        .containsPattern("bending strain there +[0-9.]+ %")
        .containsPattern("the inside starts to flow at +0\\.28 %")
        .containsPattern("rupture ratio .* +0\\.68 %")
        .contains("BRE Report BR 241")
        .containsPattern("Its tip comes to stand [0-9]+ mm right")
        .contains("eye protection", "With --details");
  }

  @Test
  void details_areShownWhenAskedFor() {
    Path file = TreeFixture.branched(folder, "Details (invented)");
    assertThat(Ran.command("bend", "--no-risk", "--details", file).words())
        .containsPattern("b1 +[0-9.]+ % +[0-9.]+ Nm +[0-9.]+ Nm +-?[0-9.]+ N")
        .contains("The solver's own estimate of its error", "What the numbers rest on")
        .doesNotContain("With --details");
    assertThat(Ran.command("bend", "--no-risk", file).words())
        .doesNotContain("The solver's own estimate", "What the numbers rest on");
  }

  @Test
  void lines_fitTheTerminal() {
    assertThat(
            bend("A tree with a rather long name, so that its title has to wrap (invented)").out())
        .satisfies(
            text ->
                assertThat(text.lines())
                    .allSatisfy(line -> assertThat(line.length()).isLessThan(COLUMNS)));
  }

  @Test
  void poseThatDoesNotHold_isSaidPlainly_withWhatToTry() {
    Ran ran = Ran.command("bend", TreeFixture.pushed(folder));
    assertThat(ran.code()).isZero();
    assertThat(ran.words())
        .contains("would not stay in this pose", "% of the pull", "You can try", "less tension")
        .doesNotContain("Bent hardest", "Guy-lines (", "comes to stand");
  }

  @Test
  void notesOnTheFile_areShown() {
    String text = TreeFixture.branchedText("Note").replace("carpinus-betulus", "no such wood");
    Ran ran = Ran.command("bend", TreeFixture.write(folder, "note.tree.json", text), "--no-risk");
    assertThat(ran.code()).isZero();
    assertThat(ran.words()).contains("Worth a look in the file - note: ", "\"no such wood\"");
  }

  @Test
  void woodOfOnesOwn_hasNoLimits() {
    assertThat(Ran.command("bend", TreeFixture.cantilever(folder)).out())
        .contains("No limits are known for wood of one's own.");
  }

  @Test
  void proxy_saysWhoseNumbersAreShown() {
    String text =
        TreeFixture.branchedText("Proxy (invented)").replace("carpinus-betulus", "acer-palmatum");
    Path file = TreeFixture.write(folder, "proxy.tree.json", text);
    String json = Ran.command("species", "acer-palmatum", "--json").json().toString();
    assertThat(json).contains("\"proxy\"");
    assertThat(Ran.command("bend", file, "--no-risk").out())
        .contains("Limits of clear green stem wood, Acer");
    assertThat(
            Ran.command("bend", file, "--no-risk", "--json")
                .json()
                .findValue("limits")
                .has("proxy"))
        .isTrue();
  }

  @Test
  void hostileName_isShownVisibly_andKeptInJson() {
    String name = "\u05D0\u202E\"<b>&'|@|bold x|@ %n %s \u0130\u0131";
    String escaped = name.replace("\"", "\\\"");
    Path file = TreeFixture.branched(folder, escaped);
    Ran text = Ran.command("bend", file, "--plan", "a", "--no-risk");
    Ran json = Ran.command("bend", file, "--plan", "a", "--json", "--no-risk");
    assertThat(text.out())
        .contains("<U+202E>\"<b>&'|@|bold x|@ %n %s \u0130\u0131")
        .doesNotContain("\u202E");
    assertThat(json.json().get("tree").textValue()).isEqualTo(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-SA-u-nu-arab", "hi-IN-u-nu-deva"})
  void answer_isTheSame_inEveryLocale(String tag) {
    Path file = TreeFixture.branched(folder, "Locale (invented)");
    Path pushed = TreeFixture.pushed(folder);
    Locale before = Locale.getDefault();
    String text = Ran.command("bend", file, "--samples", "100").out();
    String json = Ran.command("bend", file, "--json", "--samples", "100").out();
    String stuck = Ran.command("bend", pushed).out();
    String fault = Ran.command("view", file, "--size", "1x1", "--front", "1234567").err();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(Ran.command("bend", file, "--samples", "100").out()).isEqualTo(text);
      assertThat(Ran.command("bend", file, "--json", "--samples", "100").out()).isEqualTo(json);
      assertThat(Ran.command("bend", pushed).out()).isEqualTo(stuck);
      assertThat(Ran.command("view", file, "--size", "1x1", "--front", "1234567").err())
          .isEqualTo(fault);
    } finally {
      Locale.setDefault(before);
    }
  }
}
