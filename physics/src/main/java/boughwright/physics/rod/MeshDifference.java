// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.rod;

/** How much an answer changed when the elements were halved. */
final class MeshDifference {
  /**
   * The part of the change that is left in the finer answer. A fourth-order method leaves 1/15
   * (Richardson); more is reported, since coarse meshes do not show their full order.
   */
  private static final double LEFT = 0.1;

  private MeshDifference() {}

  static RodSolution.Error between(
      RodPose coarse, RodPose fine, LineForces coarseLines, LineForces fineLines) {
    double position = 0;
    double strain = 0;
    double peak = 0;
    for (int span = 0; span < fine.model().spans().size(); span++) {
      if (fine.loadedTo(span) == 0) {
        continue;
      }
      for (double s : coarse.stations(span)) {
        RodSection a = coarse.section(span, s);
        RodSection b = fine.section(span, s);
        position = Math.max(position, a.position().distance(b.position()));
        strain = Math.max(strain, Math.abs(a.addedCurvature() - b.addedCurvature()));
        peak = Math.max(peak, b.addedCurvature());
      }
    }
    double tension = 0;
    for (int i = 0; i < fineLines.tension.length; i++) {
      double now = fineLines.tension[i];
      double change = Math.abs(now - coarseLines.tension[i]);
      tension = Math.max(tension, now > 0 ? change / now : 0);
    }
    return new RodSolution.Error(
        LEFT * position, LEFT * tension, peak > 0 ? LEFT * strain / peak : 0);
  }
}
