// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.physics.rod.Measured;
import boughwright.physics.rod.Table;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CoilShapeTest {
  private static final double CLOSED = 1e-3;
  private static final double BRANCH = 12e-3;
  private static final Measured MEASURED = new Measured(CoilShapeTest.class);

  static Stream<Table> stiffnesses() {
    return Table.of("g_coil_bending_stiffness.csv").filter(row -> row.number(0) < 90);
  }

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  private static CoilShape at(double degreesToAxis) {
    return new CoilShape(4e-3, 1, Math.toRadians(degreesToAxis));
  }

  @ParameterizedTest
  @MethodSource("stiffnesses")
  void bendingStiffness_isThatOfTheTable(Table row) {
    CoilShape coil = at(90 - row.number(0));
    double printed = row.number(2);
    MEASURED.check("bending", coil.bendingPart(row.number("nu")) / printed - 1, CLOSED);
  }

  /**
   * Castigliano along the wire: bending and torsion of an inextensible helix under an end moment,
   * about an axis across or along the branch, with G = E / (2 (1 + nu)).
   */
  @ParameterizedTest
  @ValueSource(doubles = {20, 45, 52.5, 60, 75})
  void stiffnesses_areThoseOfAnIntegrationAlongTheHelix(double degrees) {
    double nu = 0.33;
    CoilShape coil = at(degrees);
    Vector3D across = Vector3D.PLUS_I;
    MEASURED.check("helix", coil.bendingPart(nu) / helix(degrees, nu, across) - 1, CLOSED);
    Vector3D along = Vector3D.PLUS_K;
    MEASURED.check("helix twist", coil.twistingPart(nu) / helix(degrees, nu, along) - 1, CLOSED);
  }

  /** Stiffness per length of branch over EI of the wire. */
  private static double helix(double degrees, double nu, Vector3D moment) {
    double radius = 8;
    double rise = radius / Math.tan(Math.toRadians(degrees));
    int steps = 20000;
    double flexibility = 0;
    double step = 2 * Math.PI / steps;
    for (int i = 0; i < steps; i++) {
      double phi = (i + 0.5) * step;
      Vector3D run = new Vector3D(-radius * Math.sin(phi), radius * Math.cos(phi), rise);
      Vector3D tangent = run.normalize();
      double torque = moment.dotProduct(tangent);
      double bending = moment.subtract(tangent.scalarMultiply(torque)).getNormSq();
      flexibility += (bending + (1 + nu) * torque * torque) * run.getNorm() * step;
    }
    return 2 * Math.PI * rise / flexibility;
  }

  /** A helix laid out point by point on the middle line of the wire. */
  @Test
  void lengthPitchAndGap_areThoseOfALaidOutHelix() {
    CoilShape coil = new CoilShape(3e-3, 2, Math.toRadians(50));
    double across = Math.PI * (BRANCH + 3e-3);
    double pitch = coil.pitch(BRANCH);
    assertThat(Math.hypot(across, pitch)).isCloseTo(coil.turn(BRANCH), within(1e-12));
    assertThat(Math.toDegrees(Math.atan2(across, pitch))).isCloseTo(50, within(1e-9));
    assertThat(coil.along(pitch)).isCloseTo(coil.turn(BRANCH), within(1e-12));
    double perStrand = 3e-3 / Math.sin(Math.toRadians(50));
    assertThat(coil.gap(BRANCH)).isCloseTo(pitch - 2 * perStrand, within(1e-12));
    assertThat(new CoilShape(8e-3, 3, Math.toRadians(80)).gap(5e-3)).isNegative();
  }

  /** d = D / 3: 12.5 % at 45 degrees and 16.8 % at 55 (reference notes). */
  @Test
  void windingStrain_isThatOfTheNotes() {
    assertThat(at(45).windingStrain(BRANCH)).isCloseTo(0.125, within(5e-4));
    assertThat(at(55).windingStrain(BRANCH)).isCloseTo(0.168, within(5e-4));
  }
}
