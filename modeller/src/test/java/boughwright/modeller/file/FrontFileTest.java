// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.plan.FrontChoice;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.MarkedFront;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person wishes of the front, and the fronts they marked, as the tree file holds them. */
class FrontFileTest {
  private static Change with(String fronts) {
    return Change.of().set("/fronts", fronts);
  }

  private static FrontChoice read(String fronts) throws Exception {
    return TreeFiles.read("f", with(fronts).bytes()).document().fronts();
  }

  @Test
  void everythingIsRead_whenAllIsSaid() throws Exception {
    FrontChoice found =
        read(
            "{\"style\":\"twin_trunk\",\"eye_mm\":300,\"eye_distance_mm\":900,"
                + "\"weights\":{\"trunk_movement\":2,\"wounds\":0},\"marked\":[{\"id\":\"f1\","
                + "\"front_azimuth_deg\":180,\"planting\":{\"tilt_deg\":90,"
                + "\"toward_azimuth_deg\":0},\"note\":\"calm\"}]}");
    assertThat(found)
        .isEqualTo(
            new FrontChoice(
                new FrontWishes(
                    Optional.of(TreeStyle.TWIN_TRUNK),
                    OptionalDouble.of(0.3),
                    OptionalDouble.of(0.9),
                    Map.of(FrontMeasure.TRUNK_MOVEMENT, 2.0, FrontMeasure.WOUNDS, 0.0),
                    Map.of()),
                List.of(
                    new MarkedFront(
                        "f1",
                        Math.PI,
                        Optional.of(new Planting(Math.PI / 2, 0)),
                        Optional.of("calm"),
                        Map.of()))));
  }

  @Test
  void nothingIsSaid_whenThereIsNoSuchField_andNothingIsWrittenThen() throws Exception {
    TreeFile read = TreeFiles.read("f", Change.of().bytes());
    assertThat(read.document().fronts()).isEqualTo(FrontChoice.UNSAID);
    assertThat(TreeJson.text(read.document())).doesNotContain("fronts");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"style\":\"slnating\"}|unknown-word|Did you mean slanting",
        "{\"style\":\"formal\"}|unknown-word|upright, slanting, cascade, broom",
        "{\"style\":3}|wrong-type|style",
        "{\"weights\":{\"tapper\":1}}|unknown-word|Did you mean taper",
        "{\"weights\":{\"taper\":-1}}|out-of-range|taper is -1",
        "{\"weights\":{\"taper\":\"much\"}}|no-number|taper",
        "{\"weights\":{\"taper\":1e300}}|too-large|taper",
        "{\"weights\":[1]}|wrong-type|weights",
        "{\"eye_mm\":\"high\"}|no-number|eye_mm",
        "{\"eye_distance_mm\":0}|out-of-range|eye_distance_mm",
        "{\"marked\":[{\"id\":\"f\"}]}|missing-field|front_azimuth_deg",
        "{\"marked\":[{\"front_azimuth_deg\":1}]}|missing-field|id",
        "{\"marked\":[{\"id\":\"f\",\"front_azimuth_deg\":1,\"note\":\" \"}]}|bad-note|note is blank",
        "{\"marked\":[{\"id\":\"f\",\"front_azimuth_deg\":1,\"planting\":{\"tilt_deg\":1}}]}"
            + "|missing-field|toward_azimuth_deg",
        "{\"marked\":[{\"id\":\"f\",\"front_azimuth_deg\":1},{\"id\":\"f\",\"front_azimuth_deg\":2}]}"
            + "|duplicate-id|another marked front",
        "7|wrong-type|fronts"
      })
  void fault_isOneLineThatNamesTheField(String fronts, String kind, String words) {
    List<Problem> faults = Verdict.of(with(fronts).text()).problems();
    assertThat(faults).extracting(Problem::kind).containsExactly(kind);
    assertThat(faults.get(0).line()).contains(words).doesNotContain("\n").hasSizeLessThan(400);
  }
}
