// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import java.util.List;
import java.util.Optional;

/**
 * Closes the stations of a limb into one skin without gaps: one ring at each station shared by the
 * pieces on both sides, frames carried along without twist, and both ends closed.
 */
final class SkinMesher {
  private static final int CAP_RINGS = 5;
  private static final double CAP_HEIGHT = 0.8;
  private static final double BARK_RIM = 0.88;

  private final int sides;
  private final Optional<StrainScale> scale;
  private final MeshBuilder mesh = new MeshBuilder();

  /** How the outer end of a limb is closed. */
  enum End {
    ROUNDED,
    /** Sawn, showing the wood. */
    CUT,
    /** Flat and of one colour. */
    FLAT
  }

  SkinMesher(int sides, Optional<StrainScale> scale) {
    this.sides = sides;
    this.scale = scale;
  }

  Mesh close(List<Station> stations, End end) {
    Station first = stations.get(0);
    Vector3 across = first.direction().anySquare().vector();
    int centre =
        mesh.vertex(
            first.point(), first.direction().times(-1), first.bark(), grain(first, Vector3.ZERO));
    int previous = -1;
    for (int n = 0; n < stations.size(); n++) {
      Station station = stations.get(n);
      if (n > 0) {
        across =
            Rotation.between(stations.get(n - 1).direction(), station.direction()).turn(across);
      }
      int ring = ring(station, across, slope(stations, n));
      if (n == 0) {
        fan(centre, ring, true);
      } else {
        mesh.band(previous, ring, sides);
      }
      previous = ring;
    }
    Station last = stations.get(stations.size() - 1);
    switch (end) {
      case ROUNDED -> roundEnd(last, across, previous);
      case CUT -> cutEnd(last, across, Palette.CUT_WOOD);
      case FLAT -> cutEnd(last, across, last.bark());
    }
    return mesh.build();
  }

  private static double slope(List<Station> stations, int n) {
    Station a = stations.get(Math.max(0, n - 1));
    Station b = stations.get(Math.min(stations.size() - 1, n + 1));
    double length = b.rest() - a.rest();
    return length > 0 ? (b.radius() - a.radius()) / length : 0;
  }

  private int ring(Station station, Vector3 across, double slope) {
    int first = -1;
    for (int j = 0; j < sides; j++) {
      Vector3 radial = radial(station.direction(), across, j);
      Vector3 normal = radial.minus(station.direction().times(slope)).direction().vector();
      int v =
          mesh.vertex(
              station.point().plus(radial.times(station.radius())),
              normal,
              colour(station, radial),
              grain(station, offsetAtRest(j, station.radius())));
      first = j == 0 ? v : first;
    }
    return first;
  }

  private Vector3 radial(Direction3 direction, Vector3 across, int j) {
    double angle = 2 * Math.PI * j / sides;
    Vector3 other = direction.vector().cross(across);
    return across.times(Math.cos(angle)).plus(other.times(Math.sin(angle)));
  }

  private Vector3 offsetAtRest(int j, double radius) {
    double angle = 2 * Math.PI * j / sides;
    return new Vector3(radius * Math.cos(angle), radius * Math.sin(angle), 0);
  }

  private Colour colour(Station station, Vector3 radial) {
    if (scale.isEmpty() || station.strain() == 0) {
      return station.bark();
    }
    double strain = station.strain() * radial.dot(station.tensionSide());
    return scale.get().over(station.bark(), strain);
  }

  private static MeshBuilder.Grain grain(Station station, Vector3 offset) {
    return new MeshBuilder.Grain(offset.x(), offset.y(), station.rest(), station.sky());
  }

  private void fan(int centre, int ring, boolean facingBack) {
    for (int j = 0; j < sides; j++) {
      int next = (j + 1) % sides;
      mesh.triangle(centre, ring + (facingBack ? next : j), ring + (facingBack ? j : next));
    }
  }

  private void roundEnd(Station last, Vector3 across, int ring) {
    int previous = ring;
    for (int c = 1; c < CAP_RINGS; c++) {
      double angle = Math.PI / 2 * c / CAP_RINGS;
      double height = CAP_HEIGHT * last.radius() * Math.sin(angle);
      Station shrunk = moved(last, height, last.radius() * Math.cos(angle));
      int next = ring(shrunk, across, -Math.tan(angle) / CAP_HEIGHT);
      mesh.band(previous, next, sides);
      previous = next;
    }
    Station tip = moved(last, CAP_HEIGHT * last.radius(), 0);
    int pole =
        mesh.vertex(
            tip.point(),
            last.direction().vector(),
            colour(last, Vector3.ZERO),
            grain(tip, Vector3.ZERO));
    fan(pole, previous, false);
  }

  private static Station moved(Station station, double forward, double radius) {
    Point3 point = station.point().plus(station.direction().times(forward));
    return new Station(
        point,
        station.direction(),
        radius,
        station.strain(),
        station.tensionSide(),
        station.bark(),
        station.sky(),
        station.rest() + forward);
  }

  private void cutEnd(Station last, Vector3 across, Colour face) {
    int rim = flatRing(last, across, last.radius(), last.bark());
    int wood = flatRing(last, across, last.radius() * BARK_RIM, face);
    mesh.band(rim, wood, sides);
    int centre = mesh.vertex(last.point(), last.direction().vector(), face, MeshBuilder.Grain.NONE);
    fan(centre, wood, false);
  }

  private int flatRing(Station last, Vector3 across, double radius, Colour colour) {
    int first = -1;
    for (int j = 0; j < sides; j++) {
      Point3 at = last.point().plus(radial(last.direction(), across, j).times(radius));
      int v = mesh.vertex(at, last.direction().vector(), colour, MeshBuilder.Grain.NONE);
      first = j == 0 ? v : first;
    }
    return first;
  }
}
