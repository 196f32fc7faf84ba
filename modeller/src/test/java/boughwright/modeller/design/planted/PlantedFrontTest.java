// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeRules;
import boughwright.modeller.tree.Wound;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** That the trees really stand as the hidden front promises. */
class PlantedFrontTest {
  private static final List<PlantedFront> TREES = PlantedFront.hundred();

  private static IntStream of(Skeleton skeleton, Kind kind) {
    return IntStream.range(0, skeleton.size()).filter(i -> skeleton.segment(i).kind() == kind);
  }

  private static double part(Point3 point, Direction3 way) {
    return point.minus(Point3.ORIGIN).dot(way.vector());
  }

  @Test
  void trees_areOfTheSizesOfTheTrade_andWithoutAnyFinding() {
    for (PlantedFront planted : TREES) {
      assertThat(TreeRules.findings(planted.tree().segments(), planted.tree().wounds()))
          .extracting(Finding::found)
          .as("seed " + planted.seed())
          .isEmpty();
      assertThat(planted.tree().segments()).hasSizeBetween(20, 80);
      assertThat(planted.tree().segments().get(0).caliperStart()).isBetween(20e-3, 90e-3);
      double top =
          planted.tree().segments().stream()
              .filter(segment -> segment.kind() == Kind.TRUNK)
              .mapToDouble(segment -> segment.end().z())
              .max()
              .orElseThrow();
      assertThat(top).isBetween(0.15, 0.9);
    }
  }

  @Test
  void seed_givesTheSameTree_andAnotherSeedAnother() {
    assertThat(PlantedFront.of(5)).isEqualTo(TREES.get(4));
    assertThat(PlantedFront.of(6).tree()).isNotEqualTo(PlantedFront.of(5).tree());
  }

  @Test
  void hiddenFronts_lieAllRound() {
    for (int quarter = 0; quarter < 4; quarter++) {
      double from = quarter * Math.PI / 2;
      assertThat(TREES)
          .filteredOn(t -> t.azimuth() >= from && t.azimuth() < from + Math.PI / 2)
          .hasSizeGreaterThan(12);
    }
  }

  @Test
  void trunk_movesAcrossTheView_andTheApexComesTowardTheViewer() {
    for (PlantedFront planted : TREES) {
      Skeleton skeleton = new Skeleton(planted.tree());
      Direction3 toward = Direction3.ofAzimuth(planted.azimuth());
      Direction3 across = Direction3.ofAzimuth(planted.azimuth() + Math.PI / 2);
      double[] sideways =
          of(skeleton, Kind.TRUNK).mapToDouble(i -> part(skeleton.end(i), across)).toArray();
      double[] forward =
          of(skeleton, Kind.TRUNK).mapToDouble(i -> part(skeleton.end(i), toward)).toArray();
      assertThat(spread(sideways))
          .as("seed " + planted.seed())
          .isGreaterThan(1.4 * spread(forward));
      assertThat(forward[forward.length - 1]).isPositive();
    }
  }

  private static double spread(double[] values) {
    double mean = IntStream.range(0, values.length).mapToDouble(i -> values[i]).sum();
    double middle = mean / values.length;
    double sum = 0;
    for (double value : values) {
      sum += (value - middle) * (value - middle);
    }
    return Math.sqrt(sum / values.length);
  }

  @Test
  void wounds_lookAwayFromTheViewer() {
    for (PlantedFront planted : TREES) {
      Skeleton skeleton = new Skeleton(planted.tree());
      Direction3 toward = Direction3.ofAzimuth(planted.azimuth());
      assertThat(planted.tree().wounds()).isNotEmpty();
      for (Wound wound : planted.tree().wounds()) {
        int on = skeleton.indexOf(wound.segment());
        assertThat(skeleton.roundDirection(on, wound.round()).dot(toward)).isLessThan(-0.5);
      }
    }
  }

  @Test
  void lowBranches_leaveTheViewFree() {
    for (PlantedFront planted : TREES) {
      Skeleton skeleton = new Skeleton(planted.tree());
      Direction3 toward = Direction3.ofAzimuth(planted.azimuth());
      double half = 0.5 * skeleton.end(of(skeleton, Kind.TRUNK).max().orElseThrow()).z();
      List<Integer> low =
          of(skeleton, Kind.BRANCH).filter(i -> skeleton.start(i).z() < half).boxed().toList();
      assertThat(low).isNotEmpty();
      assertThat(low).allMatch(i -> skeleton.direction(i).dot(toward) < Math.cos(1.0));
    }
  }

  @Test
  void rootBase_isWidestAcrossTheView() {
    double widest = 0;
    for (PlantedFront planted : TREES) {
      Skeleton skeleton = new Skeleton(planted.tree());
      double across = width(skeleton, planted.azimuth() + Math.PI / 2);
      double along = width(skeleton, planted.azimuth());
      assertThat(across).as("seed " + planted.seed()).isGreaterThan(along);
      widest = Math.max(widest, across / along);
    }
    assertThat(widest).isGreaterThan(1.5);
  }

  private static double width(Skeleton skeleton, double azimuth) {
    Direction3 way = Direction3.ofAzimuth(azimuth);
    double[] parts = of(skeleton, Kind.ROOT).mapToDouble(i -> part(skeleton.end(i), way)).toArray();
    double high = IntStream.range(0, parts.length).mapToDouble(i -> parts[i]).max().orElseThrow();
    double low = IntStream.range(0, parts.length).mapToDouble(i -> parts[i]).min().orElseThrow();
    return high - low;
  }
}
