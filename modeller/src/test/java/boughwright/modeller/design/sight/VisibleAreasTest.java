// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Areas seen against closed forms (plane geometry) and against rays cast one by one. */
class VisibleAreasTest {
  private static final double ROUNDING = 1e-12;

  /** As the program looks at trees. */
  private static final int FINENESS = 60;

  private static VisibleAreas areas(Shapes shapes, int fineness) {
    boolean[] all = new boolean[shapes.count()];
    Arrays.fill(all, true);
    return new VisibleAreas(shapes, fineness, all);
  }

  private static VisibleAreas alone(Frustum piece) {
    return areas(new Shapes(List.of(piece), new boolean[1], new boolean[1], List.of()), FINENESS);
  }

  private static Direction3 random(Random random) {
    return Direction3.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
  }

  private static Point3 place(Random random, double spread) {
    return Point3.ORIGIN.plus(random(random).times(spread * Math.cbrt(random.nextDouble())));
  }

  @Test
  void ball_coversADisc_fromEverySide() {
    // Two equal ends nearly in one place are a sphere: pi r^2.
    Point3 middle = new Point3(0.1, -0.2, 0.3);
    VisibleAreas areas =
        alone(new Frustum(0, middle, middle.plus(new Vector3(1e-15, 0, 0)), 0.05, 0.05));
    Random random = new Random(1);
    for (int n = 0; n < 50; n++) {
      areas.look(random(random));
      assertThat(areas.area(0)).isCloseTo(Math.PI * 0.0025, within(1e-9));
      assertThat(areas.seen(0)).isCloseTo(areas.area(0), within(ROUNDING));
    }
  }

  @Test
  void cylinderWithRoundEnds_coversLengthTimesDiameterTimesSineAndADisc() {
    double radius = 0.03;
    double length = 0.2;
    VisibleAreas areas =
        alone(new Frustum(0, Point3.ORIGIN, new Point3(0, 0, length), radius, radius));
    for (int degrees = 0; degrees <= 180; degrees += 5) {
      double angle = Math.toRadians(degrees);
      areas.look(Direction3.of(Math.sin(angle) * 0.6, Math.sin(angle) * 0.8, Math.cos(angle)));
      double sphereAndSides = 2 * radius * length * Math.sin(angle) + Math.PI * radius * radius;
      assertThat(areas.area(0)).isCloseTo(sphereAndSides, within(1e-9));
      assertThat(areas.seen(0)).isCloseTo(areas.area(0), within(ROUNDING));
    }
  }

  @Test
  void cone_fromTheSide_coversATriangleAndTheRestOfItsBall() {
    // Almost a point at one end: the tangents from it to a circle and the far arc (Euclid).
    double radius = 0.04;
    double length = 0.1;
    VisibleAreas areas =
        alone(new Frustum(0, Point3.ORIGIN, new Point3(0, 0, length), radius, 1e-9));
    areas.look(Direction3.ofAzimuth(2.1));
    double tangent = Math.sqrt(length * length - radius * radius);
    double behind = 2 * Math.PI - 2 * Math.acos(radius / length);
    double asked = radius * tangent + radius * radius * behind / 2;
    assertThat(areas.area(0)).isCloseTo(asked, within(1e-8));
    areas.look(Direction3.UP);
    assertThat(areas.area(0)).isCloseTo(Math.PI * radius * radius, within(ROUNDING));
  }

