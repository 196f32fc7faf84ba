// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.LinkedList;
import java.util.List;
import java.util.Optional;

/**
 * The way along the axis from one place of the tree to another further out, in a pose; also over
 * several segments and across unions. What lies inside a parent is left out.
 */
final class BarkPath {
  private final Skeleton skeleton;
  private final Pose pose;
  private final List<Piece> pieces;
  private final double length;

  /** A stretch of one segment. */
  private record Piece(int segment, double from, double to, double length) {}

  private BarkPath(Skeleton skeleton, Pose pose, List<Piece> pieces) {
    this.skeleton = skeleton;
    this.pose = pose;
    this.pieces = List.copyOf(pieces);
    length = pieces.stream().mapToDouble(Piece::length).sum();
  }

  /** The way between two places; empty where the second does not lie further out on the first. */
  static Optional<BarkPath> of(Skeleton skeleton, Pose pose, Spot from, Spot to) {
    int first = skeleton.indexOf(from.segment());
    LinkedList<Piece> pieces = new LinkedList<>();
    double end = to.along();
    for (int i = skeleton.indexOf(to.segment()); i != Skeleton.NONE; i = skeleton.parent(i)) {
      double start = Math.max(out(skeleton, i), i == first ? from.along() : 0);
      if (end > start) {
        pieces.addFirst(new Piece(i, start, end, (end - start) * skeleton.length(i)));
      }
      if (i == first) {
        return pieces.isEmpty()
            ? Optional.empty()
            : Optional.of(new BarkPath(skeleton, pose, pieces));
      }
      end = skeleton.segment(i).along();
    }
    return Optional.empty();
  }

  /** Where a segment comes out of its parent's bark, as a fraction of its length. */
  private static double out(Skeleton skeleton, int i) {
    boolean shoot = skeleton.parent(i) == Skeleton.NONE || skeleton.joint(i) == Joint.CONTINUES;
    return shoot ? 0 : Collar.of(skeleton, i).surface() / skeleton.length(i);
  }

  /** What tells this way from the same one in another pose. */
  List<double[]> prints() {
    return pieces.stream().map(piece -> pose.print(piece.segment())).distinct().toList();
  }

  /** Length at rest [m]. */
  double length() {
    return length;
  }

  /** The axis and the bark at a length from the start [m]. */
  Station at(double s) {
    double rest = Math.max(0, s);
    int n = 0;
    while (n < pieces.size() - 1 && rest > pieces.get(n).length()) {
      rest -= pieces.get(n).length();
      n++;
    }
    Piece piece = pieces.get(n);
    double part = Math.min(1, rest / piece.length());
    double along = piece.from() + part * (piece.to() - piece.from());
    Axis axis = pose.at(piece.segment(), along);
    double radius = Thickness.radius(skeleton.segment(piece.segment()), along);
    Vector3 side = axis.strain() == 0 ? Vector3.ZERO : axis.tensionSide();
    Station plain =
        new Station(
            axis.point(),
            axis.direction(),
            radius,
            axis.strain(),
            side,
            Palette.BARK,
            1,
            fromHead(piece.segment(), along));
    int head = head(piece.segment());
    return skeleton.parent(head) == Skeleton.NONE ? plain : Collar.of(skeleton, head).at(plain);
  }

  /** The innermost segment of the limb a segment belongs to. */
  private int head(int segment) {
    int i = segment;
    while (isGoingOn(i)) {
      i = skeleton.parent(i);
    }
    return i;
  }

  private boolean isGoingOn(int i) {
    return skeleton.parent(i) != Skeleton.NONE
        && skeleton.joint(i) == Joint.CONTINUES
        && skeleton.segment(i).along() == 1;
  }

  private double fromHead(int segment, double along) {
    double rest = along * skeleton.length(segment);
    for (int i = segment; isGoingOn(i); i = skeleton.parent(i)) {
      rest += skeleton.length(skeleton.parent(i));
    }
    return rest;
  }

  /** Places evenly spread from start to end. */
  List<Station> spread(int count) {
    List<Station> stations = new ArrayList<>();
    for (int n = 0; n <= count; n++) {
      stations.add(at(length * n / count));
    }
    return stations;
  }
}
