// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Option;

/** What is to be reached, with what, and what is done with the answer. */
final class ReachOptions {
  @Option(
      names = "--segment",
      paramLabel = "S",
      order = 1,
      description = "The segment that is to come somewhere.")
  String segment;

  @Option(
      names = "--along",
      paramLabel = "F",
      order = 2,
      description = "Where on it, from 0 at its start to 1 at its end; its end by default.")
  String along;

  @Option(
      names = "--to-mm",
      paramLabel = "X,Y,Z",
      order = 3,
      description = {
        "Where that place is to come, as the tree was measured: right, back and up from",
        "the trunk base."
      })
  String to;

  @Option(
      names = "--direction",
      paramLabel = "X,Y,Z",
      order = 4,
      description = "Or: which way the segment is to run there,")
  String direction;

  @Option(
      names = "--upright",
      order = 5,
      description = {
        "or: the segment is a leader whose tip is to stand over the root base and point",
        "up, with the planting angle of the plan."
      })
  boolean upright;

  @Option(names = "--keep", order = 11, description = "Its proposals act as well.")
  boolean keep;

  @Option(
      names = "--lines",
      paramLabel = "1|2",
      order = 14,
      description = "Most lines; 2 by default. A coil counts as one.")
  String lines;

  @Option(
      names = "--coil",
      order = 15,
      description = "Coiled wire as well, bent by hand, alone or with one line.")
  boolean coil;

  @Option(
      names = "--metal",
      paramLabel = "M,M",
      order = 16,
      description = {
        "Metals of the coil: copper-annealed, aluminium, steel-soft, stainless; the first",
        "two by default."
      })
  String metal;

  @Option(
      names = "--choice",
      paramLabel = "N",
      order = 22,
      description = {
        "The choice whose risk is drawn and whose stages are told, and that is pictured or",
        "kept; 1 by default."
      })
  String choice;

  @Option(
      names = "--add-to-plan",
      paramLabel = "ID",
      order = 23,
      description = {
        "Keep the choice in the file, in a new plan of that id with the cuts and planting",
        "of --plan; or in --plan itself, with --keep. The old file is kept with a ~."
      })
  String addTo;
}
