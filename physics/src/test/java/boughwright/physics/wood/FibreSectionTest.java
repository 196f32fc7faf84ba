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
import org.junit.jupiter.params.provider.ValueSource;

/** Sections fibre by fibre against closed forms, {@link BentDisc} and {@link BruteSection}. */
class FibreSectionTest {
  private static final Measured MEASURED = new Measured(FibreSectionTest.class);

  /** E = 1 and a radius of 1: moments and strains in those at which flow begins. */
  private static final SegmentWood UNIT = new SegmentWood(1, 0.0625, 1, "test");

  /** Of the fibres' number, where flow is some way on; largest where it just begins. */
  private static final double FIBRES = 3e-3;

  /** Raster of 400 rows. */
  private static final double RASTER = 4e-3;

  private final SectionResponse response = new SectionResponse();

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static FibreSection section(SectionShape shape) {
    return new FibreSection(UNIT, shape);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.4, 0.95, 1, 1.1, 1.4, 2, 3, 5, 9, 20, 40})
  void disc_isThatOfTheTable(double x) {
    FibreSection disc = section(SectionShape.disc(1));
    for (double turn : new double[] {0, 0.3, 1.1, 2.9}) {
      disc.respond(x * Math.cos(turn), x * Math.sin(turn), 0, response);
      double along = response.m1 * Math.cos(turn) + response.m2 * Math.sin(turn);
      double aside = response.m2 * Math.cos(turn) - response.m1 * Math.sin(turn);
      double moment = BentDisc.moment(x) * Math.PI / 4;
      MEASURED.check("disc, moment", along / moment - 1, FIBRES);
      MEASURED.check("disc, moment across", aside / moment, FIBRES);
      FibreStrains strains = disc.fibres(x * Math.cos(turn), x * Math.sin(turn));
      MEASURED.check("disc, tension", strains.tension() / BentDisc.tension(x) - 1, 2 * FIBRES);
    }
  }

  @Test
  void hollowAndHalfDisc_ofElasticWood_areClosedForms() {
    // Gere and Timoshenko, Mechanics of Materials, appendix on plane areas (from memory)
    section(new SectionShape(1, 0.6, SectionShape.Face.NONE, SectionShape.Groove.NONE))
        .respond(0.1, 0, 1, response);
    assertThat(response.m1 / 0.1).isCloseTo(Math.PI / 4 * (1 - 0.1296), within(1e-12));
    assertThat(response.m3).isCloseTo(0.0625 * Math.PI / 2 * (1 - 0.1296), within(1e-12));
    SectionShape half =
        new SectionShape(1, 0, SectionShape.Face.NONE, new SectionShape.Groove(Math.PI / 2, 2, 1));
    section(half).respond(0.1, 0, 1, response);
    double across = Math.PI / 8 - 8 / (9 * Math.PI);
    // the slot is taken out at points between its sides, which the arc's ends blunt
    assertThat(response.m1 / 0.1).isCloseTo(across, within(5e-3 * across));
    assertThat(response.m2).isCloseTo(0, within(1e-12));
    double area = Math.PI / 2;
    double twist = Math.pow(area, 4) / (4 * Math.PI * Math.PI * (across + Math.PI / 8));
    assertThat(response.m3).isCloseTo(0.0625 * twist, within(5e-3 * twist));
    section(half).respond(0, 0.1, 0, response);
    assertThat(response.m2 / 0.1).isCloseTo(Math.PI / 8, within(5e-3));
  }

  static Stream<Arguments> shapes() {
    SectionShape.Face dead = new SectionShape.Face(0.7, 1.4, 0.35);
    SectionShape.Groove slot = new SectionShape.Groove(-1.2, 0.5, 0.6);
    return Stream.of(
        Arguments.of(new SectionShape(1, 0.5, SectionShape.Face.NONE, SectionShape.Groove.NONE)),
        Arguments.of(new SectionShape(1, 0, dead, SectionShape.Groove.NONE)),
        Arguments.of(new SectionShape(1, 0, SectionShape.Face.NONE, slot)),
        Arguments.of(new SectionShape(1, 0.3, dead, slot)));
  }

  private static BruteSection brute(SectionShape shape) {
    return new BruteSection(
        400,
        (p1, p2) -> {
          double up = p1 * Math.cos(shape.slot().middle()) + p2 * Math.sin(shape.slot().middle());
          double aside =
              p2 * Math.cos(shape.slot().middle()) - p1 * Math.sin(shape.slot().middle());
          boolean cut = up > 1 - shape.slot().depth() && Math.abs(aside) < shape.slot().width() / 2;
          double turned = Math.atan2(p2, p1) - shape.dead().middle();
          double away = Math.abs(Math.atan2(Math.sin(turned), Math.cos(turned)));
          boolean dead =
              away < shape.dead().width() / 2 && Math.hypot(p1, p2) > 1 - shape.dead().depth();
          boolean hole = Math.hypot(p1, p2) < shape.hollow();
          return hole || cut ? BruteSection.NOTHING : dead ? BruteSection.DEAD : BruteSection.GREEN;
        });
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void shapes_bendAsTheirRasterDoes(SectionShape shape) {
    for (double turn : new double[] {0, 1, 2.2, 4}) {
      for (double x : new double[] {0.3, 2, 6}) {
        double e1 = x * Math.cos(turn);
        double e2 = x * Math.sin(turn);
        section(shape).respond(e1, e2, 0, response);
        BruteSection.Bent bent = brute(shape).bendTo(e1, e2);
        double size = Math.hypot(bent.m1(), bent.m2());
        MEASURED.check("shapes, moment", (response.m1 - bent.m1()) / size, RASTER);
        MEASURED.check("shapes, moment", (response.m2 - bent.m2()) / size, RASTER);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void momentsAndTangents_areRates(SectionShape shape) {
    WoodSection law = section(shape).bentTo(3, 1);
    double h = 1e-6;
    double[][] at = {{4, 1}, {1, -2}, {0.2, 0.1}};
    for (double[] e : at) {
      law.respond(e[0] + h, e[1], 0, response);
      double energy = response.energy;
      double m1 = response.m1;
      double m2 = response.m2;
      law.respond(e[0] - h, e[1], 0, response);
      double moment = (energy - response.energy) / (2 * h);
      double k11 = (m1 - response.m1) / (2 * h);
      double k12 = (m2 - response.m2) / (2 * h);
      law.respond(e[0], e[1], 0, response);
      assertThat(response.m1).isCloseTo(moment, within(1e-7));
      assertThat(response.k11).isCloseTo(k11, within(1e-5));
      assertThat(response.k12).isCloseTo(k12, within(1e-5));
      double[] back = law.strainUnder(response.m1, response.m2, 0);
      assertThat(back[0]).isCloseTo(e[0], within(1e-8));
      assertThat(back[1]).isCloseTo(e[1], within(1e-8));
    }
  }

  @Test
  void outermostLivingFibre_isBesideDeadWoodAndSlot() {
    FibreSection faced =
        section(
            new SectionShape(
                1, 0, new SectionShape.Face(Math.PI / 2, 1, 0.3), SectionShape.Groove.NONE));
    // bending about axis 1 stretches the side at a quarter turn, where the wood is dead
    double edge = Math.cos(0.5);
    assertThat(faced.fibres(0.1, 0).tension()).isCloseTo(0.1 * edge, within(1e-8));
    assertThat(faced.fibres(0.1, 0).compression()).isCloseTo(0.1, within(1e-8));
  }

  @Test
  void momentBeyondCapacity_isRefusedWithoutNaN() {
    for (WoodSection law :
        new WoodSection[] {
          section(SectionShape.disc(1)), new FreshDisc(UNIT, 1), new FreshDisc(UNIT, 1).bentTo(3, 0)
        }) {
      assertThat(law.canCarry(2, 0)).isTrue();
      assertThat(law.canCarry(3.3, 0.1)).isFalse();
      double[] strain = law.strainUnder(3.3, 0.1, 0);
      assertThat(Math.hypot(strain[0], strain[1])).isFinite().isGreaterThan(100);
    }
  }
}
