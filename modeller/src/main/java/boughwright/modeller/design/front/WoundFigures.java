// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.design.sight.VisibleAreas;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.List;

/**
 * The wounds and the faces of cuts as small patches, each with its place, its normal and its area.
 * A wound is bent round the bark, a face is flat. Immutable.
 */
final class WoundFigures {
  /** Rings of patches in a wound; they hold 6, 12, 18, ... patches. */
  private static final int RINGS = 4;

  /**
   * How far wood must stand out before a wound to hide it wholly, in radii of the wood it is on:
   * where two pieces of one shoot meet, the next one stands out a little and hides nothing. Choice.
   */
  private static final double SOFT = 0.25;

  /** A place in a round of radius 1, and the part of its area it stands for. */
  private record Place(double across, double along, double part) {}

  private static final List<Place> PLACES = places();

  private record Patch(Vector3 point, Vector3 normal, double area, int piece, double soft) {}

  private final List<Patch> patches = new ArrayList<>();

  private static List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (int ring = 0; ring < RINGS; ring++) {
      int round = 6 * (ring + 1);
      double part = (2 * ring + 1.0) / (RINGS * RINGS) / round;
      double out = (ring + 0.5) / RINGS;
      for (int k = 0; k < round; k++) {
        double angle = 2 * Math.PI * (k + 0.5) / round;
        places.add(new Place(out * Math.sin(angle), out * Math.cos(angle), part));
      }
    }
    return List.copyOf(places);
  }

  WoundFigures(FrontSubject subject, Parts parts) {
    Skeleton skeleton = subject.wood().skeleton();
    for (Wound wound : subject.wounds()) {
      int piece = parts.pieceOf(skeleton.indexOf(wound.segment()));
      if (piece != Parts.NO_PIECE) {
        cover(skeleton, wound, piece);
      }
    }
    for (CutFace face : parts.faces) {
      int piece = parts.pieceOf(skeleton.indexOf(face.on().segment()));
      if (piece != Parts.NO_PIECE) {
        cover(skeleton, face, piece);
      }
    }
  }

  private void cover(Skeleton skeleton, Wound wound, int piece) {
    int segment = skeleton.indexOf(wound.segment());
    double radius = skeleton.caliper(segment, wound.along()) / 2;
    double area = Math.PI / 4 * wound.width() * wound.height();
    Vector3 middle = skeleton.point(segment, wound.along()).minus(Point3.ORIGIN);
    Vector3 axis = skeleton.direction(segment).vector();
    for (Place place : PLACES) {
      double across = place.across * wound.width() / 2;
      Vector3 normal = skeleton.roundDirection(segment, wound.round() + across / radius).vector();
      Vector3 point =
          middle.plus(axis.times(place.along * wound.height() / 2)).plus(normal.times(radius));
      patches.add(new Patch(point, normal, area * place.part, piece, SOFT * radius));
    }
  }

  private void cover(Skeleton skeleton, CutFace face, int piece) {
    int segment = skeleton.indexOf(face.on().segment());
    double soft = SOFT * skeleton.caliper(segment, face.on().along()) / 2;
    Vector3 middle = face.middle().minus(Point3.ORIGIN);
    Vector3 normal = face.normal().vector();
    Vector3 crosswise = normal.cross(face.lengthwise().vector());
    for (Place place : PLACES) {
      Vector3 point =
          middle
              .plus(crosswise.times(place.across * face.width() / 2))
              .plus(face.lengthwise().times(place.along * face.height() / 2));
      patches.add(new Patch(point, normal, face.area() * place.part, piece, soft));
    }
  }

  /** Area of wounds and faces that is seen, projected square to the line of sight [m2]. */
  double seen(Direction3 toward, VisibleAreas areas) {
    double sum = 0;
    for (int k = 0; k < patches.size(); k++) {
      Patch patch = patches.get(k);
      double facing =
          patch.normal.x() * toward.x()
              + patch.normal.y() * toward.y()
              + patch.normal.z() * toward.z();
      if (facing > 0) {
        double hidden = areas.hidden(patch.point, patch.piece, patch.soft);
        sum += patch.area * facing * (1 - hidden);
      }
    }
    return sum;
  }
}
