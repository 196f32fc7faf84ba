// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import java.util.List;

/**
 * The poses of a course beside the one that is shown as bent.
 *
 * @param reached what the pose shown as bent is called
 * @param ghosts the poses on the way, in order
 * @param stays what is left when everything is taken off, limb by limb; empty where not known
 * @param staysWords when that is; blank where not known
 */
public record StagesView(
    String reached, List<Ghost> ghosts, List<Outline> stays, String staysWords) {
  public StagesView {
    ghosts = List.copyOf(ghosts);
    stays = List.copyOf(stays);
  }

  /**
   * A pose on the way.
   *
   * @param words the day, or how it is held
   * @param tone its tone
   */
  public record Ghost(String words, Colour tone) {}

  /**
   * The outline of a limb.
   *
   * @param axis points on its axis, in order [m, scene frame]
   * @param radii half its thickness at each of them [m]
   */
  public record Outline(List<Point3> axis, List<Double> radii) {
    public Outline {
      axis = List.copyOf(axis);
      radii = List.copyOf(radii);
    }
  }
}
