// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.bench;

import boughwright.physics.reach.LivePullBenchmark;
import boughwright.physics.trial.HornbeamBenchmark;
import boughwright.physics.trial.RiskBenchmark;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.openjdk.jmh.runner.RunnerException;

/** Measures and prints the tables of docs/performance.md. */
public final class Bench {
  private static final Path CPU = Path.of("/proc/cpuinfo");

  private final Report report;

  private Bench(Report report) {
    this.report = report;
  }

  /** Runs one part (peers, elements, hornbeam, risk, pull, fronts) or all; the second argument is the file to write. */
  public static void main(String[] args) throws IOException, RunnerException {
    String part = args[0];
    Bench bench = new Bench(new Report(Path.of(args[1])));
    bench.machine("at the start");
    RodReport rods = new RodReport(bench.report);
    if (part.equals("all") || part.equals("peers")) {
      rods.peers();
    }
    if (part.equals("all") || part.equals("elements")) {
      rods.elements();
    }
    if (part.equals("all") || part.equals("hornbeam")) {
      bench.hornbeam();
    }
    if (part.equals("all") || part.equals("risk")) {
      bench.risk();
    }
    if (part.equals("all") || part.equals("pull")) {
      bench.pull();
    }
    if (part.equals("all") || part.equals("fronts")) {
      bench.fronts();
    }
    bench.machine("at the end");
  }

  private void machine(String when) throws IOException {
    report.line(
        "%s, %d processors, Java %s, load %.1f %s",
        processor(),
        Runtime.getRuntime().availableProcessors(),
        Runtime.version(),
        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
        when);
    report.line("");
  }

  private static String processor() throws IOException {
    if (!Files.exists(CPU)) {
      return System.getProperty("os.arch");
    }
    try (Stream<String> lines = Files.lines(CPU)) {
      return lines
          .filter(line -> line.startsWith("model name"))
          .map(line -> line.substring(line.indexOf(':') + 1).strip())
          .findFirst()
          .orElse(System.getProperty("os.arch"));
    }
  }

  private void hornbeam() throws IOException, RunnerException {
    report.line("| hornbeam | trial, real wood | trial, elastic wood | × |");
    report.line("|---|---|---|---|");
    for (String plan : new String[] {"a", "b"}) {
      Times real = hornbeam(plan, "fibre");
      Times elastic = hornbeam(plan, "elastic");
      report.line(
          "| plan %s | %s | %s | %.2f |",
          plan, real.text(), elastic.text(), real.median() / elastic.median());
    }
    report.line("");
  }

  private void risk() throws IOException, RunnerException {
    Map<String, Times> times = Jmh.runLong(RiskBenchmark.class);
    Times draws = times.get("draws");
    Times trials = times.get("trials");
    report.line("| hornbeam, plan a | 10,000 draws | 12,000 trials on one thread | × |");
    report.line("|---|---|---|---|");
    report.line(
        "| | %s | %s | %.2f |", draws.text(), trials.text(), draws.median() / trials.median());
    report.line("");
  }

  private void pull() throws IOException, RunnerException {
    report.line("| a hand that pulls | a place, held by a line | a place, held by hand | the grab |");
    report.line("|---|---|---|---|");
    for (String segments : new String[] {"300", "2000"}) {
      Map<String, Times> times =
          Jmh.run(LivePullBenchmark.class, Map.of("segments", segments), 500);
      report.line(
          "| %s segments | %s | %s | %s |",
          segments, times.get("line").text(), times.get("free").text(), times.get("grab").text());
    }
    report.line("");
  }

  private void fronts() throws IOException, RunnerException {
    Map<String, Times> times = Jmh.run(FrontBenchmark.class, Map.of(), 500);
    report.line("| hornbeam, one front and planting angle | everything measured | line of sight known |");
    report.line("|---|---|---|");
    report.line("| | %s | %s |", times.get("read").text(), times.get("rest").text());
    report.line("");
  }

  private static Times hornbeam(String plan, String response) throws RunnerException {
    Map<String, String> parameters = Map.of("plan", plan, "response", response);
    return Jmh.run(HornbeamBenchmark.class, parameters, 500).get("trial");
  }
}
