// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.planted;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.TreeRules;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** That what is said to be planted is there, and that the rest of the trees is sound. */
class PlantedFaultsTest {
  private static final List<PlantedFaults> TREES = PlantedFaults.hundred();

  /** A fault on its tree. */
  private record Seen(PlantedFaults planted, Skeleton skeleton, List<Integer> at) {
    double top() {
      return of(Kind.TRUNK)
          .filter(i -> id(i).startsWith("t"))
          .mapToDouble(this::endZ)
          .max()
          .orElseThrow();
    }

    IntStream of(Kind kind) {
      return IntStream.range(0, skeleton.size()).filter(i -> skeleton.segment(i).kind() == kind);
    }

    String id(int i) {
      return skeleton.segment(i).id();
    }

    double endZ(int i) {
      return skeleton.end(i).z();
    }

    Direction3 way(int n) {
      return skeleton.direction(at.get(n));
    }

    Point3 start(int n) {
      return skeleton.start(at.get(n));
    }

    double startCaliper(int i) {
      return skeleton.segment(i).caliperStart();
    }

    double caliperBelow(int i) {
      return skeleton.segment(skeleton.parent(i)).caliperEnd();
    }
  }

  @ParameterizedTest
  @EnumSource(PlantedKind.class)
  void plantedFault_isThere(PlantedKind kind) {
    int found = 0;
    for (PlantedFaults planted : TREES) {
      Skeleton skeleton = new Skeleton(planted.document().tree());
      for (PlantedFault fault : planted.faults()) {
        if (fault.kind() == kind) {
          List<Integer> at = fault.segments().stream().map(skeleton::indexOf).toList();
          assertThat(isThere(kind, new Seen(planted, skeleton, at)))
              .as(kind + " of seed " + planted.seed())
              .isTrue();
          found++;
        }
      }
    }
    assertThat(found).isGreaterThanOrEqualTo(25);
  }

  private static boolean isThere(PlantedKind kind, Seen seen) {
    return switch (kind) {
      case BAR_BRANCHES -> leaveTogether(seen, 2, 165, 180);
      case WHORL -> leaveTogether(seen, 3, 105, 135);
      case CROSSING -> crosses(seen);
      case PARALLEL -> isParallel(seen);
      case INSIDE_OF_CURVE -> isInside(seen);
      case STRAIGHT -> isStraight(seen);
      case REVERSE_TAPER ->
          seen.startCaliper(seen.at().get(0))
              > 1.14 * seen.skeleton().segment(seen.at().get(1)).caliperEnd();
      case TOO_THICK ->
          seen.startCaliper(seen.at().get(0)) > 0.72 * seen.caliperBelow(seen.at().get(0));
      case TOO_LOW -> seen.start(0).z() < 0.12 * seen.top();
      case COMPETING_LEADERS -> competes(seen);
      case LONG_INTERNODE -> isBare(seen);
      case AT_VIEWER -> pointsAtViewer(seen);
    };
  }

  private static double level(Direction3 a, Direction3 b) {
    return Math.toDegrees(Direction3.of(a.x(), a.y(), 0).angleTo(Direction3.of(b.x(), b.y(), 0)));
  }

