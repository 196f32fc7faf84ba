// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import picocli.CommandLine.Option;

/** What a person writes down at a pull test. */
final class PullTestOptions {
  @Option(
      names = "--segment",
      paramLabel = "S",
      order = 1,
      description = "The segment where you pull.")
  String segment;

  @Option(
      names = "--along",
      paramLabel = "F",
      order = 2,
      description = "Where on it, from 0 at its start to 1 at its end.")
  String along;

  @Option(names = "--hung-kg", paramLabel = "K", order = 3, description = "Weight hung there.")
  String hung;

  @Option(
      names = "--scale-kg",
      paramLabel = "K",
      order = 4,
      description = "Or what a luggage scale shows in kilograms,")
  String scale;

  @Option(names = "--force-N", paramLabel = "N", order = 5, description = "or a pull in newtons.")
  String force;

  @Option(
      names = "--direction",
      paramLabel = "X,Y,Z",
      order = 6,
      description = {
        "Which way you pull and read, as the tree was measured: x right, y back,",
        "z up. A hung weight pulls 0,0,-1."
      })
  String direction;

  @Option(
      names = "--moved-mm",
      paramLabel = "M",
      order = 7,
      description = "How far that point moved that way, half a minute after loading.")
  String moved;

  @Option(
      names = "--base-moved-mm",
      paramLabel = "B",
      order = 8,
      description = {
        "How far the start of the branch moved that way. Leave it out if you held the",
        "trunk there."
      })
  String baseMoved;

  @Option(
      names = "--second-hung-kg",
      paramLabel = "K",
      order = 10,
      description = "A second load, to check the first: weight hung,")
  String secondHung;

  @Option(names = "--second-scale-kg", paramLabel = "K", order = 11, description = "on a scale,")
  String secondScale;

  @Option(names = "--second-force-N", paramLabel = "N", order = 12, description = "or in newtons.")
  String secondForce;

  @Option(
      names = "--second-moved-mm",
      paramLabel = "M",
      order = 13,
      description = "How far the point moved in all under the second load.")
  String secondMoved;

  @Option(
      names = "--second-base-moved-mm",
      paramLabel = "B",
      order = 14,
      description = "How far the start of the branch moved under it.")
  String secondBaseMoved;

  @Option(
      names = "--moved-error-mm",
      paramLabel = "E",
      order = 20,
      description = "How well you read a movement (standard deviation); 0.5 by default.")
  String movedError;

  @Option(
      names = "--force-error-pct",
      paramLabel = "E",
      order = 21,
      description = "How true the scale is likewise; 2 by default, 1 for a hung weight.")
  String forceError;

  @Option(
      names = "--done-on",
      paramLabel = "DATE",
      order = 22,
      description = "Day of the test, such as 2026-03-05; today by default.")
  String doneOn;
}
