// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Option;

/** By what a tree is reviewed, and what is done with the answer. */
final class ReviewOptions {
  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 1,
      description = {
        "Its front, planting angle, cuts and apex count; its bends do not. Without it the",
        "tree is judged as measured."
      })
  String plan;

  @Option(
      names = "--front-deg",
      paramLabel = "A",
      order = 2,
      description = "The azimuth of the front, in place of the plan's.")
  String front;

  @Option(
      names = "--style",
      paramLabel = "S",
      order = 3,
      description = {
        "upright, slanting, cascade, broom, clump or twin-trunk: what is a fault in one is",
        "none in another. Without it the style in the file, else upright."
      })
  String style;

  @Option(
      names = "--limits",
      paramLabel = "L=V,L=V",
      order = 4,
      description = {
        "Other limits, such as branch-caliper=0.6,curve-turn-deg=25,twig-caliper-mm=4.",
        "docs/user/review.md lists them."
      })
  String limits;

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      order = 10,
      description = "Draw the tree with a number at each fault, and the list beside it.")
  String picture;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      order = 11,
      description = "Size of the picture in pixels, such as 1800x1200.")
  String size;

  @Option(
      names = "--remove",
      paramLabel = "N,N",
      order = 20,
      description = "Numbers of faults whose cut (\"remove\") goes into the plan, and")
  String remove;

  @Option(
      names = "--add-to-plan",
      paramLabel = "ID",
      order = 21,
      description = {
        "the plan: a new one, or the one that is judged. The file is changed then; the old",
        "one is kept as NAME~."
      })
  String addTo;
}
