// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.DenseOutputModel;

/** Limbs integrated by {@link ShootingTree}: what they are like anywhere. */
final class ShootingPose {
  /**
   * One section.
   *
   * @param position [m]
   * @param tangent along the limb [1]
   * @param across the section's first axis [1]
   * @param force through the section [N, space]
   * @param moment through the section [N m, space]
   * @param bending added curvature of bending [1/m]
   */
  record Section(
      Point3 position,
      Vector3 tangent,
      Vector3 across,
      Vector3 force,
      Vector3 moment,
      double bending) {}

  private record Piece(double to, DenseOutputModel path) {}

  private final RodCase rods;
  private final List<Double> tensions = new ArrayList<>();
  private final List<List<Piece>> pieces = new ArrayList<>();

  ShootingPose(RodCase rods) {
    this.rods = rods;
    rods.limbs().forEach(limb -> pieces.add(new ArrayList<>()));
  }

  void add(int limb, double to, DenseOutputModel path) {
    pieces.get(limb).add(new Piece(to, path));
  }

  void addTie(double tension) {
    tensions.add(tension);
  }

  /** Pull of a line [N]. */
  double tension(int tie) {
    return tensions.get(tie);
  }

  /** The section at a place, from the side of the base where it jumps. */
  Section at(int limb, double s) {
    for (Piece piece : pieces.get(limb)) {
      if (s <= piece.to()) {
        return section(limb, s, piece.path().getInterpolatedState(s).getPrimaryState());
      }
    }
    throw new IllegalArgumentException("no place at " + s + " on limb " + limb);
  }

  private Section section(int limb, double s, double[] y) {
    Vector3 moment = ShootingRun.vector(y, 15);
    double ei = ShootingRun.bendingStiffness(rods.limbs().get(limb), s);
    double m1 = moment.dot(ShootingRun.vector(y, 3));
    double m2 = moment.dot(ShootingRun.vector(y, 6));
    double bending = Math.hypot(m1, m2);
    return new Section(
        new Point3(y[0], y[1], y[2]),
        ShootingRun.vector(y, 9),
        ShootingRun.vector(y, 3),
        ShootingRun.vector(y, 12),
        moment,
        bending * ShootingRun.softening(rods.limbs().get(limb), s, bending) / ei);
  }

  /** Radius times added curvature [1]. */
  double fibreStrain(int limb, double s) {
    RodCase.Limb rod = rods.limbs().get(limb);
    return rod.wood().radius(s / rod.length()) * at(limb, s).bending();
  }
}
