// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.bench;

import boughwright.modeller.design.front.Eye;
import boughwright.modeller.design.front.FrontGauge;
import boughwright.modeller.design.front.FrontReading;
import boughwright.modeller.design.front.FrontSubject;
import boughwright.modeller.design.front.Seen;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Skeleton;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The example hornbeam looked at from fronts and at planting angles anywhere within 25 degrees. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class FrontBenchmark {
  /** Seen from the folder of this module. */
  private static final Path TREE = Path.of("../examples/hedge-hornbeam.tree.json");

  private static final int POSES = 1024;

  private final FrontPose[] poses = new FrontPose[POSES];
  private final Seen[] seen = new Seen[POSES];
  private FrontGauge gauge;
  private int next;

  /** Reads the tree. */
  @Setup
  public void prepare() throws InputException {
    WoodLeft wood = new WoodLeft(new Skeleton(TreeFiles.read(TREE).document().tree()));
    TrunkLine trunk = TrunkLine.of(wood, Optional.empty());
    gauge = new FrontGauge(FrontSubject.bare(wood, trunk), Eye.LEVEL);
    Random random = new Random(1);
    double most = Math.toRadians(25);
    for (int k = 0; k < POSES; k++) {
      double right = most * (2 * random.nextDouble() - 1);
      double toward = most * (2 * random.nextDouble() - 1);
      poses[k] = new FrontPose(2 * Math.PI * random.nextDouble(), right, toward);
      seen[k] = gauge.seen(gauge.eye().towardViewer(poses[k]));
    }
  }

  private int next() {
    next = (next + 1) % POSES;
    return next;
  }

  /** Everything of one pose. */
  @Benchmark
  public FrontReading read() {
    return gauge.read(poses[next()]);
  }

  /** What is left to measure of a pose whose line of sight was looked along before. */
  @Benchmark
  public FrontReading rest() {
    int k = next();
    return gauge.read(poses[k], seen[k]);
  }
}
