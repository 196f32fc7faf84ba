// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.SectionResponse;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The section in closed form against its fibres, against a raster, and against closed forms. */
class CutDiscTest {
  private static final Measured MEASURED = new Measured(CutDiscTest.class);

  /** E = 1 and a radius of 1: moments and strains in those at which flow begins. */
  private static final SegmentWood UNIT = new SegmentWood(1, 0.0625, 1, "test");

  /** Fibres are taken at points and round the corner where flow begins, over the moment [1]. */
  private static final double FIBRES = 3e-3;

  /** Raster of 400 rows [1]. */
  private static final double RASTER = 1e-3;

  private final SectionResponse response = new SectionResponse();
  private final SectionResponse other = new SectionResponse();

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static SectionShape shape(double hollow, double middle, double width, double depth) {
    return new SectionShape(
        1, hollow, SectionShape.Face.NONE, new SectionShape.Groove(middle, width, depth));
  }

  static Stream<Arguments> shapes() {
    return Stream.of(
        Arguments.of(shape(0.5, 0, 0, 0)),
        Arguments.of(shape(0, -1.2, 0.5, 0.6)),
        Arguments.of(shape(0.4, 2, 0.3, 0.8)),
        // a cut right across: as wide as its floor
        Arguments.of(shape(0, 0.4, 2 * Math.sqrt(1 - 0.49), 0.3)),
        Arguments.of(shape(0, 0, 0.3, 1.2)));
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void answer_isThatOfFibresAndRaster(SectionShape shape) {
    FibreSection fibres = new FibreSection(UNIT, shape);
    CutDisc fast = new CutDisc(UNIT, shape);
    for (double turn : new double[] {0, 1, 2.2, 4, 5.5}) {
      for (double x : new double[] {0.3, 0.9, 1.3, 2, 6}) {
        double e1 = x * Math.cos(turn);
        double e2 = x * Math.sin(turn);
        fast.respond(e1, e2, 0.1, response);
        fibres.respond(e1, e2, 0.1, other);
        double size = Math.hypot(other.m1, other.m2);
        MEASURED.check("moment", (response.m1 - other.m1) / size, FIBRES);
        MEASURED.check("moment", (response.m2 - other.m2) / size, FIBRES);
        MEASURED.check("torsion", response.m3 / other.m3 - 1, FIBRES);
        MEASURED.check("work", response.energy / other.energy - 1, FIBRES);
        double most = fibres.fibres(e1, e2).tension();
        MEASURED.check("strain", (fast.fibres(e1, e2).tension() - most) / most, 2 * FIBRES);
        BruteSection.Bent bent = brute(shape).bendTo(e1, e2);
        MEASURED.check("raster", (response.m1 - bent.m1()) / size, RASTER);
        MEASURED.check("raster", (response.m2 - bent.m2()) / size, RASTER);
      }
    }
  }

  private static BruteSection brute(SectionShape shape) {
    double cos = Math.cos(shape.slot().middle());
    double sin = Math.sin(shape.slot().middle());
    return new BruteSection(
        400,
        (p1, p2) -> {
          double up = p1 * cos + p2 * sin;
          double aside = p2 * cos - p1 * sin;
          boolean cut = up > 1 - shape.slot().depth() && Math.abs(aside) < shape.slot().width() / 2;
          boolean hole = Math.hypot(p1, p2) < shape.hollow();
          return hole || cut ? BruteSection.NOTHING : BruteSection.GREEN;
        });
  }

  @Test
  void wholeDisc_isThatOfTheTable() {
    CutDisc disc = new CutDisc(UNIT, SectionShape.disc(1));
    for (double x : new double[] {0.5, 1, 1.01, 1.4, 3, 9, 40}) {
      disc.respond(x * 0.6, x * 0.8, 0, response);
      double moment = BentDisc.moment(x) * Math.PI / 4;
      assertThat(response.m1).isCloseTo(0.6 * moment, within(1e-9));
      assertThat(response.m2).isCloseTo(0.8 * moment, within(1e-9));
      assertThat(response.energy).isCloseTo(BentDisc.energy(x) * Math.PI / 4, within(1e-8 * x));
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void momentsAndTangents_areRates(SectionShape shape) {
    CutDisc law = new CutDisc(UNIT, shape);
    double h = 1e-6;
    double[][] at = {{4, 1}, {1, -2}, {0.2, 0.1}, {0, 1.8}, {-2.5, 0}};
    for (double[] e : at) {
      law.respond(e[0] + h, e[1], 0, response);
      law.respond(e[0] - h, e[1], 0, other);
      double moment = (response.energy - other.energy) / (2 * h);
      double k11 = (response.m1 - other.m1) / (2 * h);
      double k12 = (response.m2 - other.m2) / (2 * h);
      law.respond(e[0], e[1] + h, 0, response);
      law.respond(e[0], e[1] - h, 0, other);
      double k22 = (response.m2 - other.m2) / (2 * h);
      law.respond(e[0], e[1], 0, response);
      assertThat(response.m1).isCloseTo(moment, within(1e-7));
      assertThat(response.k11).isCloseTo(k11, within(1e-5));
      assertThat(response.k12).isCloseTo(k12, within(1e-5));
      assertThat(response.k22).isCloseTo(k22, within(1e-5));
      double[] back = law.strainUnder(response.m1, response.m2, 0);
      assertThat(back[0]).isCloseTo(e[0], within(1e-8));
      assertThat(back[1]).isCloseTo(e[1], within(1e-8));
    }
  }

  @Test
  void halfDisc_ofElasticWood_isAClosedForm() {
    // Gere and Timoshenko, Mechanics of Materials, appendix on plane areas (from memory)
    CutDisc half = new CutDisc(UNIT, shape(0, Math.PI / 2, 2, 1));
    half.respond(0.1, 0, 0, response);
    double across = Math.PI / 8 - 8 / (9 * Math.PI);
    assertThat(response.m1 / 0.1).isCloseTo(across, within(2e-3 * across));
    half.respond(0, 0.1, 0, response);
    assertThat(response.m2 / 0.1).isCloseTo(Math.PI / 8, within(1e-3));
  }

  @Test
  void momentBeyondCapacity_isRefusedWithoutNaN() {
    for (SectionShape shape : new SectionShape[] {shape(0.5, 0, 0, 0), shape(0, 1, 0.3, 0.6)}) {
      CutDisc law = new CutDisc(UNIT, shape);
      assertThat(law.canCarry(0.9, 0.1)).isTrue();
      assertThat(law.canCarry(3.3, 0.1)).isFalse();
      double[] strain = law.strainUnder(3.3, 0.1, 0);
      assertThat(Math.hypot(strain[0], strain[1])).isFinite().isGreaterThan(100);
    }
  }
}
