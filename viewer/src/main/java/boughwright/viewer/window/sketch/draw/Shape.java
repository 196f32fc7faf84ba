// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.draw;

import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Tree;
import boughwright.viewer.window.work.Workspace;

/** The shape of the workspace's tree, worked out once for each tree. */
public final class Shape {
  private final Workspace workspace;
  private Skeleton known;

  public Shape(Workspace workspace) {
    this.workspace = workspace;
  }

  public Workspace workspace() {
    return workspace;
  }

  /** The shape of the tree as it is now. */
  public Skeleton skeleton() {
    Tree tree = workspace.document().tree();
    if (known == null || known.tree() != tree) {
      known = new Skeleton(tree);
    }
    return known;
  }
}
