// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.tree.RoundAngle;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;

/** Draws what is done to the wood before it is bent: raffia, slots, relief cuts; no hollows. */
final class Aids {
  private static final int STATIONS = 25;

  /** Grooves are drawn at least so wide, as a share of the tree's size [1]. */
  private static final double LEAST_SHARE = 0.0016;

  /** How far the dark of a groove lies over the bark, as a share of the tree's size [1]. */
  private static final double OVER_SHARE = 0.0004;

  /** From turn to turn of raffia, over the radius of the limb in its middle [1]. */
  private static final double RAFFIA_PITCH = 0.9;

  /** Half the width of raffia, over the distance from turn to turn [1]. */
  private static final double RAFFIA_HALF = 0.2;

  /** Of its half width, raffia rises so far over the bark: it is flat [1]. */
  private static final double RAFFIA_RISE = 0.25;

  private static final int RAFFIA_STEPS = 20;
  private static final int RAFFIA_SIDES = 8;

  private final Skeleton skeleton;
  private final Stand stand;
  private final Pose pose;
  private final double least;
  private final Pads grooves;
  private final List<Mesh> meshes = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * @param size size of the tree [m]
   */
  Aids(Skeleton skeleton, Stand stand, Pose pose, double size) {
    this.skeleton = skeleton;
    this.stand = stand;
    this.pose = pose;
    least = LEAST_SHARE * size;
    grooves = new Pads(OVER_SHARE * size, Palette.GROOVE);
  }

  List<Mesh> meshes() {
    return meshes;
  }

  List<Mark> marks() {
    return marks;
  }

  void add(Aid aid, Cutting kept) {
    Spot from = new Spot(aid.segment(), aid.from());
    Spot to = new Spot(aid.segment(), aid.to());
    if (kept.holds(from) && kept.holds(to)) {
      BarkPath.of(skeleton, pose, from, to).ifPresent(path -> draw(aid, path));
    }
  }

  private void draw(Aid aid, BarkPath path) {
    switch (aid.kind()) {
      case WRAP -> meshes.add(raffia(path));
      case SLOT -> {
        double half = Math.max(least, aid.width().orElseThrow()) / 2;
        groove(aid, path.spread(STATIONS - 1), half);
      }
      case RELIEF_CUT -> reliefCuts(aid, path);
      case HOLLOW -> {}
    }
    Station middle = path.at(path.length() / 2);
    marks.add(new Mark.AidPlace(aid.kind(), onBark(aid, middle), List.of(Wording.aid(aid))));
  }

  private void reliefCuts(Aid aid, BarkPath path) {
    double half = Math.max(least, aid.width().orElseThrow()) / 2;
    double length = skeleton.length(skeleton.indexOf(aid.segment()));
    for (int n = 0; n < aid.count(); n++) {
      double along = aid.from() + (aid.to() - aid.from()) * (n + 0.5) / aid.count();
      double at = path.length() - (aid.to() - along) * length;
      List<Station> mouth = List.of(path.at(at - half), path.at(at), path.at(at + half));
      double radius = mouth.get(1).radius();
      double open = Math.acos(Math.max(-1, 1 - aid.depth().orElseThrow() / radius));
      groove(aid, mouth, radius * Math.sin(Math.min(Math.PI / 2, open)));
    }
  }

  /** A dark strip, so wide to both sides of its middle. */
  private void groove(Aid aid, List<Station> stations, double half) {
    double reach = Math.asin(Math.min(1, half / stations.get(0).radius()));
    meshes.add(grooves.patch(stations, outward(aid, stations.get(0)), reach));
  }

  /** From the axis to the middle of a groove; straight up for what has no side. */
  private Vector3 outward(Aid aid, Station station) {
    Direction3 rest = skeleton.direction(skeleton.indexOf(aid.segment()));
    Direction3 side = stand.turn().turn(RoundAngle.direction(rest, aid.round().orElse(0)));
    return Rotation.between(stand.turn().turn(rest), station.direction()).turn(side).vector();
  }

  private Point3 onBark(Aid aid, Station station) {
    double radius = aid.round().isPresent() ? station.radius() : 0;
    return station.point().plus(outward(aid, station).times(radius));
  }

  private static Mesh raffia(BarkPath path) {
    double pitch = RAFFIA_PITCH * path.at(path.length() / 2).radius();
    double half = RAFFIA_HALF * pitch;
    int steps = Math.max(RAFFIA_STEPS, (int) Math.ceil(RAFFIA_STEPS * path.length() / pitch));
    List<Point3> way = new ArrayList<>();
    Direction3 before = path.at(0).direction();
    Vector3 across = before.anySquare().vector();
    for (int n = 0; n <= steps; n++) {
      Station bark = path.at(path.length() * n / steps);
      across = Rotation.between(before, bark.direction()).turn(across);
      before = bark.direction();
      double angle = 2 * Math.PI * n / RAFFIA_STEPS;
      Vector3 out = Rotation.about(bark.direction(), angle).turn(across);
      way.add(bark.point().plus(out.times(bark.radius() - half * (1 - RAFFIA_RISE))));
    }
    return new Tube(half, RAFFIA_SIDES, Palette.RAFFIA).along(way);
  }
}
