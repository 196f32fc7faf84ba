// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

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

  /** The same while the tree moves, when a tenth of a millimetre is not seen [m]. */
  private static final double STILL_ENOUGH = 1e-4;

  /** A change of strain that no colour shows, over the limit of the scale [1]. */
  private static final double SAME_COLOUR = 0.004;

  /** Beyond so many, tinted meshes of poses long gone are forgotten. */
  private static final int MOST_TINTED = 4000;

  private static final int NUMBERS = Axis.NUMBERS;

  private static final Slack ANY_STRAIN = new Slack(STILL, Double.POSITIVE_INFINITY);

  private final double still;
  private final Map<Key, Kept> kept = new HashMap<>();
  private final Map<Tint, Mesh> tinted = new HashMap<>();
  private final Map<Key, Compared> compared = new HashMap<>();

  /**
   * What is drawn in one place of a picture.
   *
   * @param use 0 for the pose that is shown, others for ghosts
   */
  record Key(int use, Limb limb, Skin.Stretch stretch, SkinMesher.End end, Skin.Detail detail) {
    // Limbs are looked up by the segments they begin with: a whole list is slow to hash.
    @Override
    public int hashCode() {
      return 31 * (31 * limb.first() + stretch.fromSegment()) + use;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key
          && use == key.use
          && limb == key.limb
          && stretch.equals(key.stretch)
          && end == key.end
          && detail.equals(key.detail);
    }
  }

  /** Whether a limb lies elsewhere in one pose than in another. */
  private record Compared(double[] one, double[] other, boolean elsewhere) {}

  /** A skin, and what it was made of. */
  private record Kept(Optional<StrainScale> colours, double[] axis, Mesh mesh) {}

  /**
   * A store for pictures that are drawn alike.
   *
   * @param fine whether even the smallest moves are to be seen
   */
  SkinStore(boolean fine) {
    still = fine ? STILL : STILL_ENOUGH;
  }

  /** Forgets everything, as for another tree. */
  void clear() {
    kept.clear();
    tinted.clear();
    compared.clear();
  }

  /** Whether a limb of one pose is seen beside that of another. */
  boolean isElsewhere(Key key, Pose pose, Pose other) {
    double[] one = pose.print(key.limb().first());
    double[] two = other.print(key.limb().first());
    Compared before = compared.get(key);
    if (before != null
        && isSame(before.one(), one, ANY_STRAIN)
        && isSame(before.other(), two, ANY_STRAIN)) {
      return before.elsewhere();
    }
    boolean elsewhere = LimbSkins.isElsewhere(key.limb(), key.stretch(), pose, other);
    compared.put(key, new Compared(one, two, elsewhere));
    return elsewhere;
  }

  /** The skin of a stretch of a limb in a pose. */
  Mesh mesh(LiveTree tree, Key key, Pose pose, Optional<StrainScale> colours) {
    double[] axis = pose.print(key.limb().first());
    Optional<StrainScale> told = colours.filter(scale -> isStrained(axis));
    Kept before = kept.get(key);
    double least = told.map(scale -> SAME_COLOUR * scale.limit()).orElse(1.0);
    if (before != null
        && before.colours().equals(told)
        && isSame(before.axis(), axis, new Slack(still, least))) {
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

  private static boolean isStrained(double[] axis) {
    for (int at = NUMBERS - 1; at < axis.length; at += NUMBERS) {
      if (axis[at] != 0) {
        return true;
      }
    }
    return false;
  }

  /** How far two places may lie apart [m], and how much their strain may differ [1]. */
  private record Slack(double place, double strain) {}

  private static boolean isSame(double[] one, double[] other, Slack slack) {
    if (one == other) {
      return true;
    }
    if (one.length != other.length) {
      return false;
    }
    for (int at = 0; at < one.length; at++) {
      double most = at % NUMBERS < 3 ? slack.place() : slack.strain();
      if (!(Math.abs(one[at] - other[at]) <= most)) {
        return false;
      }
    }
    return true;
  }
}
