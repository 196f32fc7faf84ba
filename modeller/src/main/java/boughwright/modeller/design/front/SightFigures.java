// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.front.Parts.Role;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.sight.Shapes;
import boughwright.modeller.design.sight.VisibleAreas;
import boughwright.modeller.geometry.Direction3;
import java.util.Arrays;
import java.util.List;

/**
 * What other wood hides: areas seen of trunk, branches, deadwood and wounds. Immutable, for use by
 * any number of threads.
 */
final class SightFigures {
  /** Places along a piece as long as the tree is big ({@link VisibleAreas}); see docs/theory. */
  private static final int FINENESS = 60;

  /** Stands for a piece of the trunk line that has no length. */
  private static final int NONE = -1;

  private final Parts parts;
  private final WoundFigures wounds;
  private final int pads;

  /** Shape: one per piece of the trunk line; its index among all pieces. */
  private final int[] line;

  /** Shape: one per piece of the trunk line; its profile below the crown [m2]. */
  private final double[] lower;

  /** Shape: one per shape; whether the outline of the crown is laid round it. */
  private final boolean[] outlined;

  private final double lowerTotal;
  private final ThreadLocal<VisibleAreas> areas;

  SightFigures(FrontSubject subject, Parts parts, TrunkFigures trunk) {
    this.parts = parts;
    wounds = new WoundFigures(subject, parts);
    pads = subject.foliage().size();
    List<Integer> segments = subject.trunk().segments();
    line = new int[segments.size()];
    Arrays.fill(line, NONE);
    lower = new double[line.length];
    boolean[] group = new boolean[parts.count()];
    outlined = new boolean[parts.count() + pads];
    double sum = 0;
    for (int p = 0; p < parts.count(); p++) {
      Frustum piece = parts.pieces.get(p);
      outlined[p] = parts.roles.get(p) != Role.ROOT;
      if (parts.roles.get(p) == Role.TRUNK) {
        int k = segments.indexOf(piece.segment());
        line[k] = p;
        lower[k] =
            Parts.profile(piece)
                * Lower.weight(trunk.height(piece.start().toward(piece.end(), 0.5)));
        sum += lower[k];
        group[p] = true;
      }
    }
    for (int p = parts.count(); p < outlined.length; p++) {
      outlined[p] = true;
    }
    lowerTotal = sum;
    Shapes shapes = new Shapes(parts.pieces, parts.inSoil, group, subject.foliage());
    areas = ThreadLocal.withInitial(() -> new VisibleAreas(shapes, FINENESS, outlined));
  }

  /** What is seen from one side; the same thread's next look takes it back. */
  Look look(Direction3 toward) {
    VisibleAreas now = areas.get();
    now.look(toward);
    return new Look(now, toward);
  }

  /** What is seen from one side. */
  final class Look {
    private final VisibleAreas now;
    private final Direction3 toward;

    private Look(VisibleAreas now, Direction3 toward) {
      this.now = now;
      this.toward = toward;
    }

    /** Visible part of each piece of the trunk line [1]. */
    double[] trunk() {
      double[] visible = new double[line.length];
      for (int k = 0; k < line.length; k++) {
        double area = line[k] == NONE ? 0 : now.area(line[k]);
        visible[k] = area > 0 ? now.clear(line[k]) / area : 1;
      }
      return visible;
    }

    /** Part of the trunk below the crown that is hidden [1]. */
    double trunkHidden(double[] visible) {
      double sum = 0;
      for (int k = 0; k < line.length; k++) {
        sum += lower[k] * (1 - visible[k]);
      }
      return lowerTotal > 0 ? sum / lowerTotal : 0;
    }

    /** Area seen of each branch on the trunk line over the trunk's profile [1]. */
    double[] branches() {
      double[] out = new double[parts.branchStarts.size()];
      for (int p = 0; p < parts.count(); p++) {
        if (parts.branchOf[p] != Parts.NO_BRANCH) {
          out[parts.branchOf[p]] += now.seen(p) / parts.trunkProfile;
        }
      }
      return out;
    }

    /** Area seen of the deadwood over the trunk's profile [1]. */
    double deadwood() {
      double sum = 0;
      for (int p = 0; p < parts.count(); p++) {
        sum += parts.roles.get(p) == Role.DEADWOOD ? now.seen(p) : 0;
      }
      return sum / parts.trunkProfile;
    }

    /** Area seen of the wounds over the trunk's profile [1]. */
    double wounds() {
      return wounds.seen(toward, now) / parts.trunkProfile;
    }

    /** Part of the outline that nothing covers [1]. */
    double open() {
      double covered = 0;
      for (int i = 0; i < outlined.length; i++) {
        covered += outlined[i] ? now.seen(i) : 0;
      }
      double whole = now.outline(outlined);
      return whole > 0 ? Math.max(0, 1 - covered / whole) : 0;
    }
  }
}
