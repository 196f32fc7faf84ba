// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import static boughwright.viewer.command.MovedTrunk.azimuth;
import static boughwright.viewer.command.MovedTrunk.degreesApart;
import static boughwright.viewer.command.MovedTrunk.few;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a chosen front changes in the file. */
class FrontsKeptTest {
  @TempDir private Path folder;

  private static ObjectNode document(Path file) throws IOException {
    return (ObjectNode) new ObjectMapper().readTree(Files.readString(file));
  }

  /** Every value with where it is, numbers as numbers. */
  private static Set<String> keys(JsonNode node) {
    Set<String> all = new HashSet<>();
    collect(node, "", all);
    return all;
  }

  private static Set<String> without(Set<String> all, Set<String> some) {
    Set<String> left = new HashSet<>(all);
    left.removeAll(some);
    return left;
  }

  private static void collect(JsonNode node, String place, Set<String> all) {
    if (node.isObject()) {
      node.properties().forEach(f -> collect(f.getValue(), place + "/" + f.getKey(), all));
    } else if (node.isArray()) {
      for (int n = 0; n < node.size(); n++) {
        collect(node.get(n), place + "/" + n, all);
      }
    } else {
      all.add(place + "=" + (node.isNumber() ? String.valueOf(node.asDouble()) : node));
    }
  }

  @Test
  void chosenFront_goesIntoThePlan_andNothingElseIsChanged() throws IOException {
    Path file = MovedTrunk.write(folder);
    ObjectNode before = document(file);
    Ran ran = few(file, "--choice", "2", "--add-to-plan", "b", "--json");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.json().get("added_to_plan").asText()).isEqualTo("b");
    JsonNode front = ran.json().get("fronts").get(1);
    ObjectNode after = document(file);
    ObjectNode plan = (ObjectNode) after.get("plans").get(1);
    assertThat(degreesApart(plan.get("front_azimuth_deg").asDouble(), azimuth(front)))
        .isCloseTo(0, within(1e-6));
    assertThat(plan.has("planting")).isEqualTo(front.has("planting"));
    for (String angle : List.of("tilt_deg", "toward_azimuth_deg")) {
      assertThat(plan.at("/planting/" + angle).asDouble())
          .isCloseTo(front.at("/planting/" + angle).asDouble(), within(1e-6));
    }
    plan.remove("planting");
    plan.set("front_azimuth_deg", before.get("plans").get(1).get("front_azimuth_deg"));
    assertThat(without(keys(before), keys(after))).isEmpty();
    assertThat(without(keys(after), keys(before))).isEmpty();
    assertThat(Ran.command("check", file).code()).isZero();
    assertThat(folder.resolve("tree.tree.json~")).exists();
  }

  @Test
  void newPlan_takesCutsAndApexOfTheOneJudged() throws IOException {
    Path file = MovedTrunk.write(folder);
    Ran ran = few(file, "--plan", "a", "--add-to-plan", "f");
    assertThat(ran.code()).as(ran.err()).isZero();
    assertThat(ran.words()).contains("Front 1 is in the file now, in plan f.");
    JsonNode plan = document(file).get("plans").get(2);
    assertThat(plan.get("id").asText()).isEqualTo("f");
    assertThat(plan.get("apex").asText()).isEqualTo("t3");
    assertThat(plan.at("/cuts/0/segment").asText()).isEqualTo("t3");
    assertThat(plan.has("front_azimuth_deg")).isTrue();
  }
}