  @Test
  void pad_coversAnEllipse() {
    // The shadow of an ellipsoid along a unit vector v: pi * |(bc vx, ca vy, ab vz)| in its axes.
    Random random = new Random(2);
    for (int n = 0; n < 50; n++) {
      Rotation turn = Rotation.ofVector(random(random).times(random.nextDouble() * 3));
      Ellipsoid pad = new Ellipsoid(place(random, 0.3), turn, 0.08, 0.05, 0.02);
      Frustum far = new Frustum(0, new Point3(5, 5, 5), new Point3(5, 5, 5.1), 0.01, 0.01);
      VisibleAreas areas =
          areas(new Shapes(List.of(far), new boolean[1], new boolean[1], List.of(pad)), FINENESS);
      Direction3 toward = random(random);
      areas.look(toward);
      Vector3 own = turn.inverse().turn(toward.vector());
      Vector3 faces =
          new Vector3(own.x() * 0.05 * 0.02, own.y() * 0.08 * 0.02, own.z() * 0.08 * 0.05);
      assertThat(areas.area(1)).isCloseTo(Math.PI * faces.norm(), within(1e-10));
      assertThat(areas.seen(1)).isCloseTo(areas.area(1), within(ROUNDING));
    }
  }

  @Test
  void wood_hidesWhatIsBehindIt_andIsHiddenFromTheOtherSide() {
    Frustum near = new Frustum(0, new Point3(0, -0.2, -0.5), new Point3(0, -0.2, 0.5), 0.02, 0.02);
    Frustum far = new Frustum(1, new Point3(-0.2, 0.2, 0), new Point3(0.2, 0.2, 0), 0.05, 0.05);
    VisibleAreas areas =
        areas(new Shapes(List.of(near, far), new boolean[2], new boolean[2], List.of()), 600);
    areas.look(Direction3.ofAzimuth(0));
    assertThat(areas.seen(0)).isCloseTo(areas.area(0), within(ROUNDING));
    double crossing = 0.04 * 0.1;
    assertThat(areas.area(1) - areas.seen(1)).isCloseTo(crossing, within(0.06 * crossing));
    areas.look(Direction3.ofAzimuth(Math.PI));
    assertThat(areas.seen(1)).isCloseTo(areas.area(1), within(ROUNDING));
    assertThat(areas.area(0) - areas.seen(0)).isCloseTo(crossing, within(0.06 * crossing));
  }

  @Test
  void soil_hidesWhatIsBelowIt() {
    // A ball half in the soil: seen level half a disc, from above all of it.
    Frustum ball = new Frustum(0, Point3.ORIGIN, new Point3(1e-12, 0, 0), 0.1, 0.1);
    VisibleAreas areas =
        areas(new Shapes(List.of(ball), new boolean[] {true}, new boolean[1], List.of()), FINENESS);
    areas.look(Direction3.ofAzimuth(1));
    assertThat(areas.area(0)).isCloseTo(Math.PI * 0.005, within(0.03 * Math.PI * 0.01));
    areas.look(Direction3.UP);
    assertThat(areas.area(0)).isCloseTo(Math.PI * 0.01, within(1e-3 * Math.PI * 0.01));
    areas.look(Direction3.UP.opposite());
    assertThat(areas.area(0)).isCloseTo(Math.PI * 0.01, within(1e-3 * Math.PI * 0.01));
  }

  /** Whether a level look comes out as a little up or a little down is for rounding to say. */
  @Test
  void soil_hidesAsMuchFromJustBelowTheLevelAsFromJustAbove() {
    Random random = new Random(7);
    List<Frustum> roots = new ArrayList<>();
    boolean[] inSoil = new boolean[30];
    for (int i = 0; i < inSoil.length; i++) {
      Point3 start = place(random, 0.1);
      Point3 end = place(random, 0.3);
      double radius = 0.01 + 0.02 * random.nextDouble();
      roots.add(
          new Frustum(
              i,
              new Point3(start.x(), start.y(), -radius),
              new Point3(end.x(), end.y(), -radius),
              radius,
              radius * 1.2));
      inSoil[i] = true;
    }
    Shapes shapes = new Shapes(roots, inSoil, new boolean[inSoil.length], List.of());
    VisibleAreas above = areas(shapes, FINENESS);
    VisibleAreas below = areas(shapes, FINENESS);
    for (int n = 0; n < 8; n++) {
      double azimuth = 6.3 * random.nextDouble();
      above.look(Direction3.ofAzimuth(azimuth, 1e-13));
      below.look(Direction3.ofAzimuth(azimuth, -1e-13));
      double seen = 0;
      for (int i = 0; i < inSoil.length; i++) {
        assertThat(below.seen(i)).isCloseTo(above.seen(i), within(1e-9));
        seen += above.seen(i);
      }
      assertThat(seen).isPositive();
    }
  }

