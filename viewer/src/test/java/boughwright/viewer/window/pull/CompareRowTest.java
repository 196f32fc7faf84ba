// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.units.DisplayUnits;
import boughwright.physics.stage.Trying;
import boughwright.physics.trial.Said;
import boughwright.physics.trial.TrialRequest;
import boughwright.physics.trial.TrialSpecies;
import boughwright.viewer.command.Ran;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the window says of plans beside one another is what the command line says. */
class CompareRowTest {
  private static final Path HORNBEAM = Path.of("../examples/hedge-hornbeam.tree.json");

  private static CompareRow.Subject subject;
  private static JsonNode compared;

  @BeforeAll
  static void tryPlan() throws InputException {
    Document document = TreeFiles.read(HORNBEAM).document();
    Trying trying = new Trying(Optional.empty(), Said.only(LocalDate.now()), Optional.empty());
    TrialRequest request =
        TrialRequest.of(
            document.tree(), document.plan("b").orElseThrow(), TrialSpecies.of(document.tree()));
    Trying.Watch nobody =
        new Trying.Watch() {
          @Override
          public void now(String what) {}

          @Override
          public void part(double done) {}
        };
    subject =
        CompareRow.Subject.of(
            document, trying.whole(request, "plan b", nobody), DisplayUnits.USUAL);
    compared =
        Ran.command("compare", HORNBEAM, "--no-risk", "--no-course", "--json", "--plans", "b,a")
            .json()
            .get("plans")
            .get(0);
  }

  private static String row(String id) {
    return CompareRow.all().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow()
        .of()
        .apply(subject);
  }

  private static String shown(JsonNode value, int decimals) {
    return new BigDecimal(value.asDouble()).setScale(decimals, RoundingMode.HALF_UP).toString();
  }

  @Test
  void woundsAndYears_areThoseOfTheCommandLine() {
    assertThat(row("wounds")).startsWith(compared.get("wounds").size() + ", the widest ");
    JsonNode years = compared.get("years_to_thicken");
    assertThat(row("thick"))
        .isEqualTo(
            shown(years.get("likely"), 1)
                + " years ("
                + shown(years.get("low"), 1)
                + " to "
                + shown(years.get("high"), 1)
                + ")");
    assertThat(row("closed"))
        .contains(shown(compared.get("years_to_close_slowest").get("low"), 1) + " to ");
  }

  @Test
  void stepFrontAndHeight_areThoseOfTheCommandLine() {
    assertThat(row("step")).isEqualTo(shown(compared.get("takeover").get("ratio"), 2));
    String score = compared.get("front").get("score").toString();
    assertThat(row("front"))
        .isEqualTo(
            new BigDecimal(score).movePointRight(2).setScale(1, RoundingMode.HALF_UP).toString());
    assertThat(row("height")).startsWith(shown(compared.get("height_mm"), 1));
  }

  @Test
  void whatCanAndCannotBeUndone_isSaid() {
    assertThat(row("undone")).isEqualTo("1 line, untied");
    assertThat(row("lasting")).startsWith("1 cut; the planting angle of 3 degrees");
  }
}
