// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.Amount;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Whether the two ends of a guy-line, whose places are sound, make a line that can pull. */
final class LineRules {
  /** Ends closer than this are one point: a micrometre [m]. */
  private static final double ONE_POINT = 1e-6;

  private final Cutting cutting;
  private final Skeleton skeleton;
  private final GuyLine line;

  LineRules(Cutting cutting, GuyLine line) {
    this.cutting = cutting;
    this.skeleton = cutting.skeleton();
    this.line = line;
  }

  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    boolean onTree = line.anchor() instanceof Anchor.OnTree;
    Point3 anchor = anchor();
    double gap = tie().distance(anchor);
    if (!onTree) {
      findings.addAll(insideWood(anchor));
    } else if (skeletonPoint(line.at()).distance(anchor) < ONE_POINT) {
      findings.add(
          fault(
              "anchor",
              "same-ends",
              "the line has both its ends at one point",
              "Tie its other end somewhere else"));
    }
    if (findings.isEmpty()
        && line.hold() instanceof Hold.Shortening shortening
        && !(shortening.metres() < gap)) {
      findings.add(
          fault(
              "shorten_mm",
              "shortened-to-nothing",
              String.format(
                  Locale.ROOT,
                  "the line is shortened by %s, but the straight distance is only %s",
                  Amount.millimetres(shortening.metres()),
                  Amount.millimetres(gap)),
              "Shorten it by less than the distance between its two points"));
    }
    if (findings.isEmpty()) {
      oddities(findings, anchor, gap);
    }
    return findings;
  }

  private void oddities(List<Finding> findings, Point3 anchor, double gap) {
    if (line.hold() instanceof Hold.Length length && length.metres() > gap) {
      findings.add(
          warning(
              "length_mm",
              "slack-line",
              String.format(
                  Locale.ROOT,
                  "the line is %s long and its two points are %s apart: it hangs loose and pulls"
                      + " only what moves away from it",
                  Amount.millimetres(length.metres()),
                  Amount.millimetres(gap)),
              "To pull with it, give a length_mm below " + Amount.millimetres(gap)));
    }
    if (gap > ONE_POINT) {
      new SightRules(cutting, line).finding(tie(), anchor).ifPresent(findings::add);
    }
    boolean twisted = line.tackle().tightener().orElse(null) instanceof Tightener.Twist;
    if (twisted && line.tackle().strand().filter(strand -> strand.count() != 2).isPresent()) {
      findings.add(
          warning(
              "strand",
              "no-double-strand",
              "a line is tightened by twisting two strands, and this one has "
                  + line.tackle().strand().get().count(),
              "Give count 2 for a loop from pad to anchor and back, or another tightener"));
    }
    if (line.tackle().anchorKind().isPresent() && line.anchor() instanceof Anchor.OnTree) {
      findings.add(
          warning(
              "anchor_kind",
              "kind-of-a-tie",
              "anchor_kind is given, but the line is tied to the tree",
              "Take anchor_kind out; it says what a fixed anchor is"));
    }
  }

  private Point3 anchor() {
    return line.anchor() instanceof Anchor.Fixed fixed
        ? fixed.point()
        : skeletonPoint(((Anchor.OnTree) line.anchor()).spot());
  }

  private Point3 skeletonPoint(Spot spot) {
    return skeleton.point(skeleton.indexOf(spot.segment()), spot.along());
  }

  private Point3 tie() {
    return tie(skeleton, line, line.at().along());
  }

  /**
   * The point where a line tied so far along its segment pulls: on the axis, or on the bark where
   * it has a pad, or beyond at the end of its lever [m].
   */
  static Point3 tie(Skeleton skeleton, GuyLine line, double along) {
    int i = skeleton.indexOf(line.at().segment());
    Point3 at =
        line.padRound().isPresent()
            ? skeleton.barkPoint(i, along, line.padRound().getAsDouble())
            : skeleton.point(i, along);
    return at.plus(skeleton.direction(i).times(line.tackle().lever()));
  }

  private List<Finding> insideWood(Point3 anchor) {
    for (int i = 0; i < skeleton.size(); i++) {
      if (!cutting.isGone(i) && skeleton.encloses(i, anchor, cutting.left(i))) {
        String id = skeleton.segment(i).id();
        return List.of(
            fault(
                "anchor_mm",
                "anchor-in-wood",
                String.format(
                    Locale.ROOT,
                    "the anchor of guy-line \"%s\" is inside the wood of \"%s\"",
                    line.id(),
                    id),
                "Measure the anchor again; to tie the line to the tree, give \"anchor\" with a"
                    + " segment and along"));
      }
    }
    return List.of();
  }

  private Finding fault(String field, String kind, String found, String remedy) {
    return Finding.fault(List.of(line.id()), field, new Words(kind, found, remedy));
  }

  private Finding warning(String field, String kind, String found, String remedy) {
    return Finding.warning(List.of(line.id()), field, new Words(kind, found, remedy));
  }
}
