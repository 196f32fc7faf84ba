// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.design.review.Trees.At;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The middle of the wood after cuts beside a sum over every piece that is left. */
class WoodMiddleTest {
  private static final List<String> IDS = List.of("t4", "t5", "t6", "a", "a1", "a2", "b", "b1");

  private static Skeleton tree() {
    return Trees.moving()
        .branch("r", "t1@0", 20, new At(60, 30, -40, 8), Kind.ROOT)
        .branch("a", "t3@0.5", 15, new At(120, 20, 190, 9))
        .branch("a1", "a@0.4", 8, new At(90, -70, 200, 4))
        .branch("a2", "a1@0.5", 5, new At(140, -60, 230, 3))
        .branch("b", "t5@0.3", 12, new At(-100, 40, 290, 6))
        .branch("b1", "b@1", 6, new At(-150, 60, 320, 3))
        .skeleton();
  }

  /** By Simpson's rule, which is exact for the cross-section of a cone times the distance. */
  private static double[] middle(WoodLeft wood) {
    double[] sum = new double[3];
    for (Frustum piece : wood.pieces()) {
      if (wood.skeleton().segment(piece.segment()).kind() == Kind.ROOT) {
        continue;
      }
      for (int n = 0; n <= 2; n++) {
        double radius = piece.startRadius() + n / 2.0 * (piece.endRadius() - piece.startRadius());
        double part = piece.length() * (n == 1 ? 4 : 1) / 6 * radius * radius;
        Point3 at = piece.start().toward(piece.end(), n / 2.0);
        sum[0] += part;
        sum[1] += part * at.x();
        sum[2] += part * at.y();
      }
    }
    return new double[] {sum[1] / sum[0], sum[2] / sum[0]};
  }

  private static List<Spot> some(Random random, int count) {
    List<Spot> cuts = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      double along = random.nextInt(3) == 0 ? 0 : random.nextDouble();
      cuts.add(new Spot(IDS.get(random.nextInt(IDS.size())), along));
    }
    return cuts;
  }

  @Test
  void cutsOnCuts_leaveTheMiddleOfWhatIsLeft() {
    Skeleton skeleton = tree();
    Random random = new Random(7);
    for (int trial = 0; trial < 200; trial++) {
      List<Spot> made = some(random, random.nextInt(3));
      List<Spot> more = some(random, 1 + random.nextInt(3));
      WoodLeft before = new WoodLeft(new Cutting(skeleton, made));
      TrunkLine trunk = TrunkLine.of(before, Optional.empty());
      Structure structure = new Structure(before, trunk, Optional.empty(), Trees.rules());
      WoodMiddle middle = new WoodMiddle(structure);
      List<Spot> all = new ArrayList<>(made);
      all.addAll(more);
      assertAt(middle.now(), middle(before));
      assertAt(middle.after(more), middle(new WoodLeft(new Cutting(skeleton, all))));
    }
  }

  private static void assertAt(Balance balance, double[] middle) {
    assertThat(balance.right()).isCloseTo(middle[0], within(1e-12));
    assertThat(balance.behind()).isCloseTo(middle[1], within(1e-12));
  }
}
