// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.bench;

import boughwright.physics.rod.BendCase;
import boughwright.physics.rod.CalculixRun;
import boughwright.physics.rod.DirectSolve;
import boughwright.physics.rod.ElementsBenchmark;
import boughwright.physics.rod.PeerChoice;
import boughwright.physics.rod.PeerTuning;
import boughwright.physics.rod.SolveBenchmark;
import boughwright.physics.rod.UsualSolve;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openjdk.jmh.runner.RunnerException;

/** One rod: this program beside its peers at equal error, and its time per element. */
final class RodReport {
  private static final double[] ERRORS = {1e-3, 1e-6};
  private static final int[] ELEMENTS = {50, 200, 1000, 5000};
  private static final int PROCESS_RUNS = 11;

  private final Report report;

  RodReport(Report report) {
    this.report = report;
  }

  void peers() throws IOException, RunnerException {
    report.line("| case | error allowed | solver | error | time, median (10 %%–90 %%) | × ours |");
    report.line("|---|---|---|---|---|---|");
    for (BendCase bend : BendCase.values()) {
      for (double error : ERRORS) {
        peers(bend, error);
      }
    }
    report.line("");
  }

  private void peers(BendCase bend, double error) throws IOException, RunnerException {
    DirectSolve.Fineness fineness = DirectSolve.finenessFor(bend, error);
    PeerChoice chosen = PeerTuning.fastest(bend, error, false);
    PeerChoice fixed = PeerTuning.fastest(bend, error, true);
    Map<String, Times> times =
        Jmh.run(
            SolveBenchmark.class,
            Map.of(
                "bend", bend.name(),
                "elements", "" + fineness.elements(),
                "negligible", "" + fineness.negligible(),
                "adaptive", chosen.text(),
                "fixed", fixed.text()),
            100);
    DirectSolve direct = new DirectSolve(bend, fineness);
    double ours = direct.error(bend);
    String start = String.format("| %s | %.0e | ", bend.words(), error);
    String mesh = direct.elements() + " elements, " + direct.iterations() + " iterations";
    Times whole = times.get("directAll");
    row(start + "ours, " + mesh + ", mesh and loads laid anew", ours, whole, whole);
    row(start + "ours, " + mesh + ", mesh kept", ours, times.get("direct"), whole);
    UsualSolve usual = new UsualSolve(bend);
    String words = "ours as the program solves, %d elements, error estimated %.0e";
    row(
        start + String.format(words, usual.elements(), usual.estimate()),
        usual.error(),
        times.get("usual"),
        whole);
    row(start + "shooting, " + words(chosen), chosen.error(bend), times.get("shootingChosenSteps"), whole);
    row(start + "shooting, " + words(fixed), fixed.error(bend), times.get("shootingFixedSteps"), whole);
    if (error == ERRORS[0] && CalculixRun.isInstalled()) {
      calculix(bend, error, start, whole);
    }
  }

  private static String words(PeerChoice choice) {
    return String.format(
        "%s, %s %.2g, root %.0e",
        choice.method(), choice.isFixed() ? "steps" : "tolerance", choice.tuning(), choice.root());
  }

  private void calculix(BendCase bend, double error, String start, Times whole)
      throws IOException {
    int elements = CalculixRun.elementsFor(bend, error);
    List<CalculixRun> runs = new ArrayList<>();
    for (int k = 0; k < PROCESS_RUNS; k++) {
      runs.add(CalculixRun.run(bend, elements));
    }
    Times process = Times.of(runs.stream().mapToDouble(CalculixRun::processTime).toArray());
    Times solver = Times.of(runs.stream().mapToDouble(CalculixRun::solverTime).toArray());
    double reached = runs.get(0).error();
    String name = "CalculiX B31, " + elements + " elements, ";
    row(start + name + "whole process", reached, process, whole);
    row(start + name + "its own total", reached, solver, whole);
  }

  private void row(String start, double error, Times time, Times whole) throws IOException {
    report.line("%s | %.1e | %s | %.3g |", start, error, time.text(), time.median() / whole.median());
  }

  void elements() throws IOException, RunnerException {
    report.line("| case | elements | iterations | solve | ns per element and iteration | per node |");
    report.line("|---|---|---|---|---|---|");
    for (BendCase bend : BendCase.values()) {
      for (int elements : ELEMENTS) {
        DirectSolve direct = new DirectSolve(bend, DirectSolve.Fineness.usual(elements));
        direct.error(bend);
        Times time =
            Jmh.run(
                    ElementsBenchmark.class,
                    Map.of("bend", bend.name(), "elements", "" + elements),
                    200)
                .get("direct");
        double each = 1e3 / direct.elements() / direct.iterations();
        report.line(
            "| %s | %d | %d | %s | %.0f (%.0f–%.0f) | %.0f |",
            bend.words(),
            direct.elements(),
            direct.iterations(),
            time.text(),
            time.median() * each,
            time.low() * each,
            time.high() * each,
            time.median() * each / 2);
      }
    }
    report.line("");
  }
}
