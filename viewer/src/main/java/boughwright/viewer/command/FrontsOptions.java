// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** By what fronts are judged, and what is done with the answer. */
final class FrontsOptions {
  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 1,
      description = "Judge the tree as this plan's cuts leave it, up to its apex; uncut without.")
  String plan;

  @Mixin StyleOption style;

  @Option(
      names = "--eye-mm",
      paramLabel = "H",
      order = 4,
      description = "Height of the eye above the soil line.")
  String eye;

  @Option(
      names = "--eye-distance-mm",
      paramLabel = "D",
      order = 5,
      description = "Distance of the eye from the trunk base.")
  String distance;

  @Option(
      names = "--tilt-deg",
      paramLabel = "N",
      order = 6,
      description = {
        "Most tilt to each side, toward the viewer and away, 0 to 90; 25 by default, but 45",
        "to the sides for slanting and 90 to the sides for cascade."
      })
  String tilt;

  @Option(
      names = "--weights",
      paramLabel = "M=W,M=W",
      order = 7,
      description = {
        "What counts how much, in place of the style's weight; 0 for not at all: movement,",
        "taper, root-base, wounds, at-viewer, apex-lean, sides, over-base, depth,",
        "first-branch, space, bulge, deadwood."
      })
  String weights;

  @Option(
      names = "--container",
      paramLabel = "LxWxD",
      order = 8,
      description = {
        "Plant it in a container of these inner sizes in mm, its length across the front;",
        "the container in the file without."
      })
  String container;

  @Option(
      names = "--in-leaf",
      order = 9,
      description = {
        "Judge it in leaf: the pads of the file, or a guess, hide what is behind them."
      })
  boolean inLeaf;

  @Option(
      names = "--at",
      paramLabel = "AZ[,R,T]",
      order = 10,
      description = {
        "Explain one front instead: azimuth that faces the viewer, tilt to the right and",
        "toward the viewer, in degrees; negative for left and away."
      })
  String at;

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      order = 18,
      description = "Draw the fronts side by side, each as it stands.")
  String picture;

  @Option(
      names = "--map",
      paramLabel = "OUT.png",
      order = 19,
      description = "Draw the score over azimuth and tilt.")
  String map;

  @Option(
      names = "--roots",
      paramLabel = "OUT.png",
      order = 20,
      description = "With --at: draw the root base of that front from above, with heights.")
  String roots;

  @Mixin PictureOptions pictures;

  @Option(
      names = "--choice",
      paramLabel = "N",
      order = 23,
      description = "The front that --add-to-plan keeps; 1 by default.")
  String choice;

  @Option(
      names = "--add-to-plan",
      paramLabel = "ID",
      order = 24,
      description = {
        "Write front and planting angle of the choice into that plan, a new one with the",
        "cuts and apex of --plan if there is none of that id. The old file is kept with ~."
      })
  String addTo;
}
