// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.SectionLine;
import boughwright.physics.rod.SectionResponse;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sections held, tightened, let go and grown round. */
class HeldSectionTest {
  private static final Measured MEASURED = new Measured(HeldSectionTest.class);
  private static final double DAY = 86_400;
  private static final double YIELD = 0.003;
  private static final SegmentWood WOOD = new SegmentWood(1, 0.0625, YIELD, "unit");
  private static final SegmentWood ELASTIC =
      new SegmentWood(1, 0.0625, Double.POSITIVE_INFINITY, "unit");
  private static final double STIFFNESS = Math.PI / 4;

  /** Retarded elements and what sets, given to both sides of the comparison. */
  private static final double[] AMOUNT = {0.1, 0.15, 0.15};

  private static final double[] TIME = {2000, 60_000, 2e6};
  private static final double SET = 0.12;
  private static final double SET_TIME = 30_000;

  private static final Creep CREEP =
      new Creep(
          Relaxation.ofRetardation(
              List.of(
                  new Relaxation.Retarded(AMOUNT[0], TIME[0]),
                  new Relaxation.Retarded(AMOUNT[1], TIME[1]),
                  new Relaxation.Retarded(AMOUNT[2], TIME[2]))),
          SET,
          SET_TIME);

  /** Eighty fibres carry a section through time, with its axis held where it was in a wait. */
  private static final double SAME = 1e-2;

  /** Freed wood is not asked what sets while it creeps back, a tenth of the stresses left in it. */
  private static final double FOR_GOOD = 1e-2;

  /** Elastic sums over the fibres are exact. */
  private static final double EXACT = 1e-9;

  private final SectionResponse out = new SectionResponse();

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private double moment(WoodSection section, double curvature) {
    section.respond(curvature, 0, 0, out);
    return out.m1 / STIFFNESS / YIELD;
  }

  @Test
  void tightenedAfterWaits_andLetGo_isAsItsFibresInSmallSteps() {
    BruteTime brute = new BruteTime(YIELD, AMOUNT, TIME, SET, SET_TIME);
    WoodSection section = new FreshDisc(WOOD, 1);
    double[] bends = {2 * YIELD, 3 * YIELD, 4.5 * YIELD};
    double[] waits = {7 * DAY, 14 * DAY, 60 * DAY};
    for (int k = 0; k < bends.length; k++) {
      brute.bendTo(bends[k]);
      double before = brute.moment() / STIFFNESS / YIELD;
      MEASURED.check("moment when tightened", moment(section, bends[k]) - before, SAME);
      brute.waitFor(waits[k], false);
      section = section.after(bends[k], 0, 0, Spell.of(waits[k], CREEP));
      double left = brute.moment() / STIFFNESS / YIELD;
      MEASURED.check("moment left", moment(section, bends[k]) - left, SAME);
    }
    double kept = brute.letGo();
    double found = section.strainUnder(0, 0, 0)[0];
    MEASURED.check("curvature when let go", (found - kept) / bends[2], SAME);
    brute.waitFor(400 * DAY, true);
    double settled = section.bentTo(found, 0).freed().strainUnder(0, 0, 0)[0];
    MEASURED.check("curvature for good", (settled - brute.letGo()) / bends[2], FOR_GOOD);
    assertThat(settled).isBetween(0.1 * bends[2], 0.8 * found);
  }

  /** Flow follows the stress there is: relaxed fibres take a further bend before they flow. */
  @Test
  void relaxedWood_takesMoreBeforeItFlows() {
    WoodSection bent = new FreshDisc(WOOD, 1).after(YIELD, 0, 0, Spell.of(30 * DAY, CREEP));
    double left = moment(bent, YIELD);
    assertThat(left).isBetween(0.6, 0.75);
    double further = YIELD * (1 + 0.8 * (1 - left));
    assertThat(moment(bent, further) - left).isCloseTo(further / YIELD - 1, within(1e-9));
  }

  @Test
  void whatSets_doesNotGrowWithoutMoreLoad_andDoesNotComeBack() {
    Creep setting = new Creep(Relaxation.NONE, SET, SET_TIME);
    WoodSection once = new FreshDisc(WOOD, 1).after(0.5 * YIELD, 0, 0, Spell.of(30 * DAY, setting));
    double kept = once.strainUnder(0, 0, 0)[0];
    // of a strain held, set / (1 + set) sets
    assertThat(kept).isCloseTo(0.5 * YIELD * SET / (1 + SET), within(1e-3 * kept));
    WoodSection free = once.after(kept, 0, 0, Spell.of(300 * DAY, setting));
    WoodSection again = free.after(0.5 * YIELD, 0, 0, Spell.of(300 * DAY, setting));
    assertThat(free.strainUnder(0, 0, 0)[0]).isCloseTo(kept, within(1e-6 * kept));
    assertThat(again.strainUnder(0, 0, 0)[0]).isCloseTo(kept, within(1e-3 * kept));
  }

