// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;

/**
 * A small branched tree with everything that enters the variations: rest curvature, kinks, rigid
 * links, arms, weights, a moment, lines to the ground and within the tree, flat sections, a round
 * one, and one whose response is not linear and mixes its axes.
 */
record TangentCase(RodLoads loads, double[] tensions) {
  private static final Vector3 LINK = new Vector3(0.05, -0.02, 0.04);

  /** Moments K e + a |e|^2 e with a full K. */
  private static final class CurvedLaw implements SectionLaw {
    private static final double[][] K = {{1.2, 0.2, -0.1}, {0.2, 0.8, 0.15}, {-0.1, 0.15, 0.5}};
    private static final double A = 0.05;

    @Override
    public void respond(double e1, double e2, double e3, SectionResponse out) {
      double[] e = {e1, e2, e3};
      double squared = e1 * e1 + e2 * e2 + e3 * e3;
      double[] linear = new double[3];
      double[][] k = new double[3][3];
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) {
          linear[i] += K[i][j] * e[j];
          k[i][j] = K[i][j] + 2 * A * e[i] * e[j] + (i == j ? A * squared : 0);
        }
      }
      out.m1 = linear[0] + A * squared * e1;
      out.m2 = linear[1] + A * squared * e2;
      out.m3 = linear[2] + A * squared * e3;
      out.energy =
          (linear[0] * e1 + linear[1] * e2 + linear[2] * e3) / 2 + A * squared * squared / 4;
      out.k11 = k[0][0];
      out.k22 = k[1][1];
      out.k33 = k[2][2];
      out.k12 = k[0][1];
      out.k13 = k[0][2];
      out.k23 = k[1][2];
    }

    /** Not asked for where only variations are formed. */
    @Override
    public double[] strainUnder(double m1, double m2, double m3) {
      return new double[] {m1, m2, m3};
    }

    /** Asked for where the mesh is laid. */
    @Override
    public double stiffnessAtRest() {
      return 1;
    }
  }

  private static RodModel model() {
    SectionLine flat = s -> new LinearSection(3, 1, 0.4 * (2 - s));
    SectionLine round = s -> new LinearSection(1, 1, 0.125);
    SectionLaw curved = new CurvedLaw();
    Rotation kink = Rotation.about(Direction3.of(1, 2, 0.5), 0.7);
    Rotation other = Rotation.about(Direction3.of(-1, 0.3, 0.2), 0.9);
    return RodModel.of(
        new Point3(0.1, -0.2, 0.3),
        Rods.rootFrame(1.1, 0.4),
        List.of(
            new RodSpan(-1, Vector3.ZERO, kink, 0.5, new Vector3(0.3, -0.5, 0.2), flat),
            new RodSpan(0, Vector3.ZERO, Rotation.NONE, 0.5, new Vector3(-0.4, 0, 0), round),
            new RodSpan(0, LINK, other, 0.7, new Vector3(0, 0.6, -0.3), s -> curved)));
  }

  /** Lines by tension; loads of about a size. */
  static TangentCase byTension(double size) {
    return of(size, new RodLine.Constant(0.7 * size));
  }

  /** The line to the ground by length, with the tension it would have. */
  static TangentCase byLength(double size, double compliance) {
    return of(size, new RodLine.Length(0.9, compliance));
  }

  private static TangentCase of(double size, RodLine.Hold hold) {
    RodPlace high = new RodPlace(1, 0.5, new Vector3(0.03, 0.02, 0));
    RodPlace side = new RodPlace(2, 0.7, new Vector3(-0.02, 0.04, 0.01));
    RodLine ground = new RodLine(side, new RodLine.FixedEnd(new Point3(0.8, 0.5, -0.2)), hold);
    RodLine within =
        new RodLine(
            high, new RodLine.MovingEnd(RodPlace.onAxis(2, 0.3)), new RodLine.Constant(size));
    RodLoads loads =
        new RodLoads(
            List.of(
                new RodLoads.DeadForce(high, new Vector3(0.2 * size, -0.3 * size, -size)),
                new RodLoads.DeadForce(RodPlace.onAxis(0, 0.25), new Vector3(0, size, 0))),
            List.of(
                new RodLoads.DeadMoment(
                    RodPlace.onAxis(1, 0.5), new Vector3(0.1 * size, 0.2 * size, -0.1 * size))),
            List.of(new SpanWeight(2, new Vector3(0, 0.2, -1), size, -0.5 * size, 0.3 * size)),
            List.of(ground, within));
    return new TangentCase(loads, new double[] {0.7 * size, size});
  }

  MeshSolver solver() {
    List<RodLoads> stages = List.of(loads);
    return new MeshSolver(new MeshBuilder(model(), stages).build(1), stages);
  }
}
