// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
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

  /** Where a segment leads: azimuth and elevation in degrees, length in millimetres. */
  public record Way(double azimuth, double elevation, double length) {
    Vector3 step() {
      return Direction3.ofAzimuth(Math.toRadians(azimuth), Math.toRadians(elevation))
          .times(length / 1000);
    }
  }

  /** Calipers at both ends in millimetres. */
  public record Taper(double start, double end) {}

  private record Place(Spot on, Optional<Joint> joint, Kind kind) {}

  public static Way way(double azimuth, double elevation, double length) {
    return new Way(azimuth, elevation, length);
  }

  public static Taper taper(double start, double end) {
    return new Taper(start, end);
  }

  /** The one segment without a parent, from the zero point to an end in millimetres. */
  public Shoots base(String id, double[] end, Taper taper) {
    Point3 at = new Point3(end[0] / 1000, end[1] / 1000, end[2] / 1000);
    starts.put(id, Point3.ORIGIN);
    return add(segmentOf(id, Optional.empty(), at, taper));
  }

  /** A segment that continues its parent. */
  public Shoots on(String id, String parent, Way way, Taper taper) {
    Kind kind = segment(parent).kind();
    return grow(id, new Place(new Spot(parent, 1), Optional.of(Joint.CONTINUES), kind), way, taper);
  }

  /** A branch on a parent. */
  public Shoots branch(String id, Spot on, Way way, Taper taper) {
    return grow(id, new Place(on, Optional.of(Joint.UNION), Kind.BRANCH), way, taper);
  }

  /** A root on the trunk base. */
  public Shoots root(String id, Spot on, Way way, Taper taper) {
    return grow(id, new Place(on, Optional.of(Joint.UNION), Kind.ROOT), way, taper);
  }

  /** A thin piece on the end of its parent, joined as by default. */
  public Shoots grownOn(String id, String parent, Way way) {
    Kind kind = segment(parent).kind();
    return grow(id, new Place(new Spot(parent, 1), Optional.empty(), kind), way, taper(10, 8));
  }

  /** A wound, width and height in millimetres. */
  public Shoots wound(String id, Spot at, double roundDeg, double... size) {
    wounds.add(
        new Wound(
            id,
            at.segment(),
            at.along(),
            Math.toRadians(roundDeg),
            size[0] / 1000,
            size[1] / 1000,
            Optional.empty(),
            Map.of()));
    return this;
  }

  private Shoots grow(String id, Place place, Way way, Taper taper) {
    Spot on = place.on();
    Point3 start = starts.get(on.segment()).toward(segment(on.segment()).end(), on.along());
    starts.put(id, start);
    return add(segmentOf(id, Optional.of(place), start.plus(way.step()), taper));
  }

  private static Segment segmentOf(String id, Optional<Place> place, Point3 end, Taper taper) {
    return new Segment(
        id,
        place.map(p -> p.on().segment()),
        place.map(p -> p.on().along()).orElse(1.0),
        place.flatMap(Place::joint),
        place.map(Place::kind).orElse(Kind.TRUNK),
        place.isPresent() ? Optional.empty() : Optional.of(Point3.ORIGIN),
        end,
        taper.start() / 1000,
        taper.end() / 1000,
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  private Shoots add(Segment segment) {
    segments.add(segment);
    byId.put(segment.id(), segment);
    return this;
  }

  private Segment segment(String id) {
    return Optional.ofNullable(byId.get(id)).orElseThrow();
  }

  /** The tree of all segments so far. */
  public Tree tree(String name) {
    return new TreeDraft(name, new TreeWood.OfSpecies("carpinus-betulus"), segments)
        .measuredOn(Optional.of(java.time.LocalDate.of(2026, 3, 2)))
        .bark(OptionalDouble.of(0.0008))
        .wounds(wounds)
        .build();
  }
}
