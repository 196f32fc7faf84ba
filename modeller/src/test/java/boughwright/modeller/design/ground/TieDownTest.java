// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.geometry.Point3;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Against statics worked by hand. */
class TieDownTest {
  private static final double GRAVITY = 9.80665;
  private static final double CLOSE = 1e-9;

  /** Bears on the corners of a square of 200 mm, 30 mm under the soil. */
  private static final List<Point3> SQUARE =
      List.of(
          new Point3(0.1, 0.1, -0.03),
          new Point3(-0.1, 0.1, -0.02),
          new Point3(-0.1, -0.1, -0.03),
          new Point3(0.1, -0.1, -0.03),
          new Point3(0.01, 0.02, -0.01));

  private static TieDown tied(double mass, Point3 centre, TieDown.Push push) {
    return TieDown.of(new Balance.Body(mass, centre), SQUARE, push).orElseThrow();
  }

  /**
   * 2 kg over the middle, pushed by 20 N at 0.3 m: 20 x 0.33 = 6.6 N m over an edge 0.1 m away,
   * against 2 x 9.80665 x 0.1 = 1.96133 N m. Two ties 50 mm to either side have arms of 50 and 150
   * mm over a side edge, 100 and 100 mm over a front edge: 4.63867 / 0.2 = 23.19335 N each.
   */
  @Test
  void pushFromTheWorstSide_isHeldByTwoTies() {
    TieDown down = tied(2, new Point3(0, 0, 0.2), new TieDown.Push(20, 0.3));
    List<Point3> two = List.of(new Point3(0.05, 0, 0), new Point3(-0.05, 0, 0));
    assertThat(down.tension(two).orElseThrow()).isCloseTo(23.19335, within(CLOSE));
    assertThat(down.rocksAt()).isCloseTo(1.96133 / 0.33, within(CLOSE));
  }

  /** Centre of mass 60 mm to the right: 40 mm to that edge, 6.6 - 0.784532 over ties of 0.4 m. */
  @Test
  void leaningTree_needsMore_onTheSideItLeansTo() {
    TieDown down = tied(2, new Point3(0.06, 0, 0.2), new TieDown.Push(20, 0.3));
    double asked = (6.6 - 2 * GRAVITY * 0.04) / 0.4;
    assertThat(down.tension(TieDown.round(4, 0.05)).orElseThrow()).isCloseTo(asked, within(CLOSE));
  }

  /** Beyond the edge it falls untied: 2 x g x 0.02 over arms of 0.4 m. */
  @Test
  void treeBeyondItsRoots_fallsUntied_andIsHeldWithoutAPush() {
    TieDown down = tied(2, new Point3(0.12, 0, 0.2), new TieDown.Push(0, 0.3));
    assertThat(down.rocksAt()).isLessThan(0);
    assertThat(down.tension(TieDown.round(4, 0.05)).orElseThrow())
        .isCloseTo(2 * GRAVITY * 0.02 / 0.4, within(CLOSE));
  }

  @Test
  void heavyTree_needsNoTie_andTiesBeyondTheEdgeHoldNothing() {
    assertThat(
            tied(40, new Point3(0, 0, 0.2), new TieDown.Push(20, 0.3))
                .tension(TieDown.round(3, 0.05))
                .orElseThrow())
        .isZero();
    assertThat(
            tied(2, new Point3(0, 0, 0.2), new TieDown.Push(20, 0.3))
                .tension(List.of(new Point3(0.2, 0, 0))))
        .isEmpty();
  }

  @Test
  void ties_standEvenlyRound() {
    for (int count = 2; count <= 4; count++) {
      List<Point3> places = TieDown.round(count, 0.05);
      assertThat(places).hasSize(count);
      double x = places.stream().mapToDouble(Point3::x).sum();
      double y = places.stream().mapToDouble(Point3::y).sum();
      assertThat(Math.hypot(x, y)).isLessThan(CLOSE);
      assertThat(places).allMatch(p -> Math.abs(Math.hypot(p.x(), p.y()) - 0.05) < CLOSE);
    }
    assertThat(TieDown.round(2, 0.05)).allMatch(place -> Math.abs(place.y()) < CLOSE);
  }

  @Test
  void placesOnALine_bearNothing() {
    List<Point3> line = new ArrayList<>();
    for (int n = 0; n < 5; n++) {
      line.add(new Point3(0.01 * n, 0.02 * n, -0.01));
    }
    Balance.Body body = new Balance.Body(1, new Point3(0, 0, 0.2));
    assertThat(TieDown.of(body, line, new TieDown.Push(20, 0.3))).isEmpty();
    assertThat(TieDown.of(body, List.of(), new TieDown.Push(20, 0.3))).isEmpty();
  }

  /**
   * Any heap of places: pushes from all sides, each about the farthest place that way. With the
   * tension told none of them rocks the tree over any edge; with a hundredth less one does.
   */
  @Test
  void tension_isJustEnough_overEverySide() {
    Random random = new Random(8);
    int checked = 0;
    for (int trial = 0; trial < 50; trial++) {
      List<Point3> places = new ArrayList<>();
      for (int n = 0; n < 8; n++) {
        places.add(new Point3(0.1 * random.nextGaussian(), 0.1 * random.nextGaussian(), -0.02));
      }
      Point3 centre = new Point3(0.02 * random.nextGaussian(), 0.02 * random.nextGaussian(), 0.1);
      TieDown.Push push = new TieDown.Push(20, 0.25);
      TieDown down = TieDown.of(new Balance.Body(1.5, centre), places, push).orElseThrow();
      List<Point3> ties = TieDown.round(3, 0.02);
      if (down.tension(ties).isEmpty() || down.tension(ties).getAsDouble() == 0) {
        continue;
      }
      double tension = down.tension(ties).getAsDouble();
      assertThat(worst(places, centre, ties, tension)).isLessThan(1e-6);
      assertThat(worst(places, centre, ties, 0.99 * tension)).isGreaterThan(0);
      checked++;
    }
    assertThat(checked).isGreaterThan(30);
  }

  /** Moment left over, over the line through any two places that has all others on one side. */
  private static double worst(
      List<Point3> places, Point3 centre, List<Point3> ties, double tension) {
    double worst = Double.NEGATIVE_INFINITY;
    for (Point3 a : places) {
      for (Point3 b : places) {
        if (a.equals(b) || places.stream().anyMatch(p -> side(a, b, p) < -1e-12)) {
          continue;
        }
        double moment = 20 * (0.25 + 0.02) - 1.5 * GRAVITY * side(a, b, centre);
        for (Point3 tie : ties) {
          moment -= tension * Math.max(0, side(a, b, tie));
        }
        worst = Math.max(worst, moment);
      }
    }
    return worst;
  }

  private static double side(Point3 a, Point3 b, Point3 p) {
    double cross = (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
    return cross / Math.hypot(b.x() - a.x(), b.y() - a.y());
  }
}
