// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.scene.Camera.Pixel;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.canvas.Pointer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The nodes of a tree as they appear: the trunk base and the end of every segment, but of none that
 * is hidden.
 *
 * @param all nodes in the order of the file, the base first
 */
record Nodes(List<Node> all) {
  /** How near a press has to be, so that a large finger finds it [user pixels]. */
  static final double GRASP = 16;

  /**
   * A node.
   *
   * @param spot the place on the tree that it is
   * @param at where [m, tree frame]
   * @param seen where it appears
   */
  record Node(Spot spot, Point3 at, Pixel seen) {
    boolean isBase() {
      return spot.along() == 0;
    }
  }

  static Nodes of(Canvas canvas, Skeleton skeleton) {
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i < skeleton.size(); i++) {
      String id = skeleton.segment(i).id();
      if (!canvas.isShown(id)) {
        continue;
      }
      if (skeleton.parent(i) == Skeleton.NONE) {
        nodes.add(0, node(canvas, new Spot(id, 0), skeleton.start(i)));
      }
      nodes.add(node(canvas, new Spot(id, 1), skeleton.end(i)));
    }
    return new Nodes(List.copyOf(nodes));
  }

  private static Node node(Canvas canvas, Spot spot, Point3 at) {
    return new Node(spot, at, canvas.project(at));
  }

  /** The node nearest to the pointer, if one is within its grasp. */
  Optional<Node> near(Pointer pointer) {
    Pixel here = new Pixel(pointer.x(), pointer.y());
    Node nearest = null;
    double best = GRASP;
    for (Node node : all) {
      double distance = node.seen().distance(here);
      if (distance <= best) {
        best = distance;
        nearest = node;
      }
    }
    return Optional.ofNullable(nearest);
  }
}
