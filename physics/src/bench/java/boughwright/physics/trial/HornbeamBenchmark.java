// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.WoodOverride;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A plan of the example hornbeam, from the tree that was read to every result, with real wood and
 * with wood that is straight-line elastic.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class HornbeamBenchmark {
  /** Seen from the folder of this module. */
  private static final Path TREE = Path.of("../examples/hedge-hornbeam.tree.json");

  @Param("a")
  public String plan;

  @Param("fibre")
  public String response;

  private TrialRequest request;

  /** Reads the tree. */
  @Setup
  public void prepare() throws InputException {
    Document document = TreeFiles.read(TREE).document();
    request =
        TrialRequest.of(
            bending(document.tree()),
            document.plan(plan).orElseThrow(),
            SpeciesTable.bundled().find("Carpinus betulus").get(0));
    if (!trial().outcome().holds()) {
      throw new IllegalStateException("the plan does not hold");
    }
  }

  private Tree bending(Tree tree) {
    if (response.equals("fibre")) {
      return tree;
    }
    WoodOverride every =
        new WoodOverride(
            "*",
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.of(Response.ELASTIC),
            Optional.empty(),
            Map.of());
    return new TreeDraft(tree).overrides(List.of(every)).build();
  }

  @Benchmark
  public TrialResult trial() {
    return Trial.run(request);
  }
}
