// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * First and second variation against central differences of the energy, with Richardson's
 * extrapolation, and the count of unstable modes against the eigenvalues that Hipparchus finds of
 * the dense matrix; at random large displacements of {@link TangentCase}.
 */
class TangentTest {
  private static final Measured MEASURED = new Measured(TangentTest.class);

  /** What rounding leaves of first and second differences of the energy, relative. */
  private static final double FIRST_DIFFERENCE = 1e-10;

  private static final double SECOND_DIFFERENCE = 1e-8;

  @AfterAll
  static void report() {
    MEASURED.report();
  }

  /** Everything formed at one displaced state, and the energy about it. */
  private static final class Point {
    final MeshSolver solver;
    final LoadSet loads;
    final RodState state;
    final LineForces lines;
    final Tangent tangent;
    final LineCoupling coupling;
    final int size;
    final int unstable;

    Point(TangentCase rods, long seed, double turn) {
      solver = rods.solver();
      loads = solver.stages.get(0);
      size = 6 * solver.mesh.count;
      double[] x = new Random(seed).doubles(size, -1, 1).map(v -> turn * v).toArray();
      state = moved(solver.rest, x);
      lines = new LineForces(loads.lines, rods.tensions());
      lines.lay(state);
      ForceSweep forces = new ForceSweep(solver.mesh);
      forces.run(loads, lines);
      NodeTerms nodes = new NodeTerms(solver.mesh);
      nodes.gather(state, loads, lines, forces);
      tangent = new Tangent(solver.mesh);
      tangent.form(state, forces, nodes, 0);
      coupling = new LineCoupling(solver.mesh, loads.lines.size());
      unstable = coupling.form(state, lines, tangent);
    }

    RodState moved(RodState from, double[] x) {
      RodState out = new RodState(solver.mesh);
      out.move(from, Arrays.copyOfRange(x, 0, size / 2), Arrays.copyOfRange(x, size / 2, size), 1);
      return out;
    }

    double energy(double[] x) {
      RodState there = moved(state, x);
      LineForces laid = new LineForces(lines.lines, lines.tension);
      laid.lay(there);
      return Energy.of(there, loads, laid, new SectionResponse());
    }

    double length(double[] x, int line) {
      return LineForces.distance(moved(state, x), lines.lines.get(line));
    }

    double[] gradient() {
      double[] g = Arrays.copyOf(tangent.nodeGradient, size);
      System.arraycopy(tangent.middleGradient, 0, g, size / 2, size / 2);
      return g;
    }

    /** Solves with the factorised tangent; tension steps go to the last argument. */
    double[] solve(double[] right, double[] tensionStep) {
      double[] atNode = Arrays.copyOfRange(right, 0, size / 2);
      double[] atMiddle = Arrays.copyOfRange(right, size / 2, size);
      tangent.reduce(atNode, atMiddle);
      coupling.correct(atNode, atMiddle, lines, tensionStep);
      tangent.finish(atNode, atMiddle);
      double[] out = Arrays.copyOf(atNode, size);
      System.arraycopy(atMiddle, 0, out, size / 2, size / 2);
      return out;
    }

    RealMatrix hessian() {
      double[][] h = new double[size][size];
      for (int i = 0; i < size; i++) {
        for (int j = 0; j <= i; j++) {
          h[i][j] = (4 * second(i, j, 2e-3) - second(i, j, 4e-3)) / 3;
          h[j][i] = h[i][j];
        }
      }
      return new Array2DRowRealMatrix(h);
    }

    private double second(int i, int j, double d) {
      return (energy(step(i, d, j, d))
              - energy(step(i, d, j, -d))
              - energy(step(i, -d, j, d))
              + energy(step(i, -d, j, -d)))
          / (4 * d * d);
    }

    double[] step(int i, double a, int j, double b) {
      double[] x = new double[size];
      x[i] += a;
      x[j] += b;
      return x;
    }
  }

  private interface Function {
    double at(double[] x);
  }

