// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Branching rods under weights and lines: the trees of f_branching.json in the test resources. */
class BranchingTableTest {
  private static final Measured MEASURED = new Measured(BranchingTableTest.class);

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** A tree of the table. */
  record Row(JsonNode json) {
    @Override
    public String toString() {
      return json.get("id").asText();
    }

    JsonNode limb(int i) {
      return json.get("result").get("branches").get(i);
    }

    RodCase rods() {
      JsonNode trunk = json.get("branches").get(0);
      List<RodCase.Limb> limbs = new ArrayList<>();
      json.get("branches").forEach(branch -> limbs.add(limbOf(branch)));
      List<RodCase.Pull> pulls = new ArrayList<>();
      List<RodCase.Tie> ties = new ArrayList<>();
      for (int i = 0; i < json.get("loads").size(); i++) {
        JsonNode load = json.get("loads").get(i);
        RodCase.Place at =
            RodCase.Place.on(load.get("b").asInt(), load.get("s").asDouble() * Table.MM);
        if (load.get("type").asText().equals("force")) {
          pulls.add(new RodCase.Pull(at, vector(load.get("F"))));
        } else {
          ties.add(tie(load, at, json.get("result").get("loads").get(i)));
        }
      }
      double inclination = Math.toRadians(trunk.get("incl_deg").asDouble());
      double azimuth = Math.toRadians(trunk.get("azim_deg").asDouble());
      return new RodCase(Rods.rootFrame(inclination, azimuth), limbs, pulls, ties, List.of());
    }

    private static RodCase.Tie tie(JsonNode load, RodCase.Place at, JsonNode found) {
      Point3 anchor = point(load.get("anchor"));
      double tension = found.get("tension").asDouble();
      return load.has("T")
          ? RodCase.Tie.tight(at, anchor, load.get("T").asDouble())
          : RodCase.Tie.measured(at, anchor, tension, load.get("len").asDouble() * Table.MM);
    }

    private static RodCase.Limb limbOf(JsonNode branch) {
      boolean trunk = branch.get("parent").asInt() < 0;
      RodCase.Wood wood =
          RodCase.Wood.ofRatio(
              branch.get("ra").asDouble() * Table.MM,
              branch.get("rb").asDouble() * Table.MM,
              branch.get("E").asDouble() * Table.MPA,
              branch.get("GJ_EI").asDouble());
      return new RodCase.Limb(
          branch.get("parent").asInt(),
          trunk ? 0 : branch.get("sp").asDouble() * Table.MM,
          Vector3.ZERO,
          trunk ? Rotation.NONE : Rotation.ofVector(vector(branch.get("Q_rotvec"))),
          branch.get("L").asDouble() * Table.MM,
          wood,
          branch.has("u0") ? vector(branch.get("u0")).times(1 / Table.MM) : Vector3.ZERO);
    }

    /** Force and moment at the start of every limb, and the force of every line, as tabulated. */
    double[] guess(RodCase rods) {
      List<Double> guess = new ArrayList<>();
      for (int i = 0; i < rods.limbs().size(); i++) {
        Vector3 force = Vector3.ZERO;
        for (int k = 0; k < json.get("loads").size(); k++) {
          boolean beyond = passes(rods, i, json.get("loads").get(k).get("b").asInt());
          force = beyond ? force.plus(found(k)) : force;
        }
        addTo(guess, force);
        addTo(guess, vector(limb(i).get("base_moment_world")).times(Table.MM));
      }
      for (int k = 0; k < json.get("loads").size(); k++) {
        if (json.get("loads").get(k).get("type").asText().equals("line")) {
          addTo(guess, found(k));
        }
      }
      return guess.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Whether a load on one limb passes through the start of another. */
    private static boolean passes(RodCase rods, int limb, int from) {
      int at = from;
      while (at >= 0 && at != limb) {
        at = rods.limbs().get(at).parent();
      }
      return at == limb;
    }

    private Vector3 found(int load) {
      return vector(json.get("result").get("loads").get(load).get("force"));
    }

    private static void addTo(List<Double> list, Vector3 v) {
      list.addAll(List.of(v.x(), v.y(), v.z()));
    }
  }

  private static Vector3 vector(JsonNode node) {
    return new Vector3(node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
  }

  private static Point3 point(JsonNode node) {
    return Point3.ORIGIN.plus(vector(node).times(Table.MM));
  }

  static Stream<Row> rows() {
    try (InputStream in = Row.class.getResourceAsStream("/mechanics/f_branching.json")) {
      return StreamSupport.stream(new ObjectMapper().readTree(in).spliterator(), false)
          .map(Row::new);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void branchingRods_areWhereTheTablePutsThem(Row row) {
    RodCase rods = row.rods();
    RodSolution solution = rods.solve();
    assertThat(solution.status().holds()).as(solution.status().toString()).isTrue();
    for (int i = 0; i < rods.limbs().size(); i++) {
      double length = rods.limbs().get(i).length();
      RodSection tip = rods.section(solution.pose(), i, length);
      double away = tip.position().distance(point(row.limb(i).get("tip")));
      MEASURED.check("position / L", away / length, Accuracy.POSITION);
      Vector3 tangent = tip.frame().turn(new Vector3(0, 0, 1));
      Vector3 across = tip.frame().turn(new Vector3(1, 0, 0));
      MEASURED.check(
          "direction",
          tangent.minus(vector(row.limb(i).get("tip_tangent"))).norm(),
          Accuracy.DIRECTION);
      MEASURED.check(
          "direction", across.minus(vector(row.limb(i).get("tip_d1"))).norm(), Accuracy.DIRECTION);
    }
    RodSection base = solution.pose().section(0, 0);
    Vector3 expected = vector(row.limb(0).get("base_moment_world")).times(Table.MM);
    Vector3 moment = base.frame().turn(base.moment());
    MEASURED.check("base moment", moment.minus(expected).norm() / expected.norm(), Accuracy.MOMENT);
    for (int k = 0; k < rods.ties().size(); k++) {
      double tension = solution.lines().get(k).tension();
      MEASURED.check("tension", tension / rods.ties().get(k).tension() - 1, Accuracy.TENSION);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void worstStrainOfEveryLimb_isFoundWhereItIs(Row row) {
    RodCase rods = row.rods();
    RodSolution solution = rods.solve();
    ShootingPose truth = new ShootingTree(rods).polish(row.guess(rods));
    for (int i = 0; i < rods.limbs().size(); i++) {
      double length = rods.limbs().get(i).length();
      double away = truth.at(i, length).position().distance(point(row.limb(i).get("tip")));
      assertThat(away / length).isLessThan(Accuracy.PRINTED);
      double expected = row.limb(i).get("max_fibre_strain").asDouble();
      Peak peak = Peak.of(rods, solution.pose(), i);
      MEASURED.check("strain", peak.strain() / expected - 1, Accuracy.STRAIN);
      MEASURED.check(
          "true strain at the place, short of the largest",
          1 - truth.fibreStrain(i, peak.s()) / expected,
          Accuracy.STRAIN);
    }
  }
}
