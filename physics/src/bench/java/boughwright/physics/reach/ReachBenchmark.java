// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.SpeciesTable;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The first branch of the example hornbeam brought down, without its risk being drawn. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReachBenchmark {
  /** Seen from the folder of this module. */
  private static final Path TREE = Path.of("../examples/hedge-hornbeam.tree.json");

  @Param({"1", "2"})
  public int lines;

  /** 1 leaves the search free; 0.05 eases what it finds. */
  @Param({"0.05", "1"})
  public double mostRisk;

  private ReachRequest request;

  /** Reads the tree. */
  @Setup
  public void prepare() throws InputException {
    Document document = TreeFiles.read(TREE).document();
    request =
        new ReachRequest(
            document.tree(),
            document.plan("a").orElseThrow(),
            List.of(),
            SpeciesTable.bundled().find("Carpinus betulus").get(0),
            new Target.Point(new Spot("b1c", 1), new Point3(0.155, -0.006, 0.13)),
            new ReachRequest.Wishes(Set.of(AnchorSort.values()), mostRisk, lines));
  }

  @Benchmark
  public Reached reach() {
    return Reach.of(request);
  }
}
