// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes the skins of limbs for one picture after another, and gives the same mesh again where a
 * limb has not moved. Used by one thread.
 */
final class SkinStore {
  /** A limb that moved less than this keeps its skin [m]. */
  private static final double STILL = 2e-5;

  /** A change of strain that no colour shows, over the limit of the scale [1]. */
  private static final double SAME_COLOUR = 0.004;

  /** Beyond so many, tinted meshes of poses long gone are forgotten. */
  private static final int MOST_TINTED = 4000;

  private static final double[] LOOKED_AT = {0, 0.25, 0.5, 0.75, 1};
  private static final int NUMBERS = 7;

  private final Map<Key, Kept> kept = new HashMap<>();
  private final Map<Tint, Mesh> tinted = new HashMap<>();

  /**
   * What is drawn in one place of a picture.
   *
   * @param use 0 for the pose that is shown, others for ghosts
   */
  record Key(int use, Limb limb, Skin.Stretch stretch, SkinMesher.End end, Skin.Detail detail) {}

  /** A skin, and what it was made of. */
  private record Kept(Optional<StrainScale> colours, double[] axis, Mesh mesh) {}

  /** Forgets everything, as for another tree. */
  void clear() {
    kept.clear();
    tinted.clear();
  }

  /** The skin of a stretch of a limb in a pose. */
  Mesh mesh(LiveTree tree, Key key, Pose pose, Optional<StrainScale> colours) {
    double[] axis = axis(key, pose);
    Optional<StrainScale> told = colours.filter(scale -> isStrained(axis));
    Kept before = kept.get(key);
    double least = told.map(scale -> SAME_COLOUR * scale.limit()).orElse(1.0);
    if (before != null && before.colours().equals(told) && isSame(before.axis(), axis, least)) {
      return before.mesh();
    }
    List<Station> stations =
        new Skin(tree.skeleton, key.detail()).stations(key.limb(), key.stretch(), pose);
    Mesh mesh = new SkinMesher(key.detail().sides(), told).close(stations, key.end());
    kept.put(key, new Kept(told, axis, mesh));
    return mesh;
  }

  /** A mesh in one colour; the same again for the same mesh. */
  Mesh tinted(Mesh mesh, Colour tone) {
    if (tinted.size() > MOST_TINTED) {
      tinted.clear();
    }
    return tinted.computeIfAbsent(new Tint(mesh, tone), t -> mesh.tinted(tone));
  }

  /** A mesh, which is equal only to itself, and a tone. */
  private record Tint(Mesh mesh, Colour tone) {}

  /** Where the axis lies and how it is strained, at a few places on each segment. */
  private static double[] axis(Key key, Pose pose) {
    Skin.Stretch stretch = key.stretch();
    int count = stretch.toSegment() - stretch.fromSegment() + 1;
    double[] numbers = new double[count * LOOKED_AT.length * NUMBERS];
    int at = 0;
    for (int k = stretch.fromSegment(); k <= stretch.toSegment(); k++) {
      int segment = key.limb().segments().get(k);
      double from = k == stretch.fromSegment() ? stretch.fromAlong() : 0;
      double to = k == stretch.toSegment() ? stretch.toAlong() : 1;
      for (double part : LOOKED_AT) {
        Axis axis = pose.at(segment, from + part * (to - from));
        double strain = axis.strain();
        double[] here = {
          axis.point().x(),
          axis.point().y(),
          axis.point().z(),
          strain * axis.tensionSide().x(),
          strain * axis.tensionSide().y(),
          strain * axis.tensionSide().z(),
          strain
        };
        System.arraycopy(here, 0, numbers, at, NUMBERS);
        at += NUMBERS;
      }
    }
    return numbers;
  }

  private static boolean isStrained(double[] axis) {
    for (int at = NUMBERS - 1; at < axis.length; at += NUMBERS) {
      if (axis[at] != 0) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(double[] one, double[] other, double leastStrain) {
    if (Arrays.equals(one, other)) {
      return true;
    }
    for (int at = 0; at < one.length; at++) {
      double most = at % NUMBERS < 3 ? STILL : leastStrain;
      if (!(Math.abs(one[at] - other[at]) <= most)) {
        return false;
      }
    }
    return true;
  }
}
