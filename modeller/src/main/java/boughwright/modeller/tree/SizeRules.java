// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Warns of sizes a tree in a container hardly has, which mostly come from a slip of the unit.
 *
 * <p>All bounds are common practice, no source; they only make the person look again.
 */
final class SizeRules {
  /** A caliper this many times its neighbour's is more than reverse taper explains [1]. */
  private static final double MUCH_LARGER = 1.5;

  private static final double THINNEST = 0.2e-3;
  private static final double THICKEST = 1.0;
  private static final double FARTHEST = 20;
  private static final double TALLEST = 4;
  private static final double SMALLEST_TREE = 60e-3;
  private static final double SEEDLING_CALIPER = 6e-3;
  private static final double INCH = 25.4e-3;

  private final Layout layout;
  private final List<Finding> findings = new ArrayList<>();

  private SizeRules(Layout layout) {
    this.layout = layout;
  }

  static List<Finding> warnings(Layout layout) {
    SizeRules rules = new SizeRules(layout);
    for (int i = 0; i < layout.segments.size(); i++) {
      rules.besideParent(i);
      rules.widening(i);
    }
    rules.calipers();
    rules.wholeTree();
    return rules.findings;
  }

  private void besideParent(int i) {
    int parent = layout.parent[i];
    if (parent == Skeleton.NONE) {
      return;
    }
    Segment segment = layout.segments.get(i);
    double below = layout.caliper(parent, segment.along());
    if (segment.caliperStart() > MUCH_LARGER * below) {
      warn(
          List.of(segment.id(), id(parent)),
          "segments[" + i + "].caliper_start_mm",
          new Words(
              "caliper-jump",
              String.format(
                  Locale.ROOT,
                  "\"%s\" starts with a caliper of %s on \"%s\", which has %s there: the parent is"
                      + " much below its child",
                  segment.id(),
                  Amount.millimetres(segment.caliperStart()),
                  id(parent),
                  Amount.millimetres(below)),
              "Measure both again; one of them may be in another unit"));
    }
  }

  private void widening(int i) {
    Segment segment = layout.segments.get(i);
    if (segment.caliperEnd() > MUCH_LARGER * segment.caliperStart()) {
      warn(
          List.of(segment.id()),
          "segments[" + i + "].caliper_end_mm",
          new Words(
              "widening",
              String.format(
                  Locale.ROOT,
                  "\"%s\" widens from %s to %s",
                  segment.id(),
                  Amount.millimetres(segment.caliperStart()),
                  Amount.millimetres(segment.caliperEnd())),
              "Measure both calipers again; one of them may be in another unit"));
    }
  }

  private void calipers() {
    group(
        i -> Math.min(caliperStart(i), caliperEnd(i)) < THINNEST,
        i -> "is " + Amount.millimetres(Math.min(caliperStart(i), caliperEnd(i))) + " thick",
        "caliper_end_mm",
        "very-thin");
    group(
        i -> Math.max(caliperStart(i), caliperEnd(i)) > THICKEST,
        i -> "is " + Amount.millimetres(Math.max(caliperStart(i), caliperEnd(i))) + " thick",
        "caliper_start_mm",
        "very-thick");
  }

  private double caliperStart(int i) {
    return layout.segments.get(i).caliperStart();
  }

  private double caliperEnd(int i) {
    return layout.segments.get(i).caliperEnd();
  }

  private void wholeTree() {
    if (layout.segments.isEmpty()) {
      return;
    }
    Point3 base = layout.start[layout.outward[0]];
    boolean far =
        group(
            i -> reach(base, i) > FARTHEST,
            i -> "ends " + Amount.millimetres(reach(base, i)) + " from the trunk base",
            "end_mm",
            "far-away");
    double reach =
        IntStream.range(0, layout.segments.size()).mapToDouble(i -> reach(base, i)).max().orElse(0);
    double thickest =
        IntStream.range(0, layout.segments.size())
            .mapToDouble(i -> Math.max(caliperStart(i), caliperEnd(i)))
            .max()
            .orElse(0);
    if (!far && reach > TALLEST) {
      whole("very-tall", reach, thickest, reach / INCH * 1e-3);
    } else if (reach < SMALLEST_TREE && thickest < SEEDLING_CALIPER) {
      whole("very-small", reach, thickest, reach / 1e-3 * INCH);
    }
  }

  private double reach(Point3 base, int i) {
    return layout.segments.get(i).end().distance(base);
  }

  private void whole(String kind, double reach, double thickest, double inOtherUnit) {
    warn(
        List.of(),
        "segments",
        new Words(
            kind,
            String.format(
                Locale.ROOT,
                "the whole tree reaches %s with calipers up to %s; with mm and inches mixed up it would"
                    + " be %s",
                Amount.millimetres(reach),
                Amount.millimetres(thickest),
                Amount.millimetres(inOtherUnit)),
            "Check the unit: every length of the file is in millimetres"));
  }

  /** One warning for all segments that share an oddity; true if there is any. */
  private boolean group(IntPredicate odd, IntFunction<String> words, String field, String kind) {
    int[] which = IntStream.range(0, layout.segments.size()).filter(odd).toArray();
    if (which.length == 0) {
      return false;
    }
    String more = which.length > 1 ? " (and " + (which.length - 1) + " more like it)" : "";
    warn(
        IntStream.of(which).limit(10).mapToObj(this::id).toList(),
        "segments[" + which[0] + "]." + field,
        new Words(
            kind,
            "\"" + id(which[0]) + "\" " + words.apply(which[0]) + more,
            "Measure again; the unit of the file is the millimetre"));
    return true;
  }

  private String id(int i) {
    return layout.segments.get(i).id();
  }

  private void warn(List<String> subjects, String field, Words words) {
    findings.add(Finding.warning(subjects, field, words));
  }
}
