// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Mixin;
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

  @Mixin StyleOption style;

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
      order = 20,
      description = "Draw the tree with a number at each fault, and the list beside it.")
  String picture;

  @Mixin PictureOptions pictures;

  @Option(
      names = "--remove",
      paramLabel = "N,N",
      order = 22,
      description = "Numbers of faults whose cut (\"remove\") goes into the plan, and")
  String remove;

  @Option(
      names = "--add-to-plan",
      paramLabel = "ID",
      order = 23,
      description = {
        "the plan: a new one, or the one that is judged. The file is changed then; the old",
        "one is kept as NAME~."
      })
  String addTo;
}
