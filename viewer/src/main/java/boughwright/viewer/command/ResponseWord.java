// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.WoodOverride;

/** How the wood of a tree answers a bend, as one word. */
final class ResponseWord {
  static final String ELASTIC = "elastic";
  static final String FIBRE = "fibre";

  private ResponseWord() {}

  /** Elastic only where every segment is; one segment of real wood can crack. */
  static String of(Tree tree) {
    Response whole =
        tree.wood() instanceof TreeWood.Own own
            ? own.response().orElse(Response.FIBRE)
            : Response.FIBRE;
    boolean elastic =
        tree.segments().stream()
            .allMatch(
                segment ->
                    tree.overrideFor(segment.id()).flatMap(WoodOverride::response).orElse(whole)
                        == Response.ELASTIC);
    return elastic ? ELASTIC : FIBRE;
  }
}
