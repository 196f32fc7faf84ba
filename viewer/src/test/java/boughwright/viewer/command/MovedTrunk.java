// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A small tree to look for fronts on, with few tilts, so that a search takes no time. */
final class MovedTrunk {
  private static final String TEXT =
      """
        {"format": "boughwright-tree", "version": 1, "name": "Moved trunk (invented)",
         "species": "carpinus-betulus", "bark_mm": 0.5, "unions": "surface",
         "segments": [
          {"id": "t1", "parent": null, "kind": "trunk", "start_mm": [0, 0, 0],
           "end_mm": [25, 0, 90], "caliper_start_mm": 50, "caliper_end_mm": 38},
          {"id": "t2", "parent": "t1", "kind": "trunk", "end_mm": [-20, 8, 190],
           "caliper_start_mm": 38, "caliper_end_mm": 24},
          {"id": "t3", "parent": "t2", "kind": "trunk", "end_mm": [5, 0, 280],
           "caliper_start_mm": 24, "caliper_end_mm": 8},
          {"id": "b1", "parent": "t1", "kind": "branch", "end_mm": [150, 30, 110],
           "caliper_start_mm": 12, "caliper_end_mm": 5},
          {"id": "b2", "parent": "t2", "kind": "branch", "end_mm": [-120, 60, 215],
           "caliper_start_mm": 9, "caliper_end_mm": 4},
          {"id": "r1", "parent": "t1", "along": 0, "kind": "root", "end_mm": [80, -10, -4],
           "caliper_start_mm": 22, "caliper_end_mm": 12},
          {"id": "r2", "parent": "t1", "along": 0, "kind": "root", "end_mm": [-70, 20, -4],
           "caliper_start_mm": 20, "caliper_end_mm": 12},
          {"id": "r3", "parent": "t1", "along": 0, "kind": "root", "end_mm": [10, 75, -6],
           "caliper_start_mm": 18, "caliper_end_mm": 10}],
         "wounds": [{"id": "w1", "segment": "t1", "along": 0.6, "round_deg": 180,
           "width_mm": 22, "height_mm": 26}],
         "plans": [
          {"id": "a", "cuts": [{"segment": "t3", "along": 0.5}], "apex": "t3", "proposals": []},
          {"id": "b", "front_azimuth_deg": 77, "proposals": [{"id": "p1", "about": "b1",
            "hung_weights": [{"segment": "b1", "along": 1, "mass_kg": 0.1}]}]}]}
        """;

  private MovedTrunk() {}

  /** A trunk that moves in one plane, a wound, three roots, two branches and two plans. */
  static Path write(Path folder) {
    return TreeFixture.write(folder, "tree.tree.json", TEXT);
  }

  static Ran fronts(Path file, Object... more) {
    return Ran.verb("fronts", file, more);
  }

  /** Fronts of few tilts. */
  static Ran few(Path file, Object... more) {
    return fronts(file, Stream.concat(Stream.of(more), Stream.of("--tilt-deg", "2")).toArray());
  }

  static double degreesApart(double one, double other) {
    return Math.abs(Math.IEEEremainder(one - other, 360));
  }

  static double azimuth(JsonNode front) {
    return front.get("front_azimuth_deg").asDouble();
  }

  static JsonNode measure(JsonNode front, String name) {
    return Ran.one(front.get("measures"), "measure", name);
  }
}
