// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

import boughwright.modeller.geometry.Point3;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One rod from the unbent state: this program's solver and shooting. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SolveBenchmark {
  @Param("A1")
  public BendCase bend;

  @Param("2")
  public int elements;

  /** Turns that the iteration may leave out [rad]. */
  @Param("1e-9")
  public double negligible;

  /** A {@link PeerChoice} with chosen steps, and one with fixed steps. */
  @Param("DP853;1e-3;1e-3")
  public String adaptive;

  @Param("FIXED_RK4;10;1e-3")
  public String fixed;

  private DirectSolve direct;
  private PlanarShooting shooting;
  private PlanarShooting stepping;
  private RodModel model;
  private RodLoads loads;

  @Setup
  public void prepare() {
    direct = new DirectSolve(bend, new DirectSolve.Fineness(elements, negligible));
    shooting = PeerChoice.parse(adaptive).on(bend);
    stepping = PeerChoice.parse(fixed).on(bend);
    model = bend.model();
    loads = bend.loads();
  }

  /** On a mesh that was laid before. */
  @Benchmark
  public Point3 direct() {
    return direct.solve();
  }

  /** The mesh and the loads laid anew each time. */
  @Benchmark
  public Point3 directAll() {
    return direct.solveAll();
  }

  /** As the program solves: loads followed, error estimated. */
  @Benchmark
  public RodSolution usual() {
    return RodSolver.solve(model, loads, RodOptions.DEFAULT);
  }

  @Benchmark
  public Point3 shootingChosenSteps() {
    return shooting.solve();
  }

  @Benchmark
  public Point3 shootingFixedSteps() {
    return stepping.solve();
  }
}
