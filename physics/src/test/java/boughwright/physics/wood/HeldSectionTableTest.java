// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.SectionResponse;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/**
 * Family h of the reference tables through sections of radius 1 and E = 1 that never flow: closed
 * integrals of the history, made outside the project.
 */
class HeldSectionTableTest {
  private static final Measured MEASURED = new Measured(HeldSectionTableTest.class);

  /** One exponential, exact but for the printed digits, and for steps where the strain moves. */
  private static final double CLOSED = 1e-3;

  /** Fitted laws. */
  private static final double FITTED = 1e-2;

  private static final SegmentWood WOOD = new SegmentWood(1, 0.0625, 1e6, "unit");
  private static final double STIFFNESS = Math.PI / 4;

  /** Days; times need only be of one unit. */
  private static final Creep SOLID = creep(new Relaxation(List.of(new Relaxation.Mode(0.4, 30))));

  private static final Creep POWER =
      creep(Relaxation.fitted(t -> Math.pow(1 + 24 * t, -0.06), 1e-4, 1e4));
  private static final Creep LOG =
      creep(Relaxation.fitted(t -> 1 - 0.05 * Math.log(1 + 24 * t), 1e-4, 1e3));

  /** t^-0.06, from a time so short that it is as good as none. */
  private static final Creep PURE_POWER =
      creep(Relaxation.fitted(t -> Math.pow(1 + 1e9 * t, -0.06), 1e-10, 1e6));

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static Creep creep(Relaxation law) {
    return new Creep(law, 0, 1);
  }

  private static List<CSVRecord> rows(String file) throws IOException {
    try (Reader in =
        new InputStreamReader(
            HeldSectionTableTest.class.getResourceAsStream("/mechanics/" + file),
            StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setSkipHeaderRecord(true)
          .setHeader()
          .get()
          .parse(in)
          .getRecords();
    }
  }

  private static double number(CSVRecord row, int column) {
    return Double.parseDouble(row.get(column));
  }

  private static double moment(WoodSection section, double strain) {
    SectionResponse out = new SectionResponse();
    section.respond(strain, 0, 0, out);
    return out.m1 / STIFFNESS;
  }

  @Test
  void stagedHistories_haveTheStressOfTheTable() throws IOException {
    for (CSVRecord row : rows("h_staged_relaxation.csv")) {
      double t = number(row, 0);
      staged("staged, power", POWER, t, number(row, 2), FITTED);
      staged("staged, log", LOG, t, number(row, 3), FITTED);
      staged("staged, one mode", SOLID, t, number(row, 4), CLOSED);
    }
  }

  private static void staged(String kind, Creep creep, double t, double stress, double allowed) {
    double[] at = {0, 7, 21, Double.POSITIVE_INFINITY};
    double[] strain = {0.002, 0.0035, 0.0045};
    WoodSection section = new FreshDisc(WOOD, 1);
    int k = 0;
    for (; at[k + 1] < t; k++) {
      section = section.after(strain[k], 0, 0, Spell.of(at[k + 1] - at[k], creep));
    }
    section = section.after(strain[k], 0, 0, Spell.of(t - at[k], creep));
    MEASURED.check(kind, 5000 * moment(section, strain[k]) / stress - 1, allowed);
  }

  @Test
  void releasesAfterAHold_comeBackAsTheTableSays() throws IOException {
    for (CSVRecord row : rows("h_release_after_hold.csv")) {
      double held = number(row, 0);
      double since = number(row, 1) - held;
      released("released, power", PURE_POWER, held, since, number(row, 2), FITTED);
      released("released, one mode", SOLID, held, since, number(row, 3), CLOSED);
    }
  }

  private static void released(
      String kind, Creep creep, double held, double since, double ratio, double allowed) {
    WoodSection section = new FreshDisc(WOOD, 1).after(1, 0, 0, Spell.of(held, creep));
    double done = 0;
    double start = 1e-10;
    int steps = creep == SOLID ? 1500 : 200;
    for (int k = 0; k <= steps; k++) {
      double until = start * Math.pow(since / start, (double) k / steps);
      Spell spell = Spell.of(until - done, creep);
      double[] from = section.strainUnder(0, 0, 0);
      double[] to = section.after(from[0], 0, 0, spell).strainUnder(0, 0, 0);
      // where it goes is where it then rests: a straight line in where it goes
      double first = section.going(from, from, spell).strainUnder(0, 0, 0)[0];
      double second = section.going(from, to, spell).strainUnder(0, 0, 0)[0];
      double slope = to[0] == from[0] ? 0 : (second - first) / (to[0] - from[0]);
      to[0] = (first - slope * from[0]) / (1 - slope);
      section = section.going(from, to, spell);
      done = until;
    }
    // where less than a hundredth of the strain is left, that hundredth counts
    double scale = Math.max(ratio, 1e-2);
    MEASURED.check(kind, (section.strainUnder(0, 0, 0)[0] - ratio) / scale, allowed);
  }
}
