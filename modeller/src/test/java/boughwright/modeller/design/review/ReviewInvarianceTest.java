// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.planted.PlantedFaults;
import boughwright.modeller.design.planted.PlantedKind;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A review does not ask which way the tree was measured. */
class ReviewInvarianceTest {
  private static final double ROUNDING = 1e-6;

  private static Tree moved(Tree tree, UnaryOperator<Point3> move, double scale) {
    List<Segment> segments =
        tree.segments().stream()
            .map(
                s ->
                    new Segment(
                        s.id(),
                        s.parent(),
                        s.along(),
                        s.joins(),
                        s.kind(),
                        s.start().map(move),
                        move.apply(s.end()),
                        scale * s.caliperStart(),
                        scale * s.caliperEnd(),
                        s.bark(),
                        s.live(),
                        s.extras()))
            .toList();
    return new TreeDraft(tree).segments(segments).wounds(List.of()).build();
  }

  private static Review review(Tree tree, double front, ReviewRules rules) {
    WoodLeft wood = new WoodLeft(new Skeleton(tree));
    TrunkLine line = TrunkLine.of(wood, Optional.empty());
    return Review.of(wood, line, Optional.of(FrontPose.upright(front)), rules);
  }

  private static void assertSame(Review one, Review other) {
    assertThat(one.faults()).isNotEmpty();
    assertThat(other.faults()).hasSameSizeAs(one.faults());
    for (int n = 0; n < one.faults().size(); n++) {
      Fault a = one.faults().get(n);
      Fault b = other.faults().get(n);
      assertThat(b.kind()).isEqualTo(a.kind());
      assertThat(b.segments()).isEqualTo(a.segments());
      assertThat(b.measure().value()).isCloseTo(a.measure().value(), within(ROUNDING));
      assertThat(b.options()).hasSameSizeAs(a.options());
    }
  }

  private static List<Tree> trees() {
    Set<PlantedKind> one =
        EnumSet.of(PlantedKind.CROSSING, PlantedKind.INSIDE_OF_CURVE, PlantedKind.STRAIGHT);
    Set<PlantedKind> other =
        EnumSet.of(PlantedKind.WHORL, PlantedKind.AT_VIEWER, PlantedKind.COMPETING_LEADERS);
    return LongStream.range(700, 706)
        .mapToObj(seed -> PlantedFaults.grown(seed, seed % 2 == 0 ? one : other))
        .map(planted -> planted.document().tree())
        .toList();
  }

  @Test
  void turnedTree_hasTheSameFaults() {
    double turn = 1.234;
    for (Tree tree : trees()) {
      Tree turned =
          moved(
              tree,
              p ->
                  new Point3(
                      p.x() * Math.cos(turn) - p.y() * Math.sin(turn),
                      p.x() * Math.sin(turn) + p.y() * Math.cos(turn),
                      p.z()),
              1);
      assertSame(review(tree, 0.3, Trees.rules()), review(turned, 0.3 - turn, Trees.rules()));
    }
  }

  @Test
  void mirroredTree_hasTheSameFaults() {
    for (Tree tree : trees()) {
      Tree mirrored = moved(tree, p -> new Point3(-p.x(), p.y(), p.z()), 1);
      assertSame(review(tree, 0.3, Trees.rules()), review(mirrored, -0.3, Trees.rules()));
    }
  }

  @Test
  void largerTree_hasTheSameFaults_whereTwigsAndWireGrowWithIt() {
    for (Tree tree : trees()) {
      Tree larger = moved(tree, p -> new Point3(2 * p.x(), 2 * p.y(), 2 * p.z()), 2);
      ReviewRules rules =
          Trees.rules()
              .with(Limit.TWIG_CALIPER, 2 * Limit.TWIG_CALIPER.usual())
              .with(Limit.BENDABLE, 2 * Limit.BENDABLE.usual());
      assertSame(review(tree, 0.3, Trees.rules()), review(larger, 0.3, rules));
    }
  }
}