  /** Strains of the outermost fibres are of the wood as it grew, whatever it has crept. */
  @Test
  void creep_doesNotTakeStrainAway() {
    WoodSection fresh = new FreshDisc(WOOD, 1);
    WoodSection held = fresh.after(3 * YIELD, 0, 0, Spell.of(90 * DAY, CREEP));
    FibreStrains before = fresh.fibres(3 * YIELD, 0);
    FibreStrains after = held.fibres(3 * YIELD, 0);
    assertThat(after.tension()).isCloseTo(before.tension(), within(0.03 * before.tension()));
    assertThat(after.compression())
        .isCloseTo(before.compression(), within(0.03 * before.compression()));
  }

  /** Springback of a core with a ring laid stress-free in the bend: E0 r^4 over the sum of both. */
  @ParameterizedTest
  @CsvSource({"0.05, 1", "0.1, 0.7", "0.2, 1", "0.5, 0.85"})
  void ring_holdsTheBendByItsStiffness(double ring, double ratio) {
    WoodSection core = WoodLine.round(ELASTIC, taper()).at(0);
    Spell season = new Spell(90 * DAY, Creep.NONE, ring, ratio);
    WoodSection grown = core.after(0.004, 0.002, 0.01, season);
    double both = 1 + ratio * (Math.pow(1 + ring, 4) - 1);
    double[] rest = grown.strainUnder(0, 0, 0);
    MEASURED.check("ring, bend kept", rest[0] / 0.004 - (1 - 1 / both), EXACT);
    MEASURED.check("ring, bend kept", rest[1] / 0.002 - (1 - 1 / both), EXACT);
    MEASURED.check("ring, twist kept", rest[2] / 0.01 - (1 - 1 / both), EXACT);
    grown.respond(rest[0] + 1, rest[1], rest[2] + 1, out);
    MEASURED.check("ring, stiffness", out.m1 / STIFFNESS / both - 1, EXACT);
    MEASURED.check("ring, torsion", out.m3 / (0.0625 * Math.PI / 2) / both - 1, EXACT);
  }

  /** The table of such springbacks that was made outside, equal moduli: 0.82, 0.48, 0.26. */
  @ParameterizedTest
  @CsvSource({"0.05, 0.82", "0.10, 0.68", "0.20, 0.48", "0.30, 0.35", "0.40, 0.26", "0.50, 0.20"})
  void ring_agreesWithThePrintedTable(double ring, double left) {
    WoodSection core = WoodLine.round(ELASTIC, taper()).at(0);
    WoodSection grown = core.after(1e-3, 0, 0, new Spell(1, Creep.NONE, ring, 1));
    assertThat(1 - grown.strainUnder(0, 0, 0)[0] / 1e-3).isCloseTo(left, within(0.006));
  }

  @Test
  void manyThinRings_areOneThick() {
    WoodSection thick = new FreshDisc(WOOD, 1).after(2 * YIELD, 0, 0, ring(0.3));
    WoodSection thin = new FreshDisc(WOOD, 1);
    for (int k = 0; k < 6; k++) {
      thin = thin.after(2 * YIELD, 0, 0, ring(0.05));
    }
    double kept = thick.strainUnder(0, 0, 0)[0];
    assertThat(thin.strainUnder(0, 0, 0)[0]).isCloseTo(kept, within(1e-3 * kept));
  }

  private static Spell ring(double thickness) {
    return new Spell(0, CREEP, thickness, 0.9);
  }

  private static SectionLine.RadiusTaper taper() {
    return new SectionLine.RadiusTaper(1, 1, 1);
  }

  /** Twist relaxes by the same law as a fibre. */
  @Test
  void twist_relaxesAsAFibre() {
    WoodSection held = new FreshDisc(WOOD, 1).after(0, 0, 0.01, Spell.of(5 * DAY, CREEP));
    held.respond(0, 0, 0.01, out);
    double first = 0.0625 * Math.PI / 2 * 0.01;
    assertThat(out.m3 / first).isCloseTo(CREEP.left(5 * DAY), within(1e-12));
  }

  /** Work over strain is the moment, on both sides of where fibres begin to flow again. */
  @Test
  void work_hasTheMomentsAsItsRate() {
    WoodSection held =
        new FreshDisc(WOOD, 1).after(3 * YIELD, YIELD, 0.01, new Spell(9 * DAY, CREEP, 0.1, 0.8));
    double h = 1e-3 * YIELD;
    for (double[] at :
        new double[][] {{2.5, 1, 0.01}, {3.2, 1, 0.02}, {4, 2, 0}, {0, -1, 0.01}, {-1, 0, 0}}) {
      double e1 = at[0] * YIELD;
      double e2 = at[1] * YIELD;
      held.respond(e1, e2, at[2], out);
      double m1 = out.m1;
      double m3 = out.m3;
      MEASURED.check(
          "moment against work",
          (energy(held, e1 + h, e2, at[2]) - energy(held, e1 - h, e2, at[2])) / (2 * h) - m1,
          1e-5 * YIELD);
      MEASURED.check(
          "torsion against work",
          (energy(held, e1, e2, at[2] + h) - energy(held, e1, e2, at[2] - h)) / (2 * h) - m3,
          1e-5 * YIELD);
    }
  }

  private double energy(WoodSection section, double e1, double e2, double e3) {
    section.respond(e1, e2, e3, out);
    return out.energy;
  }
}
