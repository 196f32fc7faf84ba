// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.geometry.Point3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Pairs of branches of one stem that run side by side the same way. */
final class Parallels {
  /** Where along the shorter branch the distance is taken [1]. */
  private static final double[] PLACES = {0.3, 0.6, 0.9};

  private final Structure structure;

  Parallels(Structure structure) {
    this.structure = structure;
  }

  /**
   * @param crossings shoots that cross are not told of again
   */
  List<Found> find(List<Found> crossings) {
    List<Found> out = new ArrayList<>();
    for (Shoot stem : structure.stems()) {
      List<Shoot> branches = structure.judgedOn(stem).stream().filter(structure::isBranch).toList();
      for (int i = 0; i < branches.size(); i++) {
        for (int j = i + 1; j < branches.size(); j++) {
          look(branches.get(i), branches.get(j), out);
        }
      }
    }
    Map<String, Set<Integer>> crossed = crossed(crossings);
    out.removeIf(found -> isCrossing(found, crossed));
    return out;
  }

  /** In which crossings each shoot is, by its id. */
  private Map<String, Set<Integer>> crossed(List<Found> crossings) {
    Map<String, List<Integer>> bySegment = new HashMap<>();
    for (int n = 0; n < crossings.size(); n++) {
      for (String segment : crossings.get(n).segments()) {
        bySegment.computeIfAbsent(segment, id -> new ArrayList<>()).add(n);
      }
    }
    Map<String, Set<Integer>> byShoot = new HashMap<>();
    for (Shoot shoot : structure.shoots()) {
      Set<Integer> in = byShoot.computeIfAbsent(shoot.id(), id -> new HashSet<>());
      shoot.line().ids().forEach(id -> in.addAll(bySegment.getOrDefault(id, List.of())));
    }
    return byShoot;
  }

  private static boolean isCrossing(Found found, Map<String, Set<Integer>> crossed) {
    Set<Integer> common = new HashSet<>(crossed.get(found.segments().get(0)));
    found.segments().forEach(id -> common.retainAll(crossed.get(id)));
    return !common.isEmpty();
  }

  private void look(Shoot low, Shoot high, List<Found> out) {
    double common = Math.min(low.line().length(), high.line().length());
    double angle = low.line().chord(0, common).angleTo(high.line().chord(0, common));
    if (angle > structure.limit(Limit.PARALLEL_ANGLE)) {
      return;
    }
    Shoot shorter = low.line().length() <= high.line().length() ? low : high;
    double apart = apart(shorter, shorter == low ? high : low) / common;
    if (apart <= structure.limit(Limit.PARALLEL_SPACING)) {
      out.add(
          found(
              low,
              high,
              List.of(
                  structure.measured(Limit.PARALLEL_SPACING, apart),
                  structure.measured(Limit.PARALLEL_ANGLE, angle))));
    }
  }

  /** Mean distance of places on the shorter branch from the other one [m]. */
  private static double apart(Shoot shorter, Shoot other) {
    double sum = 0;
    for (double place : PLACES) {
      sum += distance(shorter.line().point(place * shorter.line().length()), other.line());
    }
    return sum / PLACES.length;
  }

  private static double distance(Point3 point, WoodLine line) {
    double least = Double.POSITIVE_INFINITY;
    for (int n = 0; n < line.pieces().size(); n++) {
      Point3 from = line.points().get(n);
      Point3 to = line.points().get(n + 1);
      double square = to.minus(from).dot(to.minus(from));
      double part = Math.min(1, Math.max(0, point.minus(from).dot(to.minus(from)) / square));
      least = Math.min(least, point.distance(from.toward(to, part)));
    }
    return least;
  }

  /** The thinner one may go. */
  private static Found found(Shoot low, Shoot high, List<Measured> measures) {
    boolean lowThinner = low.seat().caliper() < high.seat().caliper();
    Shoot thinner = lowThinner ? low : high;
    Shoot thicker = lowThinner ? high : low;
    return new Found(
        FaultKind.PARALLEL,
        List.of(thinner.id(), thicker.id()),
        Found.mark(thinner),
        measures,
        new Found.Subject.Branches(List.of(thinner)));
  }
}
