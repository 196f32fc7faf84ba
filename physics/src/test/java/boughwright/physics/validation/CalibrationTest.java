// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.validation;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.tree.Knots;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.RiskOptions;
import boughwright.physics.trial.RiskTrial;
import java.util.ArrayList;
import java.util.List;
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

  private record Branch(Bench bench, double mass, double stated) {}

  private static List<Branch> branches;

  @BeforeAll
  static void state() {
    RandomGenerator random = new Well19937a(20);
    branches = new ArrayList<>();
    for (int n = 0; n < BRANCHES; n++) {
      double start = 0.008 + 0.014 * random.nextDouble();
      Bench bench =
          new Bench(
              SPECIES[n % SPECIES.length],
              0.15 + 0.30 * random.nextDouble(),
              start,
              start * (0.7 + 0.3 * random.nextDouble()),
              Knots.NONE,
              OptionalDouble.empty());
      double mass = mass(bench, 1.4 + 2.0 * (n + random.nextDouble()) / BRANCHES);
      RiskOptions options = new RiskOptions(1600, n, part -> {});
      double stated =
          RiskTrial.run(bench.weight(mass), options)
              .risk()
              .orElseThrow()
              .of(FailureMode.CRACK)
              .orElseThrow()
              .probability()
              .p();
      branches.add(new Branch(bench, mass, stated));
    }
  }

  /** The weight that brings the clamp to some times the moment at which fibres begin to flow. */
  private static double mass(Bench bench, double times) {
    Belief belief = Belief.stated(bench.wood());
    double radius = bench.start() / 2;
    double first = belief.moe(0, 0) * belief.yield(0, 0) * Math.PI * Math.pow(radius, 3) / 4;
    return times * first / bench.length() / 9.80665;
  }

  private static CalibrationTable table(String name, TruthDraw truth) {
    CalibrationTable table = new CalibrationTable();
    RandomGenerator random = new Well19937a(21);
    for (Branch branch : branches) {
      int cracks = 0;
      for (int n = 0; n < DRAWS; n++) {
        cracks += truth.cracks(branch.bench, branch.mass, random) ? 1 : 0;
      }
      table.note(branch.stated, DRAWS, cracks);
    }
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
  void branchesAsBelieved_crackAsOftenAsStated() {
    CalibrationTable table = table("as stated", TruthDraw.asStated());
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
    CalibrationTable table = table("different", TruthDraw.different());
    assertThat(noticed(table)).isTrue();
    int last = CalibrationTable.BINS - 1;
    while (table.cases(last) == 0) {
      last--;
    }
    assertThat(table.frequency(0)).isLessThan(table.frequency(last));
  }

  @Test
  void branchesMoreBrittleThanBelieved_crackMoreOften() {
    CalibrationTable table = table("brittle", TruthDraw.brittle());
    assertThat(noticed(table)).isTrue();
    for (int bin = 1; bin < CalibrationTable.BINS; bin++) {
      if (table.cases(bin) > 2) {
        assertThat(table.frequency(bin)).as("bin %d", bin).isGreaterThan(table.stated(bin));
      }
    }
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
