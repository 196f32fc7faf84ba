// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.plan.FrontMeasure;

/**
 * Measures what a tree shows from any front and at any planting angle. Immutable, for use by any
 * number of threads.
 *
 * <p>What is seen depends on the line of sight alone ({@link #seen}); the rest of a reading is
 * cheap ({@link #read(FrontPose, Seen)}).
 */
public final class FrontGauge {
  private final Eye eye;
  private final Parts parts;
  private final TrunkFigures trunk;
  private final BranchFigures branches;
  private final RootFlare roots;
  private final Standings standings;
  private final boolean hasDeadwood;
  private final SightFigures sights;

  /** Prepares to look at a tree. */
  public FrontGauge(FrontSubject subject, Eye eye) {
    this.eye = eye;
    parts = new Parts(subject);
    trunk = new TrunkFigures(subject.trunk());
    branches = new BranchFigures(parts, trunk, subject.foliage());
    roots = new RootFlare(parts, subject.trunk().calipers().get(0));
    standings = new Standings(parts);
    hasDeadwood = parts.roles.contains(Parts.Role.DEADWOOD);
    sights = new SightFigures(subject, parts, trunk);
  }

  public Eye eye() {
    return eye;
  }

  /** Measures everything for one pose. */
  public FrontReading read(FrontPose pose) {
    return read(pose, seen(eye.towardViewer(pose)));
  }

  /** Measures what depends on the line of sight alone. */
  public Seen seen(Direction3 towardViewer) {
    SightFigures.Look look = sights.look(towardViewer);
    double[] visible = look.trunk();
    double[] values = FrontReading.nothing();
    if (trunk.pieces() > 1 && trunk.hasChord) {
      values[FrontMeasure.TRUNK_MOVEMENT.ordinal()] = trunk.movement(towardViewer, visible);
      values[FrontMeasure.TRUNK_BULGE.ordinal()] = trunk.bulge(towardViewer);
    }
    values[FrontMeasure.TAPER.ordinal()] = trunk.taper(towardViewer, visible);
    values[FrontMeasure.WOUNDS.ordinal()] = look.wounds();
    if (hasDeadwood) {
      values[FrontMeasure.DEADWOOD.ordinal()] = look.deadwood();
    }
    if (branches.hasWood()) {
      values[FrontMeasure.BRANCHES_AT_VIEWER.ordinal()] =
          branches.pointing(towardViewer) + look.trunkHidden(visible);
    }
    if (!branches.isEmpty()) {
      values[FrontMeasure.DEPTH.ordinal()] = branches.behind(towardViewer);
      values[FrontMeasure.NEGATIVE_SPACE.ordinal()] = look.open();
    }
    return Seen.of(towardViewer, values, look.branches());
  }

  /**
   * Measures what is left to measure of a pose.
   *
   * @param pose the pose
   * @param seen what is seen along its line of sight, {@link Eye#towardViewer}
   */
  public FrontReading read(FrontPose pose, Seen seen) {
    return new FrontReading(pose, values(PoseAxes.of(pose), seen));
  }

  /** The same as plain numbers, one per measure; for loops over many poses. */
  double[] values(PoseAxes axes, Seen seen) {
    double[] values = seen.copyOfValues();
    if (!roots.isEmpty()) {
      values[FrontMeasure.ROOT_BASE_WIDTH.ordinal()] = roots.width(axes.right());
    }
    if (trunk.hasChord) {
      double along = trunk.chord.dot(axes.toward().vector()) / trunk.chord.norm();
      values[FrontMeasure.APEX_LEAN.ordinal()] = Math.asin(Math.min(1, Math.max(-1, along)));
    }
    if (!branches.isEmpty()) {
      values[FrontMeasure.BALANCE_SIDES.ordinal()] = branches.sides(axes.right());
    }
    values[FrontMeasure.BALANCE_OVER_BASE.ordinal()] = standings.overhang(axes.up()) / parts.size;
    if (branches.hasWood()) {
      double extent = standings.extent(axes.up());
      values[FrontMeasure.FIRST_BRANCH.ordinal()] =
          branches.first(axes.up(), extent, seen) / extent;
    }
    return values;
  }
}
