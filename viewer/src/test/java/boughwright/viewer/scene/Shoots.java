// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.tree.Unions;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds invented trees for tests, segment by segment, in millimetres and degrees. */
public final class Shoots {
  private final List<Segment> segments = new ArrayList<>();
  private final List<Wound> wounds = new ArrayList<>();
  private final Map<String, Segment> byId = new HashMap<>();
  private final Map<String, Point3> starts = new HashMap<>();

  /** The one segment without a parent. */
  public Shoots base(String id, double x, double y, double z, double startCaliper, double caliper) {
    return add(
        id,
        null,
        1,
        null,
        Kind.TRUNK,
        new Point3(x / 1000, y / 1000, z / 1000),
        startCaliper,
        caliper);
  }

  /** A segment that continues its parent, by azimuth, elevation and length. */
  public Shoots on(String id, String parent, double[] way, double startCaliper, double caliper) {
    return grow(id, parent, 1, Joint.CONTINUES, segment(parent).kind(), way, startCaliper, caliper);
  }

  /** A branch on a parent. */
  public Shoots branch(
      String id, String parent, double along, double[] way, double startCaliper, double caliper) {
    return grow(id, parent, along, Joint.UNION, Kind.BRANCH, way, startCaliper, caliper);
  }

  /** A thin piece of 10 mm to 8 mm on the end of its parent, joined as by default. */
  public Shoots grownOn(String id, String parent, double azimuth, double elevation, double length) {
    double[] way = {azimuth, elevation, length};
    return grow(id, parent, 1, null, segment(parent).kind(), way, 10, 8);
  }

  /** A root on the trunk base. */
  public Shoots root(
      String id, String parent, double along, double[] way, double startCaliper, double caliper) {
    return grow(id, parent, along, Joint.UNION, Kind.ROOT, way, startCaliper, caliper);
  }

  /** A wound, sizes in millimetres. */
  public Shoots wound(
      String id, String segment, double along, double roundDeg, double width, double height) {
    wounds.add(
        new Wound(
            id,
            segment,
            along,
            Math.toRadians(roundDeg),
            width / 1000,
            height / 1000,
            Optional.empty(),
            Map.of()));
    return this;
  }

  private Shoots grow(
      String id,
      String parent,
      double along,
      Joint joint,
      Kind kind,
      double[] way,
      double startCaliper,
      double caliper) {
    Segment on = segment(parent);
    Point3 start = start(on).toward(on.end(), along);
    Vector3 step =
        Direction3.ofAzimuth(Math.toRadians(way[0]), Math.toRadians(way[1])).times(way[2] / 1000);
    return add(id, parent, along, joint, kind, start.plus(step), startCaliper, caliper);
  }

  private Point3 start(Segment segment) {
    return starts.get(segment.id());
  }

  private Shoots add(
      String id,
      String parent,
      double along,
      Joint joint,
      Kind kind,
      Point3 end,
      double startCaliper,
      double caliper) {
    segments.add(
        new Segment(
            id,
            Optional.ofNullable(parent),
            along,
            Optional.ofNullable(joint),
            kind,
            parent == null ? Optional.of(Point3.ORIGIN) : Optional.empty(),
            end,
            startCaliper / 1000,
            caliper / 1000,
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of()));
    Segment added = segments.get(segments.size() - 1);
    byId.put(id, added);
    starts.put(
        id,
        parent == null ? Point3.ORIGIN : starts.get(parent).toward(segment(parent).end(), along));
    return this;
  }

  private Segment segment(String id) {
    return Optional.ofNullable(byId.get(id)).orElseThrow();
  }

  /** The tree of all segments so far. */
  public Tree tree(String name) {
    return new Tree(
        name,
        new TreeWood.OfSpecies("carpinus-betulus"),
        Optional.of(java.time.LocalDate.of(2026, 3, 2)),
        OptionalDouble.of(0.0008),
        Unions.SURFACE,
        segments,
        List.of(),
        wounds);
  }
}
