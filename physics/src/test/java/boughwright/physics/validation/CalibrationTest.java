// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.tree.Knots;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import boughwright.physics.trial.TrialRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937a;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * How often branches crack for which the program states a probability: branches drawn from what it
 * believes, and from truths it does not expect. Run with {@code -Dboughwright.measured=true
 * -Dboughwright.branches=400} to print the tables of docs/theory/wood.md.
 */
class CalibrationTest {
  private static final int BRANCHES = Integer.getInteger("boughwright.branches", 24);
  private static final int DRAWS = 60;

  /** Lines take a tightening to be solved for, and so fewer of them are drawn. */
  private static final int LINES = BRANCHES / 4;

  private static final int LINE_DRAWS = 20;

  private static final String[] SPECIES = {
    "carpinus-betulus",
    "fagus-sylvatica",
    "acer-rubrum",
    "ulmus-glabra",
    "pinus-sylvestris",
    "larix-decidua",
    "quercus-robur",
    "betula-pendula"
  };

  /** Scatter of a stated probability from seed to seed, a fifth of it at most. */
  private static final double STATED_SCATTER = 0.04;

  /** A branch, the weight [kg] or the shortening [m] put on it, and what the program states. */
  private record Branch(Bench bench, double load, double stated) {}

  private static final Map<String, CalibrationTable> TABLES = new HashMap<>();

  private static List<Branch> hung;
  private static List<Branch> tightened;

  @BeforeAll
  static void state() {
    RandomGenerator random = new Well19937a(20);
    hung = new ArrayList<>();
    for (int n = 0; n < BRANCHES; n++) {
      Bench bench = bench(n, random);
      double mass = mass(bench, 1.4 + 2.0 * (n + random.nextDouble()) / BRANCHES);
      hung.add(new Branch(bench, mass, stated(bench.weight(mass), n)));
    }
    tightened = new ArrayList<>();
    for (int n = 0; n < LINES; n++) {
      Bench bench = bench(n, random);
      double strain = 0.006 + 0.012 * (n + random.nextDouble()) / LINES;
      double down = strain * bench.length() * bench.length() / (3 * bench.start() / 2);
      tightened.add(new Branch(bench, down, stated(bench.line(TruthDraw.anchor(bench), down), n)));
    }
  }

  private static Bench bench(int n, RandomGenerator random) {
    double start = 0.008 + 0.014 * random.nextDouble();
    return new Bench(
        SPECIES[n % SPECIES.length],
        (14 + 8 * random.nextDouble()) * start,
        start,
        start * (0.7 + 0.3 * random.nextDouble()),
        Knots.NONE,
        OptionalDouble.empty());
  }

  private static double stated(TrialRequest request, int seed) {
    return RiskTrial.run(request, new RiskOptions(1600, seed, part -> {}))
        .risk()
        .orElseThrow()
        .of(FailureMode.CRACK)
        .orElseThrow()
        .probability()
        .p();
  }

  /** The weight that brings the clamp to some times the moment at which fibres begin to flow. */
  private static double mass(Bench bench, double times) {
    Belief belief = Belief.stated(bench.wood());
    double radius = bench.start() / 2;
    double first = belief.moe(0, 0) * belief.yield(0, 0) * Math.PI * Math.pow(radius, 3) / 4;
    return times * first / bench.length() / 9.80665;
  }

  private static CalibrationTable hung(String name, TruthDraw truth) {
    return TABLES.computeIfAbsent(name, n -> drawn(n, truth));
  }

  private static CalibrationTable drawn(String name, TruthDraw truth) {
    CalibrationTable table = new CalibrationTable();
    RandomGenerator random = new Well19937a(21);
    for (Branch branch : hung) {
      int cracks = 0;
      for (int n = 0; n < DRAWS; n++) {
        cracks += truth.cracksUnder(branch.load, branch.bench, random) ? 1 : 0;
      }
      table.note(branch.stated, DRAWS, cracks);
    }
    return told("weight, " + name, table);
  }

  private static CalibrationTable tightened(String name, TruthDraw truth) {
    CalibrationTable table = new CalibrationTable();
    RandomGenerator random = new Well19937a(22);
    for (Branch branch : tightened) {
      int cracks = 0;
      for (int n = 0; n < LINE_DRAWS; n++) {
        cracks += truth.cracksTightened(branch.load, branch.bench, random) ? 1 : 0;
      }
      table.note(branch.stated, LINE_DRAWS, cracks);
    }
    return told("line, " + name, table);
  }

  private static CalibrationTable told(String name, CalibrationTable table) {
    if (Boolean.getBoolean("boughwright.measured")) {
      System.out.printf("%s%n%s", name, table.rows());
    }
    return table;
  }

  private static double allowed(CalibrationTable table, int bin) {
    double scatter = STATED_SCATTER / Math.sqrt(table.cases(bin));
    return 3 * Math.hypot(table.chance(bin), scatter);
  }

  @Test
  void hungBranchesAsBelieved_crackAsOftenAsStated() {
    agrees(hung("as stated", TruthDraw.asStated()));
  }

  @Test
  void tightenedBranchesAsBelieved_crackAsOftenAsStated() {
    agrees(tightened("as stated", TruthDraw.asStated()));
  }

  private static void agrees(CalibrationTable table) {
    for (int bin = 0; bin < CalibrationTable.BINS; bin++) {
      if (table.cases(bin) > 0) {
        assertThat(Math.abs(table.frequency(bin) - table.stated(bin)))
            .as("bin %d", bin)
            .isLessThanOrEqualTo(allowed(table, bin));
      }
    }
  }

  /** The same check must notice a truth that is not the one believed, and order must survive. */
  @Test
  void branchesOfAnotherTruth_areNoticedAndStillRanked() {
    CalibrationTable table = hung("different", TruthDraw.different());
    assertThat(noticed(table)).isTrue();
    int last = CalibrationTable.BINS - 1;
    while (table.cases(last) == 0) {
      last--;
    }
    assertThat(table.frequency(0)).isLessThan(table.frequency(last));
  }

  @Test
  void branchesMoreBrittleThanBelieved_crackMoreOften() {
    CalibrationTable table = hung("brittle", TruthDraw.brittle());
    assertThat(miss(table)).isPositive();
  }

  /** Held by length, strain hardly depends on how stiff the wood is. */
  @Test
  void tightenedBranchesOfAnotherTruth_missByLessThanHungOnes() {
    if (Boolean.getBoolean("boughwright.measured")) {
      tightened("brittle", TruthDraw.brittle());
    }
    assertThat(miss(tightened("different", TruthDraw.different())))
        .isLessThan(miss(hung("different", TruthDraw.different())));
  }

  private static double miss(CalibrationTable table) {
    double miss = 0;
    int cases = 0;
    for (int bin = 0; bin < CalibrationTable.BINS; bin++) {
      if (table.cases(bin) > 0) {
        miss += table.cases(bin) * (table.frequency(bin) - table.stated(bin));
        cases += table.cases(bin);
      }
    }
    return miss / cases;
  }

  private static boolean noticed(CalibrationTable table) {
    boolean noticed = false;
    for (int bin = 0; bin < CalibrationTable.BINS; bin++) {
      noticed |=
          table.cases(bin) > 0
              && Math.abs(table.frequency(bin) - table.stated(bin)) > allowed(table, bin);
    }
    return noticed;
  }
}