  private static double[] differences(Function f, Point point) {
    double[] out = new double[point.size];
    for (int i = 0; i < point.size; i++) {
      double near = (f.at(point.step(i, 1e-3, 0, 0)) - f.at(point.step(i, -1e-3, 0, 0))) / 2e-3;
      double far = (f.at(point.step(i, 2e-3, 0, 0)) - f.at(point.step(i, -2e-3, 0, 0))) / 4e-3;
      out[i] = (4 * near - far) / 3;
    }
    return out;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void firstVariation_atRandomStates_isTheDifferenceOfTheEnergy(long seed) {
    Point point = new Point(TangentCase.byTension(5), seed, 0.6);
    double[] expected = differences(point::energy, point);
    double scale = new ArrayRealVector(expected).getLInfNorm();
    double away =
        new ArrayRealVector(point.gradient()).subtract(new ArrayRealVector(expected)).getLInfNorm();
    MEASURED.check("first variation", away / scale, FIRST_DIFFERENCE);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void factorisedTangent_atRandomStates_invertsTheSecondDifferences(long seed) {
    Point point = new Point(TangentCase.byTension(5), seed, 0.6);
    RealMatrix hessian = point.hessian();
    double scale = hessian.getNorm1();
    double[] noLengths = new double[point.lines.lines.size()];
    RealMatrix inverse = MatrixUtils.createRealMatrix(point.size, point.size);
    for (int j = 0; j < point.size; j++) {
      inverse.setColumn(j, point.solve(point.step(j, 1, j, 0), noLengths));
    }
    RealMatrix tangent = new SingularValueDecomposition(inverse).getSolver().getInverse();
    MEASURED.check(
        "second variation", tangent.subtract(hessian).getNorm1() / scale, SECOND_DIFFERENCE);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 20, 60, 200})
  void unstableModes_underGrowingLoads_areTheNegativeEigenvalues(double load) {
    int negativeSeen = 0;
    for (long seed = 11; seed < 14; seed++) {
      Point point = new Point(TangentCase.byTension(load), seed, 0.6);
      double[] values = new EigenDecompositionSymmetric(point.hessian()).getEigenvalues();
      int negative = (int) Arrays.stream(values).filter(v -> v < 0).count();
      negativeSeen += negative;
      assertThat(point.unstable).isEqualTo(negative);
    }
    assertThat(negativeSeen).as("a case that shows something").isPositive();
  }

  @Test
  void unstableModes_atRestWithoutLoad_areNone() {
    assertThat(new Point(TangentCase.byTension(0), 1, 0).unstable).isZero();
  }

  /** With a line of given length, only displacements that keep its length count. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 20, 60, 200})
  void unstableModes_withALineOfGivenLength_areThoseThatKeepItsLength(double load) {
    for (long seed = 21; seed < 24; seed++) {
      Point point = new Point(TangentCase.byLength(load, 0), seed, 0.3);
      double[] along = differences(x -> point.length(x, 0), point);
      RealMatrix row = MatrixUtils.createRowRealMatrix(along);
      RealMatrix kept =
          new SingularValueDecomposition(row.transpose().multiply(row))
              .getU()
              .getSubMatrix(0, point.size - 1, 1, point.size - 1);
      RealMatrix projected = kept.transpose().multiply(point.hessian()).multiply(kept);
      double[] values =
          new EigenDecompositionSymmetric(projected.add(projected.transpose()).scalarMultiply(0.5))
              .getEigenvalues();
      int negative = (int) Arrays.stream(values).filter(v -> v < 0).count();
      assertThat(point.unstable).isEqualTo(negative);
    }
  }

  /** One Newton step with a line by length solves both rows of its saddle-point system. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1e-3, 0.2})
  void step_withALineOfGivenLength_solvesTheSaddlePointSystem(double compliance) {
    Point point = new Point(TangentCase.byLength(5, compliance), 31, 0.3);
    double[] along = differences(x -> point.length(x, 0), point);
    double[] gradient = differences(point::energy, point);
    double[] down = new ArrayRealVector(gradient).mapMultiply(-1).toArray();
    double[] tensionStep = new double[point.lines.lines.size()];
    double[] x = point.solve(down, tensionStep);
    double[] held = new ArrayRealVector(along).mapMultiply(tensionStep[0]).toArray();
    double residual =
        new ArrayRealVector(point.hessian().operate(x))
            .add(new ArrayRealVector(gradient))
            .add(new ArrayRealVector(held))
            .getLInfNorm();
    double scale = new ArrayRealVector(gradient).getLInfNorm();
    MEASURED.check("saddle point, forces", residual / scale, 10 * SECOND_DIFFERENCE);
    double excess =
        point.length(new double[point.size], 0)
            - point.loads.lines.get(0).value()
            - compliance * (point.lines.tension[0] + tensionStep[0])
            + new ArrayRealVector(along).dotProduct(new ArrayRealVector(x));
    MEASURED.check("saddle point, length", excess, SECOND_DIFFERENCE);
  }
}
