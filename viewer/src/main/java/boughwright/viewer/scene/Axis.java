// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;

/**
 * The axis of a limb at one place of a pose.
 *
 * @param point where it is [m]
 * @param direction where it leads
 * @param strain bending strain at the outermost wood [1]
 * @param tensionSide from the axis toward the most stretched side, length one or zero
 */
record Axis(Point3 point, Direction3 direction, double strain, Vector3 tensionSide) {

  /** Part of the way to another axis: 0 is this one, 1 the other. */
  Axis toward(Axis other, double part) {
    Vector3 way = direction.times(1 - part).plus(other.direction.times(part));
    Vector3 pull =
        tensionSide.times(strain * (1 - part)).plus(other.tensionSide.times(other.strain * part));
    double size = pull.norm();
    return new Axis(
        point.toward(other.point, part),
        way.norm() < 1e-9 ? direction : way.direction(),
        size,
        size < 1e-12 ? Vector3.ZERO : pull.times(1 / size));
  }

  /** The axis of one limb as a curve. */
  interface Curve {
    /**
     * The axis at a place.
     *
     * @param k number of the segment within its limb
     * @param u fraction of that segment, 0 to 1
     */
    Axis at(int k, double u);

    /** How many segments of the limb there are in this pose. */
    int count();

    /**
     * Numbers, {@value #NUMBERS} for each of some places, that tell where the limb lies and how it
     * is strained: place [m], strain toward its stretched side, strain [1].
     */
    default double[] print() {
      double[] print = new double[count() * LOOKED_AT.length * NUMBERS];
      int at = 0;
      for (int k = 0; k < count(); k++) {
        for (double u : LOOKED_AT) {
          Axis axis = at(k, u);
          write(print, at, axis);
          at += NUMBERS;
        }
      }
      return print;
    }
  }

  /** Numbers for each place of a {@link Curve#print}. */
  static final int NUMBERS = 7;

  private static final double[] LOOKED_AT = {0, 0.25, 0.5, 0.75, 1};

  /** Writes the numbers of one place. */
  static void write(double[] print, int at, Axis axis) {
    print[at] = axis.point.x();
    print[at + 1] = axis.point.y();
    print[at + 2] = axis.point.z();
    print[at + 3] = axis.strain * axis.tensionSide.x();
    print[at + 4] = axis.strain * axis.tensionSide.y();
    print[at + 5] = axis.strain * axis.tensionSide.z();
    print[at + 6] = axis.strain;
  }
}
