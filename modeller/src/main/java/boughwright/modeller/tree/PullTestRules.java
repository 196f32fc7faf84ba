// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.PullTest.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What makes pull tests fit a tree, and what in them looks like a slip of the unit or of the pen.
 *
 * <p>The bounds are common practice, no source; they only make the person look again.
 */
public final class PullTestRules {
  /** The weight of some 50 kg, more than a branch of a tree in a container is pulled with [N]. */
  private static final double STRONGEST = 500;

  /** The weight of some 20 g [N]. */
  private static final double WEAKEST = 0.2;

  private static final double FARTHEST = 0.3;
  private static final double NEAREST = 0.3e-3;

  private PullTestRules() {}

  static void requireFitting(List<Segment> segments, List<PullTest> tests) {
    if (tests.isEmpty()) {
      return;
    }
    for (Finding finding : findings(segments.stream().map(Segment::id).toList(), tests)) {
      if (finding.isFault()) {
        throw new IllegalArgumentException(finding.found());
      }
    }
  }

  /**
   * Everything wrong with pull tests, and everything to look at again in them.
   *
   * @param segmentIds ids of all segments
   * @param tests tests in file order
   * @return findings whose fields start with {@code pull_tests[i].}
   */
  public static List<Finding> findings(Collection<String> segmentIds, List<PullTest> tests) {
    List<Finding> findings = new ArrayList<>();
    Set<String> segments = new HashSet<>(segmentIds);
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < tests.size(); i++) {
      PullTest test = tests.get(i);
      String at = "pull_tests[" + i + "].";
      if (!ids.add(test.id())) {
        String found = "the pull test id \"" + test.id() + "\" is used twice";
        String remedy = "Give one of the two pull tests another id";
        findings.add(
            Finding.fault(List.of(test.id()), at + "id", new Words("duplicate-id", found, remedy)));
      }
      if (!segments.contains(test.segment())) {
        String found =
            String.format(
                Locale.ROOT,
                "pull test \"%s\" is on \"%s\", which is no segment here",
                test.id(),
                test.segment());
        findings.add(
            Finding.fault(
                List.of(test.id(), test.segment()),
                at + "segment",
                new Words("unknown-segment", found, "Correct the segment")));
      }
      units(test, at, findings);
      growth(test, at, findings);
    }
    return findings;
  }

  private static void units(PullTest test, String at, List<Finding> findings) {
    for (int r = 0; r < test.readings().size(); r++) {
      Reading reading = test.readings().get(r);
      String place = at + "readings[" + r + "].";
      if (reading.force() > STRONGEST || reading.force() < WEAKEST) {
        String found =
            "the force is " + newtons(reading.force()) + ", as if grams or kilograms were meant";
        String remedy =
            "A kilogram, hung or on the scale, pulls 9.81 N, a pound 4.45 N; write newtons";
        findings.add(warning(test, place + "force_N", new Words("odd-force", found, remedy)));
      }
      if (reading.moved() > FARTHEST || reading.moved() < NEAREST) {
        String found =
            "the point moved "
                + Amount.millimetres(reading.moved())
                + ", as if inches, centimetres or metres were meant";
        findings.add(
            warning(
                test,
                place + "moved_mm",
                new Words("odd-movement", found, "Read it again and write millimetres")));
      }
    }
  }

  /** A stronger pull moves the point farther; if not, a reading or its base is wrong. */
  private static void growth(PullTest test, String at, List<Finding> findings) {
    List<Integer> order = new ArrayList<>();
    for (int r = 0; r < test.readings().size(); r++) {
      order.add(r);
    }
    order.sort(Comparator.comparingDouble(r -> test.readings().get(r).force()));
    for (int k = 1; k < order.size(); k++) {
      Reading weak = test.readings().get(order.get(k - 1));
      Reading strong = test.readings().get(order.get(k));
      if (strong.force() > weak.force() && net(strong) <= net(weak)) {
        String found =
            String.format(
                Locale.ROOT,
                "%s bent the branch by %s and %s by %s, which is no more",
                newtons(weak.force()),
                Amount.millimetres(net(weak)),
                newtons(strong.force()),
                Amount.millimetres(net(strong)));
        findings.add(
            warning(
                test,
                at + "readings[" + order.get(k) + "].moved_mm",
                new Words(
                    "no-growth",
                    found,
                    "Repeat the test; a stronger pull moves the point farther, the base taken off")));
      }
    }
  }

  private static double net(Reading reading) {
    return reading.moved() - reading.baseMoved();
  }

  private static Finding warning(PullTest test, String field, Words words) {
    return Finding.warning(List.of(test.id()), field, words);
  }

  private static String newtons(double force) {
    return Amount.number(force) + " N";
  }
}