  private static Scene scene(Random random, int pieces, int pads) {
    List<Frustum> wood = new ArrayList<>();
    boolean[] inSoil = new boolean[pieces];
    boolean[] group = new boolean[pieces];
    for (int i = 0; i < pieces; i++) {
      Point3 start = place(random, 0.3);
      Point3 end = start.plus(random(random).times(0.02 + 0.3 * random.nextDouble()));
      double radius = 0.005 + 0.05 * random.nextDouble() * random.nextDouble();
      wood.add(new Frustum(i, start, end, radius, radius * (0.3 + random.nextDouble())));
      inSoil[i] = random.nextInt(4) == 0;
      group[i] = random.nextInt(4) == 0;
    }
    List<Ellipsoid> foliage = new ArrayList<>();
    for (int i = 0; i < pads; i++) {
      Rotation turn = Rotation.ofVector(random(random).times(random.nextDouble() * 3));
      double half = 0.02 + 0.06 * random.nextDouble();
      foliage.add(new Ellipsoid(place(random, 0.3), turn, half, half * 0.8, half * 0.4));
    }
    return new Scene(wood, inSoil, group, foliage);
  }

  private record Scene(
      List<Frustum> wood, boolean[] inSoil, boolean[] group, List<Ellipsoid> pads) {
    VisibleAreas areas(int fineness) {
      return VisibleAreasTest.areas(new Shapes(wood, inSoil, group, pads), fineness);
    }

    RayCast rays() {
      return new RayCast(wood, inSoil, group, pads);
    }
  }

  @Test
  void areasSeen_areThoseOfRaysCastOneByOne() {
    Random random = new Random(3);
    double off = 0;
    double all = 0;
    for (int n = 0; n < 5; n++) {
      Scene scene = scene(random, 22, n % 2 == 0 ? 0 : 4);
      Direction3 toward = random(random);
      VisibleAreas areas = scene.areas(FINENESS);
      areas.look(toward);
      RayCast rays = scene.rays();
      rays.look(toward, 0.8, 0.004);
      double sum = 0;
      double cast = 0;
      for (int i = 0; i < 22 + scene.pads.size(); i++) {
        double error = areas.seen(i) - rays.seen(i);
        // One place in twenty may be misjudged of a piece, and rays are 4 mm apart.
        assertThat(error).isBetween(-0.09 * areas.area(i) - 4e-5, 0.09 * areas.area(i) + 4e-5);
        if (i < 22 && scene.group[i]) {
          double free = areas.clear(i) - rays.clear(i);
          assertThat(free).isBetween(-0.09 * areas.area(i) - 4e-5, 0.09 * areas.area(i) + 4e-5);
        }
        sum += areas.seen(i);
        cast += rays.seen(i);
        off += error * error;
      }
      all += cast;
      assertThat(sum).isCloseTo(cast, within(0.02 * cast));
    }
    assertThat(Math.sqrt(off) / all).isLessThan(0.005);
  }

  @Test
  void outline_isTheHullOfAllRaysThatHit() {
    Random random = new Random(4);
    for (int n = 0; n < 5; n++) {
      Scene scene = scene(random, 12, 3);
      Scene inTheAir = new Scene(scene.wood, new boolean[12], scene.group, scene.pads);
      Direction3 toward = random(random);
      VisibleAreas areas = inTheAir.areas(FINENESS);
      areas.look(toward);
      RayCast rays = inTheAir.rays();
      rays.look(toward, 0.8, 0.004);
      boolean[] every = new boolean[15];
      Arrays.fill(every, true);
      assertThat(areas.outline(every)).isCloseTo(rays.outline(), within(0.015 * rays.outline()));
    }
  }
}