  /** Round the trunk, a branch sways up to 10 degrees from where it aims. */
  private static boolean leaveTogether(Seen seen, int count, double least, double most) {
    if (seen.at().size() != count) {
      return false;
    }
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < i; j++) {
        double apart = level(seen.way(i), seen.way(j));
        if (seen.start(i).distance(seen.start(j)) > 1e-9
            || apart < least - 20
            || apart > most + 20) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean crosses(Seen seen) {
    Skeleton skeleton = seen.skeleton();
    int a = seen.at().get(0);
    int b = seen.at().get(1);
    double least = Double.POSITIVE_INFINITY;
    for (double s = 0.1; s <= 0.9; s += 0.01) {
      for (double t = 0.1; t <= 0.9; t += 0.01) {
        double bark = (skeleton.caliper(a, s) + skeleton.caliper(b, t)) / 2;
        least = Math.min(least, skeleton.point(a, s).distance(skeleton.point(b, t)) / bark);
      }
    }
    double angle = Math.toDegrees(seen.way(0).angleTo(seen.way(1)));
    return least < 1 && Math.min(angle, 180 - angle) > 40;
  }

  private static boolean isParallel(Seen seen) {
    int half = seen.at().size() / 2;
    double rise = Math.abs(seen.start(0).z() - seen.start(half).z());
    return rise < 0.12 * seen.top()
        && IntStream.range(0, half)
            .allMatch(i -> Math.toDegrees(seen.way(i).angleTo(seen.way(half + i))) < 3);
  }

  private static boolean isInside(Seen seen) {
    Skeleton skeleton = seen.skeleton();
    int below = skeleton.parent(seen.at().get(0));
    int above =
        skeleton.children(below).stream()
            .filter(i -> skeleton.joint(i) == Joint.CONTINUES)
            .findFirst()
            .orElseThrow();
    Vector3 turned = skeleton.direction(above).vector().minus(skeleton.direction(below).vector());
    return turned.norm() > 0.3 && turned.direction().dot(seen.way(0)) > 0.6;
  }

  private static boolean isStraight(Seen seen) {
    double whole =
        seen.of(Kind.TRUNK)
            .filter(i -> seen.id(i).startsWith("t"))
            .mapToDouble(seen.skeleton()::length)
            .sum();
    double length = seen.at().stream().mapToDouble(seen.skeleton()::length).sum();
    Direction3 chord =
        seen.skeleton().end(seen.at().get(seen.at().size() - 1)).minus(seen.start(0)).direction();
    return length > 0.34 * whole
        && IntStream.range(0, seen.at().size()).allMatch(i -> seen.way(i).angleTo(chord) < 0.06);
  }

  private static boolean competes(Seen seen) {
    int leader = seen.at().get(0);
    double top =
        seen.of(Kind.TRUNK)
            .filter(i -> seen.id(i).startsWith(seen.id(leader)))
            .mapToDouble(seen::endZ)
            .max()
            .orElseThrow();
    return seen.skeleton().segment(leader).kind() == Kind.TRUNK
        && top > 0.94 * seen.top()
        && seen.startCaliper(leader) > 0.8 * seen.caliperBelow(leader);
  }

  private static boolean isBare(Seen seen) {
    Skeleton skeleton = seen.skeleton();
    double bare = seen.at().stream().mapToDouble(skeleton::length).sum();
    return bare > 12 * seen.startCaliper(seen.at().get(0))
        && seen.at().stream()
            .limit(seen.at().size() - 1L)
            .allMatch(i -> skeleton.children(i).size() == 1);
  }

  private static boolean pointsAtViewer(Seen seen) {
    double front = seen.planted().document().plans().get(0).frontAzimuth().orElseThrow();
    int branch = seen.at().get(0);
    return level(seen.way(0), Direction3.ofAzimuth(front)) < 17
        && seen.start(0).z() < 0.42 * seen.top()
        && seen.startCaliper(branch) > 0.38 * seen.caliperBelow(branch);
  }

  @Test
  void trees_areWithoutAnyFinding_andOfTheSizesOfTheTrade() {
    for (PlantedFaults planted : TREES) {
      assertThat(
              TreeRules.findings(
                  planted.document().tree().segments(), planted.document().tree().wounds()))
          .extracting(Finding::found)
          .as("seed " + planted.seed())
          .isEmpty();
      assertThat(planted.document().tree().segments()).hasSizeBetween(20, 80);
    }
  }

  @Test
  void restOfTheTree_leavesNothingInDoubt() {
    for (PlantedFaults planted : TREES) {
      Skeleton skeleton = new Skeleton(planted.document().tree());
      Set<PlantedKind> kinds =
          planted.faults().stream().map(PlantedFault::kind).collect(Collectors.toSet());
      Seen seen = new Seen(planted, skeleton, List.of());
      for (int i = 0; i < skeleton.size(); i++) {
        Kind kind = skeleton.segment(i).kind();
        if (skeleton.parent(i) == Skeleton.NONE || kind == Kind.ROOT) {
          continue;
        }
        double ratio = seen.startCaliper(i) / seen.caliperBelow(i);
        if (skeleton.joint(i) == Joint.CONTINUES) {
          boolean mayWiden = kinds.contains(PlantedKind.REVERSE_TAPER) && kind == Kind.TRUNK;
          assertThat(ratio).isLessThanOrEqualTo(mayWiden ? 1.25 : 1.0001);
        } else {
          assertThat(ratio > 0.46 && ratio < 0.72).as(seen.id(i) + " is " + ratio).isFalse();
          double place = skeleton.start(i).z() / seen.top();
          boolean onTrunk = skeleton.segment(skeleton.parent(i)).kind() == Kind.TRUNK;
          assertThat(onTrunk && place > 0.12 && place < 0.3)
              .as(seen.id(i) + " at " + place)
              .isFalse();
        }
      }
    }
  }

  @Test
  void seed_givesTheSameTree_andSoundTreesHaveNoFault() {
    assertThat(PlantedFaults.sound(9)).isEqualTo(PlantedFaults.sound(9));
    assertThat(PlantedFaults.sound(9).document()).isNotEqualTo(PlantedFaults.sound(8).document());
    assertThat(PlantedFaults.sound(9).faults()).isEmpty();
    for (PlantedFaults planted : TREES.subList(40, 43)) {
      Set<PlantedKind> kinds =
          planted.faults().stream().map(PlantedFault::kind).collect(Collectors.toSet());
      assertThat(PlantedFaults.grown(planted.seed(), kinds)).isEqualTo(planted);
    }
  }
}
