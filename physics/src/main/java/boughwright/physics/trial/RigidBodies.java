// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The tree as rigid bodies joined by pieces that bend. A body is a place on an axis together with
 * the parts of branches that sit inside the wood there; a piece is the stretch of one segment
 * between two bodies. Bodies are numbered from 0, the trunk base.
 */
final class RigidBodies {
  /** Places closer than this are one place [m]. */
  private static final double SAME = 1e-9;

  private final Timber timber;
  private final Skeleton skeleton;
  private final List<TreeMap<Double, Integer>> bodies = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private int count = 1;

  /**
   * A stretch that bends.
   *
   * @param segment segment index
   * @param from where it starts along the segment [m]
   * @param to where it ends [m]
   * @param inner body at its start
   * @param outer body at its end
   */
  record Piece(int segment, double from, double to, int inner, int outer) {}

  /**
   * Splits what the cuts leave.
   *
   * @param timber the wood
   * @param extra places that must be bodies besides the joints, by segment index [m]
   */
  RigidBodies(Timber timber, Map<Integer, List<Double>> extra) {
    this.timber = timber;
    skeleton = timber.skeleton();
    for (int i = 0; i < skeleton.size(); i++) {
      bodies.add(new TreeMap<>());
    }
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      if (!timber.isGone(i)) {
        split(i, extra.getOrDefault(i, List.of()));
      }
    }
  }

  private void split(int i, List<Double> extra) {
    int parent = skeleton.parent(i);
    double along = skeleton.segment(i).along();
    int start = parent == Skeleton.NONE ? 0 : bodyAt(parent, along * skeleton.length(parent));
    double from = timber.bendsFrom(i);
    double end = timber.end(i);
    TreeMap<Double, Integer> own = bodies.get(i);
    own.put(from, start);
    TreeSet<Double> places = new TreeSet<>(extra);
    for (int child : skeleton.children(i)) {
      if (!timber.isGone(child)) {
        places.add(skeleton.segment(child).along() * skeleton.length(i));
      }
    }
    places.addAll(timber.aids().breaks(i));
    places.add(end);
    double last = from;
    for (double place : places) {
      if (place > last + SAME && place <= end + SAME) {
        own.put(place, count);
        pieces.add(new Piece(i, last, place, own.get(last), count));
        count++;
        last = place;
      }
    }
  }

  /** The body nearest before or at a place of a segment that is left by the cuts. */
  int bodyAt(int i, double s) {
    Map.Entry<Double, Integer> before = bodies.get(i).floorEntry(s + SAME);
    return before == null ? bodies.get(i).firstEntry().getValue() : before.getValue();
  }

  /** Whether a place of a segment belongs to a body: it does not move against it. */
  boolean isRigid(int i, double s) {
    Map.Entry<Double, Integer> before = bodies.get(i).floorEntry(s + SAME);
    return before == null
        || s - before.getKey() <= SAME
        || before.getKey().equals(bodies.get(i).lastKey());
  }

  int count() {
    return count;
  }

  List<Piece> pieces() {
    return pieces;
  }
}
