// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.file.TreeFiles;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.species.SpeciesTable;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The sampled risk of the example hornbeam on all processors, beside plain trials on one. */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RiskBenchmark {
  private static final Path TREE = Path.of("../examples/hedge-hornbeam.tree.json");
  private static final int TRIALS = 12_000;

  private TrialRequest request;

  /** Reads the tree. */
  @Setup
  public void prepare() throws InputException {
    Document document = TreeFiles.read(TREE).document();
    request =
        TrialRequest.of(
            document.tree(),
            document.plan("a").orElseThrow(),
            SpeciesTable.bundled().find("Carpinus betulus").get(0));
  }

  @Benchmark
  public TrialResult draws() {
    return RiskTrial.run(request, RiskOptions.DEFAULT);
  }

  /** The answer of the last of many trials. */
  @Benchmark
  public TrialResult trials() {
    TrialResult last = null;
    for (int n = 0; n < TRIALS; n++) {
      last = Trial.run(request);
    }
    return last;
  }
}
