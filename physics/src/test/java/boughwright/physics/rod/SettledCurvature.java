// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.interpolation.DividedDifferenceInterpolator;

/**
 * The stress-free curvature of a tree that is at rest, in its given shape, under given weights: the
 * given curvature less what those weights' moment bends. The given shape is that of the tree
 * without load, integrated by {@link ShootingTree}; moments are summed by Gauss quadrature.
 */
final class SettledCurvature implements ShootingTree.RestCurvature {
  private static final int POINTS = 12;

  private final RodCase rods;
  private final List<RodCase.Spread> weights;
  private final ShootingPose shape;
  private final List<List<Piece>> pieces = new ArrayList<>();
  private final GaussIntegrator quadrature = new GaussIntegratorFactory().legendre(POINTS, 0, 1);

  SettledCurvature(RodCase rods, List<RodCase.Spread> weights) {
    this.rods = rods;
    this.weights = weights;
    RodCase bare = new RodCase(rods.baseFrame(), rods.limbs(), List.of(), List.of(), List.of());
    shape = new ShootingTree(bare).polish(new double[6 * rods.limbs().size()]);
    for (int i = 0; i < rods.limbs().size(); i++) {
      pieces.add(piecesOf(i));
    }
  }

  /** Three polynomials for the curvature of a piece of a limb. */
  private record Piece(double to, List<UnivariateFunction> parts) {}

  /** Interpolated at Chebyshev points between the places where moments jump. */
  private List<Piece> piecesOf(int limb) {
    TreeSet<Double> cuts = new TreeSet<>(List.of(rods.limbs().get(limb).length()));
    rods.limbs().stream().filter(c -> c.parent() == limb).forEach(c -> cuts.add(c.at()));
    List<Piece> out = new ArrayList<>();
    double from = 0;
    for (double to : cuts) {
      double[] places = new double[2 * POINTS];
      double[][] values = new double[3][2 * POINTS];
      for (int i = 0; i < places.length; i++) {
        double x = Math.cos(Math.PI * (i + 0.5) / places.length);
        places[i] = from + (to - from) * (1 - x) / 2;
        Vector3 u = exactly(limb, places[i]);
        values[0][i] = u.x();
        values[1][i] = u.y();
        values[2][i] = u.z();
      }
      List<UnivariateFunction> parts = new ArrayList<>();
      for (double[] value : values) {
        parts.add(new DividedDifferenceInterpolator().interpolate(places, value));
      }
      out.add(new Piece(to, parts));
      from = to;
    }
    return out;
  }

  @Override
  public Vector3 at(int limb, double s) {
    for (Piece piece : pieces.get(limb)) {
      if (s <= piece.to()) {
        List<UnivariateFunction> parts = piece.parts();
        return new Vector3(parts.get(0).value(s), parts.get(1).value(s), parts.get(2).value(s));
      }
    }
    throw new IllegalArgumentException("no place at " + s + " on limb " + limb);
  }

  private Vector3 exactly(int limb, double s) {
    RodCase.Limb rod = rods.limbs().get(limb);
    ShootingPose.Section here = shape.at(limb, s);
    Vector3 moment = moment(limb, s, here.position());
    double ei = ShootingTree.bendingStiffness(rod, s);
    double gj = 2 * rod.wood().shear() / rod.wood().moe() * ei;
    Vector3 strain =
        new Vector3(
            moment.dot(here.across()) / ei,
            moment.dot(here.tangent().cross(here.across())) / ei,
            moment.dot(here.tangent()) / gj);
    return rod.curvature().minus(strain);
  }

  /** Moment about a point of all weights beyond a place. */
  private Vector3 moment(int limb, double from, Point3 about) {
    double[] sum = new double[3];
    double length = rods.limbs().get(limb).length() - from;
    for (RodCase.Spread weight : weights) {
      if (weight.limb() == limb) {
        for (int k = 0; k < 3; k++) {
          int axis = k;
          sum[k] +=
              length * quadrature.integrate(x -> turning(weight, from + x * length, about)[axis]);
        }
      }
    }
    Vector3 moment = new Vector3(sum[0], sum[1], sum[2]);
    for (int c = 0; c < rods.limbs().size(); c++) {
      RodCase.Limb child = rods.limbs().get(c);
      if (child.parent() == limb && child.at() >= from) {
        moment = moment.plus(moment(c, 0, about));
      }
    }
    return moment;
  }

  private double[] turning(RodCase.Spread weight, double s, Point3 about) {
    Vector3 lever = shape.at(weight.limb(), s).position().minus(about);
    Vector3 m = lever.cross(weight.pull().times(weight.at(s)));
    return new double[] {m.x(), m.y(), m.z()};
  }
}
