// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Small tree files, all invented, whose answers can be worked out by hand. */
final class TreeFixture {
  /** Length of the rods [mm]. */
  static final double LENGTH = 400;

  /** Modulus of the rods' wood [GPa]. */
  static final double MOE = 8;

  /** Diameter of the rods, without bark [mm]. */
  static final double CALIPER = 10;

  /** Bending stiffness EI of the rods: E pi d4 / 64 [N m2]. */
  static final double STIFFNESS = MOE * 1e9 * Math.PI * Math.pow(CALIPER / 1000, 4) / 64;

  private TreeFixture() {}

  static Path write(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A level rod with a weight at its tip for which P L2 / EI = 1. */
  static Path cantilever(Path folder) {
    double force = STIFFNESS / Math.pow(LENGTH / 1000, 2);
    return write(
        folder,
        "rod.tree.json",
        rod(
                "[400, 0, 0]",
                "\"hung_weights\": [{\"segment\": \"t1\", \"along\": 1, \"mass_kg\": %s}]")
            .formatted(Double.toString(force / 9.80665)));
  }

  /** An upright rod with a line at its tip to an anchor at its right. */
  static Path pulled(Path folder, String hold) {
    return write(
        folder,
        "pulled.tree.json",
        rod(
            "[0, 0, 400]",
            "\"guy_lines\": [{\"id\": \"g1\", \"segment\": \"t1\", \"along\": 1, \"anchor_mm\":"
                + " [300, 0, 0], "
                + hold
                + "}]"));
  }

  /** An upright rod pulled straight down along its own axis, far beyond what it can stand. */
  static Path pushed(Path folder) {
    return write(
        folder,
        "pushed.tree.json",
        rod(
            "[0, 0, 400]",
            "\"guy_lines\": [{\"id\": \"g1\", \"segment\": \"t1\", \"along\": 1, \"anchor_mm\":"
                + " [0, 0, -50], \"tension_N\": 2000}]"));
  }

  private static String rod(String end, String loads) {
    return """
        {"format": "boughwright-tree", "version": 1, "name": "Rod (invented)",
         "species": {"name": "test wood", "moe_GPa": 8, "response": "elastic"},
         "bark_mm": 0, "unions": "axis",
         "segments": [{"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
           "end_mm": END, "caliper_start_mm": 10, "caliper_end_mm": 10}],
         "plans": [{"id": "a", "apex": "t1", "proposals": [{"id": "p1", LOADS}]}]}
        """
        .replace("END", end)
        .replace("LOADS", loads);
  }

  /** A trunk with one branch, two plans, two proposals in the first. */
  static Path branched(Path folder, String name) {
    return write(folder, "branched.tree.json", branchedText(name));
  }

  static String branchedText(String name) {
    return String.format(
        Locale.ROOT,
        """
        {"format": "boughwright-tree", "version": 1, "name": "%s",
         "species": "carpinus-betulus", "bark_mm": 0.5,
         "segments": [
          {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
           "end_mm": [0, 0, 200], "caliper_start_mm": 40, "caliper_end_mm": 34},
          {"id": "b1", "parent": "t1", "kind": "branch", "along": 0.5, "end_mm": [200, 0, 160],
           "caliper_start_mm": 12, "caliper_end_mm": 8}],
         "plans": [
          {"id": "a", "front_azimuth_deg": 0, "apex": "b1", "proposals": [
            {"id": "p1", "about": "b1", "guy_lines": [{"id": "g1", "segment": "b1",
              "along": 0.9, "anchor_mm": [180, 0, -20], "tension_N": 12}]},
            {"id": "p2", "about": "b1", "hung_weights": [{"segment": "b1", "along": 1,
              "mass_kg": 0.2}]}]},
          {"id": "b", "proposals": [
            {"id": "p1", "about": "b1", "guy_lines": [{"id": "g1", "segment": "b1",
              "along": 0.9, "anchor_mm": [180, 0, -20], "shorten_mm": 15}]}]}]}
        """,
        name);
  }
}
