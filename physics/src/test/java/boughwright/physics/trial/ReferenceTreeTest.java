// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static boughwright.physics.trial.TreeText.text;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import boughwright.physics.rod.Measured;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rows of the reference tables (test resources, folder mechanics) run through a tree file and a
 * trial: those that a file can express, with straight rods, hung weights and guy-lines.
 */
class ReferenceTreeTest {
  /** Accuracy asked: position as a part of the length, tension and strain as parts of the value. */
  private static final double POSITION = 1e-4;

  private static final double TENSION = 0.002;
  private static final double STRAIN = 0.005;
  private static final double GRAVITY = 9.80665;

  private static final Measured MEASURED = new Measured(ReferenceTreeTest.class);

  @TempDir Path folder;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static void near(Point3 found, double x, double y, double z, double length) {
    MEASURED.check("position / length", found.distance(new Point3(x, y, z)) / length, POSITION);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/mechanics/a_elastica_tipload.csv", numLinesToSkip = 1)
  void weightOnPlainBranch_bendsItAsTheElastica(double alpha, double shortening, double drop) {
    // unit length 400 mm, caliper 12 mm, E = 6 GPa
    double stiffness = 6e9 * Math.PI * Math.pow(0.006, 4) / 4;
    double mass = alpha * stiffness / 0.16 / GRAVITY;
    TrialResult result =
        new TreeText(6, 2.4)
            .segment(level(400, 12, 12))
            .proposal(
                text(
                    "\"hung_weights\": [{\"segment\": \"s\", \"along\": 1, \"mass_kg\": %s}]",
                    mass))
            .tryIn(folder);
    assertThat(result.outcome().holds()).isTrue();
    near(result.segments().get(0).end(), 0.4 * (1 - shortening), 0, -0.4 * drop, 0.4);
  }

  /** Rows of a table, those of follower loads left out: a hung weight does not turn. */
  static Stream<Arguments> deadRows() throws IOException {
    return rows("/mechanics/c_tapered_tipload.csv").filter(row -> row.get()[2].equals("dead"));
  }

  /** Straight rods without stretching lines; the other rows run in physics.rod. */
  static Stream<Arguments> straightRows() throws IOException {
    return rows("/mechanics/d_line_cases.csv")
        .filter(row -> row.get()[8].equals("0") && row.get()[9].equals("0"))
        .filter(row -> !row.get()[1].toString().startsWith("rest"));
  }

  private static Stream<Arguments> rows(String resource) throws IOException {
    try (InputStream in = ReferenceTreeTest.class.getResourceAsStream(resource);
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT.parse(reader).getRecords().stream()
          .skip(1)
          .map(record -> Arguments.of((Object[]) record.values()))
          .toList()
          .stream();
    }
  }

  @ParameterizedTest
  @MethodSource("deadRows")
  void weightOnTaperedBranch_bendsItAsTheTable(ArgumentsAccessor row) {
    double taper = row.getDouble(0);
    double stiffness = 6e9 * Math.PI * Math.pow(0.008, 4) / 4;
    double mass = row.getDouble(1) * stiffness / 0.16 / GRAVITY;
    TrialResult result =
        new TreeText(6, 2.4)
            .segment(level(400, 16, 16 * (1 - taper)))
            .proposal(
                text(
                    "\"hung_weights\": [{\"segment\": \"s\", \"along\": 1, \"mass_kg\": %s}]",
                    mass))
            .tryIn(folder);
    SegmentTrial segment = result.segments().get(0);
    near(segment.end(), 0.4 * row.getDouble(3), 0, 0.4 * row.getDouble(4), 0.4);
    double strain = row.getDouble(7) * 0.008 / 0.4;
    Peak peak = result.peak().orElseThrow();
    MEASURED.check("strain", peak.bendingStrain() / strain - 1, STRAIN);
    assertThat(peak.side()).isEqualTo("top");
    // near the base the strain of some rows is level over a third of the length: compare the value
    assertThat(segment.moment())
        .isCloseTo(
            row.getDouble(6) * stiffness / 0.4,
            within(STRAIN * row.getDouble(6) * stiffness / 0.4));
  }

  private static String level(double length, double start, double end) {
    return text(
        "\"id\": \"s\", \"parent\": null, \"kind\": \"branch\", \"start_mm\": [0, 0, 0], \"end_mm\":"
            + " [%s, 0, 0], \"caliper_start_mm\": %s, \"caliper_end_mm\": %s",
        length, start, end);
  }

  @ParameterizedTest
  @MethodSource("straightRows")
  void guyLineOnStraightBranch_pullsAsTheTable(ArgumentsAccessor row) {
    String mode = row.getString(1);
    double up = Math.toRadians(row.getDouble(7));
    double length = row.getDouble(2);
    String hold =
        mode.startsWith("T=")
            ? "\"tension_N\": " + mode.substring(2)
            : "\"length_mm\": " + mode.substring(4);
    TrialResult result =
        new TreeText(row.getDouble(5) / 1000, row.getDouble(5) / 1000 * row.getDouble(6) / 2)
            .segment(
                text(
                    "\"id\": \"s\", \"parent\": null, \"kind\": \"branch\", \"start_mm\": [0,0,0],"
                        + " \"end_mm\": [%s, 0, %s], \"caliper_start_mm\": %s, \"caliper_end_mm\": %s",
                    length * Math.cos(up),
                    length * Math.sin(up),
                    2 * row.getDouble(3),
                    2 * row.getDouble(4)))
            .proposal(
                text(
                    "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"s\", \"along\": %s, \"anchor_mm\":"
                        + " [%s, %s, %s], %s}]",
                    row.getDouble(10) / length,
                    row.getDouble(11),
                    row.getDouble(12),
                    row.getDouble(13),
                    hold))
            .tryIn(folder);
    assertThat(result.outcome().holds()).isTrue();
    LineTrial line = result.lines().get(0);
    double tension = row.getDouble(15);
    MEASURED.check("tension", line.tension() / tension - 1, TENSION);
    assertThat(line.length()).isCloseTo(row.getDouble(16) / 1000, within(POSITION * length / 1000));
    near(
        line.pad(),
        row.getDouble(17) / 1000,
        row.getDouble(18) / 1000,
        row.getDouble(19) / 1000,
        length / 1000);
    near(
        result.segments().get(0).end(),
        row.getDouble(20) / 1000,
        row.getDouble(21) / 1000,
        row.getDouble(22) / 1000,
        length / 1000);
    double strain = row.getDouble(27);
    MEASURED.check("strain", result.peak().orElseThrow().bendingStrain() / strain - 1, STRAIN);
  }

  /**
   * Families f1 and u1: a weight of 4 N and 2 N at the tip of a side branch. The side branch leaves
   * the parent frame by the rotation vector (0.9, 0.5, 0); its direction follows by Rodrigues.
   */
  @ParameterizedTest
  @CsvSource({
    "18, 8, 9, 4, 4, 0.1412951671, 0.001822704152, 0.3741969978, 0.3079324151, 0.1064376648,"
        + " 0.2529831914, 0.003139618557",
    "12, 12, 6, 6, 2, 0.1424442332, 0.00219892503, 0.3737597732, 0.3093187646, 0.10695996,"
        + " 0.249133812, 0.0039061005821"
  })
  void weightOnSideBranch_bendsBothAsTheTable(ArgumentsAccessor row) {
    double up = Math.toRadians(70);
    double[] d3 = {Math.cos(up), 0, Math.sin(up)};
    double[] d1 = {0, 1, 0};
    double[] d2 = {
      d3[1] * d1[2] - d3[2] * d1[1], d3[2] * d1[0] - d3[0] * d1[2], d3[0] * d1[1] - d3[1] * d1[0]
    };
    double angle = Math.hypot(0.9, 0.5);
    double side = Math.sin(angle) / angle;
    double[] start = {240 * d3[0], 0, 240 * d3[2]};
    double[] end = new double[3];
    for (int k = 0; k < 3; k++) {
      // exp(skew(w)) e3 = (w2, -w1, 0) sin a / a + (0, 0, cos a) for w = (w1, w2, 0)
      double d = side * (0.5 * d1[k] - 0.9 * d2[k]) + Math.cos(angle) * d3[k];
      end[k] = start[k] + 250 * d;
    }
    TrialResult result =
        new TreeText(6, 2.4)
            .segment(
                text(
                    "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                        + " \"end_mm\": [%s, 0, %s], \"caliper_start_mm\": %s, \"caliper_end_mm\": %s",
                    400 * d3[0], 400 * d3[2], row.getDouble(0), row.getDouble(1)))
            .segment(
                text(
                    "\"id\": \"b\", \"parent\": \"t\", \"along\": 0.6, \"kind\": \"branch\","
                        + " \"end_mm\": [%s, %s, %s], \"caliper_start_mm\": %s, \"caliper_end_mm\": %s",
                    end[0], end[1], end[2], row.getDouble(2), 1.0 * row.getDouble(3)))
            .proposal(
                text(
                    "\"hung_weights\": [{\"segment\": \"b\", \"along\": 1, \"mass_kg\": %s}]",
                    row.getDouble(4) / GRAVITY))
            .tryIn(folder);
    assertThat(result.outcome().holds()).isTrue();
    near(
        result.segment("t").orElseThrow().end(),
        row.getDouble(5),
        row.getDouble(6),
        row.getDouble(7),
        0.65);
    near(
        result.segment("b").orElseThrow().end(),
        row.getDouble(8),
        row.getDouble(9),
        row.getDouble(10),
        0.65);
    double strain = row.getDouble(11);
    MEASURED.check("strain", result.peak().orElseThrow().bendingStrain() / strain - 1, STRAIN);
  }

  /** Family i: a straight rod pulled along its axis toward an anchor behind its base buckles. */
  @ParameterizedTest
  @CsvFileSource(resources = "/mechanics/i_line_buckling.csv", numLinesToSkip = 1)
  void lineAlongTheAxis_letsTheBranchBuckleAtTheTabledTension(
      double behind, double taper, double critical) {
    double stiffness = 6e9 * Math.PI * Math.pow(0.006, 4) / 4;
    for (double part : new double[] {0.998, 1.002}) {
      TrialResult result =
          new TreeText(6, 2.4)
              .segment(level(400, 12, 12 * (1 - taper)))
              .proposal(
                  text(
                      "\"guy_lines\": [{\"id\": \"g\", \"segment\": \"s\", \"along\": 1,"
                          + " \"anchor_mm\": [%s, 0, 0], \"tension_N\": %s}]",
                      -400 * behind - 1e-9, part * critical * stiffness / 0.16))
              .tryIn(folder);
      assertThat(result.outcome().holds()).isEqualTo(part < 1);
      assertThat(result.outcome().converged()).isTrue();
      assertThat(result.outcome().unstableModes()).isEqualTo(part < 1 ? 0 : 2);
      assertThat(result.segments().isEmpty()).isEqualTo(part > 1);
    }
  }
}
