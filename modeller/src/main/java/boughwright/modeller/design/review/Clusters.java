// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.plan.TreeStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Branches from one height: whorls, and the swelling that several branches bring. */
final class Clusters {
  /** How far below and above its branches the trunk is read, over its caliper [1]. */
  private static final double BESIDE = 1.2;

  /** How far beside the branches their swelling may be at its thickest, over the caliper [1]. */
  private static final double REACH = 0.5;

  /** By this the trunk gets thicker from below its branches, where it bulges [1]. */
  private static final double WIDER = 1.02;

  private final Structure structure;

  Clusters(Structure structure) {
    this.structure = structure;
  }

  /** Branches of one stem within the height of a whorl, from two on. */
  record Cluster(Shoot stem, List<Shoot> shoots) {
    double low() {
      return shoots.get(0).seat().at();
    }

    double high() {
      return shoots.get(shoots.size() - 1).seat().at();
    }
  }

  private boolean isStyle() {
    return structure.rules().style() != TreeStyle.BROOM;
  }

  /** All clusters; no branch is in two. */
  List<Cluster> all() {
    List<Cluster> out = new ArrayList<>();
    for (Shoot stem : structure.stems()) {
      List<Shoot> branches = structure.judgedOn(stem).stream().filter(structure::isBranch).toList();
      for (int i = 0; i < branches.size(); ) {
        int end = end(branches, i);
        if (end - i > 1) {
          out.add(new Cluster(stem, branches.subList(i, end)));
        }
        i = end - i > 1 ? end : i + 1;
      }
    }
    return out;
  }

  private int end(List<Shoot> branches, int first) {
    Union low = branches.get(first).seat();
    double height = structure.limit(Limit.WHORL_SPACING) * low.parentCaliper();
    int end = first + 1;
    while (end < branches.size() && branches.get(end).seat().at() - low.at() <= height) {
      end++;
    }
    return end;
  }

  boolean isWhorl(Cluster cluster) {
    return cluster.shoots().size() >= structure.limit(Limit.WHORL_COUNT);
  }

  List<Found> whorls() {
    return isStyle() ? all().stream().filter(this::isWhorl).map(this::whorl).toList() : List.of();
  }

  /** All but the thickest may go. */
  private Found whorl(Cluster cluster) {
    List<Shoot> thinnestFirst =
        cluster.shoots().stream()
            .sorted(Comparator.comparingDouble(shoot -> shoot.seat().caliper()))
            .toList();
    double middle = (cluster.low() + cluster.high()) / 2;
    return new Found(
        FaultKind.WHORL,
        thinnestFirst.stream().map(Shoot::id).toList(),
        Where.on(cluster.stem().line(), middle),
        List.of(
            structure.measured(Limit.WHORL_COUNT, cluster.shoots().size()),
            structure.measured(
                Limit.WHORL_SPACING,
                (cluster.high() - cluster.low()) / cluster.shoots().get(0).seat().parentCaliper())),
        new Found.Subject.Branches(thinnestFirst.subList(0, thinnestFirst.size() - 1)));
  }

  /** Clusters at which the stem bulges. */
  List<Found> swellings() {
    return isStyle()
        ? all().stream().map(this::swelling).flatMap(List::stream).toList()
        : List.of();
  }

  /** Where the stem is read around a cluster [m along the stem]. */
  private record Window(WoodLine line, double below, double from, double to, double above) {
    static Window of(Cluster cluster) {
      WoodLine line = cluster.stem().line();
      double caliper = cluster.shoots().get(0).seat().parentCaliper();
      double below = Math.max(0, cluster.low() - BESIDE * caliper);
      double above = Math.min(line.length(), cluster.high() + BESIDE * caliper);
      return new Window(
          line,
          below,
          Math.max(below, cluster.low() - REACH * caliper),
          Math.min(above, cluster.high() + REACH * caliper),
          above);
    }

    /** A caliper over that between both sides [1]. */
    double over(double s, double caliper) {
      double part = (s - below) / (above - below);
      double plain = line.caliper(below) + part * (line.caliper(above) - line.caliper(below));
      return caliper / plain;
    }

    /** Where it is thickest, and by how much: caliper there over that between both sides. */
    WoodLine.Reading thickest() {
      WoodLine.Reading best = new WoodLine.Reading(from, 0);
      for (WoodLine.Reading reading : line.readings()) {
        boolean inside = reading.s() >= from && reading.s() <= to;
        double over = over(reading.s(), reading.caliper());
        if (inside && over > best.caliper()) {
          best = new WoodLine.Reading(reading.s(), over);
        }
      }
      return best;
    }

    /**
     * Whether the stem gets thicker toward a place and is back to half of it within reach of the
     * branches: a step down is no bulge, and wood that stays thick beyond is reverse taper.
     */
    boolean bulgesAt(WoodLine.Reading thickest) {
      double half = 1 + (thickest.caliper() - 1) / 2;
      return over(from, line.caliper(from)) <= half
          && over(to, line.caliper(to)) <= half
          && widens(thickest.s());
    }

    private boolean widens(double to) {
      double least = line.caliper(below);
      boolean wider = false;
      for (WoodLine.Reading reading : line.readings()) {
        if (reading.s() >= below && reading.s() <= to) {
          wider |= reading.caliper() > WIDER * least;
          least = Math.min(least, reading.caliper());
        }
      }
      return wider;
    }
  }

  private List<Found> swelling(Cluster cluster) {
    Window window = Window.of(cluster);
    WoodLine.Reading thickest = window.thickest();
    if (thickest.caliper() < structure.limit(Limit.SWELLING) || !window.bulgesAt(thickest)) {
      return List.of();
    }
    WoodLine line = window.line();
    List<String> ids = new ArrayList<>(line.idsBetween(thickest.s(), thickest.s()));
    cluster.shoots().forEach(shoot -> ids.add(shoot.id()));
    return List.of(
        new Found(
            FaultKind.SWELLING,
            ids,
            Where.on(line, thickest.s()),
            List.of(structure.measured(Limit.SWELLING, thickest.caliper())),
            new Found.Subject.Stretch(cluster.stem(), window.from(), window.to())));
  }
}
