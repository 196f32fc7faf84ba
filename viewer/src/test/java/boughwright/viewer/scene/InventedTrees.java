// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.GuyLine;
import boughwright.modeller.plan.Hold;
import boughwright.modeller.plan.HungWeight;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.plan.Planting;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Tree;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented trees and plans that the tests of the viewer share. */
public final class InventedTrees {
  private InventedTrees() {}

  private static Shoots.Way way(double azimuth, double elevation, double length) {
    return Shoots.way(azimuth, elevation, length);
  }

  private static Shoots.Taper taper(double start, double end) {
    return Shoots.taper(start, end);
  }

  /** A hedge-grown tree with two leaders, roots and branches. */
  public static Tree hedge(String name) {
    Shoots shoots =
        new Shoots()
            .base("t1", new double[] {8, 4, 78}, Shoots.taper(84, 68))
            .on("t2", "t1", way(300, 78, 74), taper(68, 60))
            .on("t3", "t2", way(240, 74, 66), taper(60, 53))
            .on("t4", "t3", way(80, 80, 72), taper(52, 46))
            .on("t5", "t4", way(70, 76, 84), taper(45, 37))
            .on("t6", "t5", way(120, 70, 80), taper(36, 27))
            .branch("l1", new Spot("t3", 0.85), way(265, 44, 62), taper(27, 24.5))
            .on("l2", "l1", way(270, 58, 66), taper(24.5, 21))
            .on("l3", "l2", way(262, 68, 74), taper(21, 16))
            .on("l4", "l3", way(285, 74, 72), taper(16, 11))
            .on("l5", "l4", way(250, 79, 66), taper(11, 5));
    branches(shoots);
    roots(shoots);
    return shoots
        .wound("w1", new Spot("t1", 0.8), 20, 22, 30)
        .wound("w2", new Spot("t3", 0.2), 330, 15, 18)
        .tree(name);
  }

  private static void branches(Shoots shoots) {
    shoots
        .branch("b1", new Spot("t2", 0.3), way(95, 14, 70), taper(20, 16))
        .on("b1b", "b1", way(105, 4, 62), taper(16, 12))
        .on("b1c", "b1b", way(80, 12, 55), taper(12, 7))
        .on("b1d", "b1c", way(95, 28, 40), taper(7, 3))
        .branch("b1s", new Spot("b1b", 0.4), way(20, 10, 50), taper(8, 4))
        .branch("b1t", new Spot("b1", 0.8), way(160, 22, 58), taper(8, 3.5))
        .branch("b2", new Spot("t2", 0.8), way(205, 22, 60), taper(15, 11))
        .on("b2b", "b2", way(190, 10, 50), taper(11, 6))
        .on("b2c", "b2b", way(215, 24, 40), taper(6, 3))
        .branch("b3", new Spot("l1", 0.7), way(300, 8, 64), taper(13, 9))
        .on("b3b", "b3", way(280, 16, 54), taper(9, 5))
        .on("b3c", "b3b", way(300, 30, 38), taper(5, 2.5))
        .branch("b3s", new Spot("b3", 0.7), way(350, 14, 46), taper(6, 3))
        .branch("b4", new Spot("l2", 0.6), way(30, 26, 52), taper(10, 7))
        .on("b4b", "b4", way(50, 14, 44), taper(7, 3))
        .branch("b5", new Spot("l3", 0.4), way(290, 28, 48), taper(8, 5))
        .on("b5b", "b5", way(270, 36, 40), taper(5, 2.5))
        .branch("b6", new Spot("l4", 0.2), way(150, 36, 44), taper(6, 3))
        .branch("b7", new Spot("l4", 0.7), way(30, 44, 38), taper(5, 2.5))
        .branch("c1", new Spot("t4", 0.5), way(110, 30, 60), taper(14, 10))
        .on("c1b", "c1", way(95, 20, 50), taper(10, 5))
        .branch("c2", new Spot("t5", 0.5), way(240, 34, 52), taper(12, 7))
        .branch("c3", new Spot("t6", 0.4), way(80, 40, 60), taper(12, 6));
  }

  private static void roots(Shoots shoots) {
    shoots
        .root("r1", new Spot("t1", 0.16), way(80, -16, 62), taper(30, 22))
        .on("r1b", "r1", way(95, -20, 40), taper(22, 12))
        .root("r2", new Spot("t1", 0.14), way(150, -18, 58), taper(26, 15))
        .root("r3", new Spot("t1", 0.15), way(230, -16, 60), taper(28, 18))
        .root("r4", new Spot("t1", 0.16), way(285, -18, 66), taper(30, 20))
        .on("r4b", "r4", way(275, -22, 36), taper(20, 11))
        .root("r5", new Spot("t1", 0.14), way(350, -20, 56), taper(27, 16))
        .root("r6", new Spot("t1", 0.13), way(30, -22, 50), taper(22, 14));
  }

  /** A guy-line that is held by its tension. */
  public static GuyLine guy(String id, Spot at, double[] mm, double newtons) {
    Point3 anchor = new Point3(mm[0] / 1000, mm[1] / 1000, mm[2] / 1000);
    return new GuyLine(
        id,
        at,
        OptionalDouble.empty(),
        new Anchor.Fixed(anchor),
        new Hold.Tension(newtons),
        Map.of());
  }

  /** A plan: the thinner leader is drawn in over the root base, the thicker one is cut. */
  public static Plan drawnIn() {
    Proposal leader =
        new Proposal(
            "p1",
            Optional.of("l1"),
            List.of(
                guy("g1", new Spot("l3", 0.75), new double[] {-85, 10, 6}, 62),
                guy("g2", new Spot("b1b", 0.9), new double[] {-118, 4, 4}, 18)),
            List.of(new HungWeight(new Spot("b3b", 0.9), 0.15, Map.of())),
            List.of(),
            Map.of());
    return plan(
        List.of(leader),
        List.of(new Spot("t4", 0.35)),
        Optional.of("l1"),
        Optional.of(new Planting(Math.toRadians(5), Math.toRadians(90))));
  }

  /** A plan with the front at azimuth 10 degrees. */
  public static Plan plan(
      List<Proposal> proposals,
      List<Spot> cuts,
      Optional<String> apex,
      Optional<Planting> planting) {
    return new PlanDraft("a")
        .frontAzimuth(OptionalDouble.of(Math.toRadians(10)))
        .planting(planting)
        .cuts(cuts)
        .apex(apex)
        .proposals(proposals)
        .build();
  }

  /** The hedge tree with its plan. */
  public static Document hedgeDocument() {
    return new Document(hedge("Hedge hornbeam"), List.of(drawnIn()), Map.of());
  }
}
