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

/** One rod with many elements, to see how the time grows with them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ElementsBenchmark {
  @Param("A1")
  public BendCase bend;

  @Param("50")
  public int elements;

  private DirectSolve direct;

  @Setup
  public void prepare() {
    direct = new DirectSolve(bend, DirectSolve.Fineness.usual(elements));
  }

  @Benchmark
  public Point3 direct() {
    return direct.solve();
  }
}
