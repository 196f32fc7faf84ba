// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Trees.At;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Turns, bows, tapers and volumes against what geometry says of circles, cones and steps. */
class LineShapeTest {
  /** A trunk along a circle in the plane of x and z, rising from the origin. */
  private static WoodLine circle(double radius, double turn, int pieces) {
    At[] places = new At[pieces + 1];
    for (int n = 0; n <= pieces; n++) {
      double angle = turn * n / pieces;
      places[n] = new At(radius * (1 - Math.cos(angle)), 0, radius * Math.sin(angle), 10);
    }
    return Trees.trunk(places).structure().main().line();
  }

  @Test
  void turnOfACircle_isItsArcOverItsRadius_andItsInsideIsTheCentre() {
    double radius = 200;
    WoodLine line = circle(radius, Math.toRadians(120), 120);
    double middle = line.length() / 2;
    Curves.Turn turn = Curves.at(line, middle).orElseThrow();
    double beside = Math.max(1.5 * 0.010, 0.06 * line.length());
    assertThat(turn.angle()).isCloseTo(beside / (radius / 1000), within(0.002));
    Vector3 toCentre = new Point3(radius / 1000, 0, 0).minus(line.point(middle));
    double off = turn.inside().direction().angleTo(toCentre.direction());
    assertThat(Math.toDegrees(off)).isLessThan(1.5);
  }

  @Test
  void lineEnds_haveNoTurn() {
    WoodLine line = circle(200, Math.toRadians(90), 40);
    assertThat(Curves.at(line, 0)).isEmpty();
    assertThat(Curves.at(line, line.length())).isEmpty();
  }

  /** The bow of a flat arc over its chord is an eighth of its turn (sagitta of a circle). */
  @Test
  void arc_isStraightAsLongAsAnEighthOfItsTurnIsWithinTheLimit() {
    for (double bow : new double[] {0.006, 0.03}) {
      double turn = 8 * bow;
      At[] places = new At[41];
      for (int n = 0; n <= 40; n++) {
        double angle = turn * n / 40;
        places[n] = new At(1000 * (1 - Math.cos(angle)), 0, 1000 * Math.sin(angle), 20 - 0.3 * n);
      }
      StraightStretches stretches = new StraightStretches(Trees.trunk(places).structure());
      assertThat(stretches.isWhole()).as("bow %s", bow).isEqualTo(bow < 0.012);
    }
  }

  @Test
  void rises_areFromEachPinchToTheThickestAfterIt() {
    WoodLine line =
        Trees.trunk(
                new At(0, 0, 0, 40),
                new At(0, 0, 50, 20),
                new At(0, 0, 100, 30),
                new At(0, 0, 150, 15),
                new At(0, 0, 200, 18),
                new At(0, 0, 250, 5))
            .structure()
            .main()
            .line();
    List<ReverseTaper.Rise> rises = ReverseTaper.rises(line, 1.05, 0.6e-3);
    assertThat(rises).hasSize(2);
    assertThat(rises.get(0).low().s()).isCloseTo(0.05, within(1e-12));
    assertThat(rises.get(0).high().s()).isCloseTo(0.10, within(1e-12));
    assertThat(rises.get(0).ratio()).isCloseTo(1.5, within(1e-12));
    assertThat(rises.get(1).ratio()).isCloseTo(1.2, within(1e-12));
    assertThat(ReverseTaper.rises(line, 1.3, 0.6e-3)).hasSize(1);
    assertThat(ReverseTaper.rises(line, 1.05, 4e-3)).hasSize(1);
  }

  /** Against a sum over thin slices, which knows no formula of frusta. */
  @Test
  void frustum_hasTheVolumeAndMiddleOfItsSlices() {
    Frustum piece = new Frustum(0, new Point3(0, 0, 0), new Point3(0, 0, 0.3), 0.05, 0.02);
    int slices = 100_000;
    double volume = 0;
    double moment = 0;
    for (int n = 0; n < slices; n++) {
      double part = (n + 0.5) / slices;
      double radius = 0.05 + part * (0.02 - 0.05);
      double own = Math.PI * radius * radius * 0.3 / slices;
      volume += own;
      moment += own * 0.3 * part;
    }
    assertThat(Balance.volume(piece)).isCloseTo(volume, within(1e-9));
    assertThat(Balance.middle(piece).z()).isCloseTo(moment / volume, within(1e-7));
  }

  /** A cone has three quarters of its base's caliper at a quarter, so half of a shorter one. */
  @Test
  void taperOfACone_isReadHalfWayUp_andAgainAfterTheTop() {
    Trees cone = Trees.trunk(new At(0, 0, 0, 40), new At(0, 0, 200, 20), new At(0, 0, 399, 0.1));
    Structure structure = cone.structure();
    Aftermath cut = new Cuts(structure).shortening(structure.main(), 0.2);
    assertThat(cut.taper().before()).isCloseTo(0.5, within(0.002));
    assertThat(cut.taper().after()).isCloseTo(0.75, within(1e-9));
    assertThat(cut.cuts().get(0).width()).isCloseTo(0.020, within(1e-9));
  }
}
