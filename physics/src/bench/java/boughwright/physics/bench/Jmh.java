// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.bench;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks of a class in JVMs of their own. */
final class Jmh {
  private static final int FORKS = 3;
  private static final int ITERATIONS = 10;
  private static final int LONG_WARM_UPS = 2;
  private static final int LONG_ITERATIONS = 5;

  /** The compiler of the JVM needs some seconds in all, more where other programs run [ms]. */
  private static final int SHORTEST_WARM_UP = 400;

  private Jmh() {}

  /**
   * Times by name of the benchmark method.
   *
   * @param benchmark the class
   * @param parameters values of its parameters
   * @param millis how long an iteration takes
   */
  static Map<String, Times> run(Class<?> benchmark, Map<String, String> parameters, int millis)
      throws RunnerException {
    ChainedOptionsBuilder options =
        options(benchmark)
            .forks(FORKS)
            .warmupIterations(ITERATIONS)
            .warmupTime(TimeValue.milliseconds(Math.max(SHORTEST_WARM_UP, millis)))
            .measurementIterations(ITERATIONS)
            .measurementTime(TimeValue.milliseconds(millis));
    parameters.forEach(options::param);
    return run(options);
  }

  /**
   * Times of methods that take seconds each, in one JVM that was warmed by calling each of them.
   *
   * @param benchmark the class
   */
  static Map<String, Times> runLong(Class<?> benchmark) throws RunnerException {
    return run(
        options(benchmark)
            .forks(1)
            .mode(Mode.SingleShotTime)
            .warmupIterations(LONG_WARM_UPS)
            .measurementIterations(LONG_ITERATIONS));
  }

  private static ChainedOptionsBuilder options(Class<?> benchmark) {
    return new OptionsBuilder()
        .include("^" + benchmark.getName().replace(".", "\\.") + "\\.")
        .shouldFailOnError(true)
        .verbosity(VerboseMode.SILENT);
  }

  private static Map<String, Times> run(ChainedOptionsBuilder options) throws RunnerException {
    Collection<RunResult> results = new Runner(options.build()).run();
    Map<String, Times> times = new TreeMap<>();
    for (RunResult result : results) {
      String name = result.getParams().getBenchmark();
      times.put(name.substring(name.lastIndexOf('.') + 1), Times.of(result));
    }
    return times;
  }
}
