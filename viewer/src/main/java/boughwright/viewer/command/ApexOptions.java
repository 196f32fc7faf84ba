// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Option;

/** Of which plan a top is sought, and what is done with one of the answers. */
final class ApexOptions {
  @Option(
      names = "--plan",
      paramLabel = "ID",
      order = 1,
      description = "Its cuts, clamp and planting angle count; its bends do not.")
  String plan;

  @Option(
      names = "--leaders",
      paramLabel = "N",
      order = 2,
      description = "Bend so many leaders, the thickest; 6 by default.")
  String leaders;

  @Option(
      names = "--anchors",
      paramLabel = "SORT,SORT",
      order = 3,
      description = {
        "What lines may be tied to: root, trunk, branch (stiff ones), point (the file's",
        "\"anchors\"), rim (of the file's \"container\"). All that is there by default."
      })
  String anchors;

  @Option(
      names = "--choice",
      paramLabel = "N",
      order = 4,
      description = {
        "Tell this one in full: its risk drawn more often, its line, its stages. The one",
        "that is pictured or kept; 1 then by default."
      })
  String choice;

  @Option(
      names = "--picture",
      paramLabel = "OUT.png",
      order = 20,
      description = "Draw the tree before and after the choice.")
  String picture;

  @Option(
      names = "--size",
      paramLabel = "WxH",
      order = 21,
      description = "Width and height of the picture in pixels, such as 1800x1200.")
  String size;

  @Option(
      names = "--add-to-plan",
      paramLabel = "ID",
      order = 22,
      description = {
        "Keep the choice in the file, in a new plan of that id: cuts, apex and line. The",
        "old file is kept with a ~."
      })
  String addTo;
}
