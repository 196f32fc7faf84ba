// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.Skeleton;
import boughwright.physics.trial.PathSample;
import boughwright.physics.trial.SegmentTrial;
import java.util.ArrayList;
import java.util.List;

/**
 * The smooth curve of a limb in a bent pose.
 *
 * <p>The trial bends straight segments with kinks between them. What the smooth curve adds to the
 * straight segments at rest is carried along with the turning wood, so a limb that did not move is
 * drawn exactly where it was.
 */
final class BentCurve implements Axis.Curve {
  private final Skeleton skeleton;
  private final Limb limb;
  private final List<SegmentTrial> trials;
  private volatile Turned turned;

  /** One segment: its samples, and how the wood has turned at each of them. */
  private record Piece(
      Vector3 way, double length, List<PathSample> samples, List<Rotation> turns) {}

  /** The limb at rest, and how its pieces turned. */
  private record Turned(RestCurve rest, List<Piece> pieces) {}

  BentCurve(Skeleton skeleton, Limb limb, List<SegmentTrial> trials) {
    this.skeleton = skeleton;
    this.limb = limb;
    this.trials = trials;
  }

  /** Worked out when a place is asked for: of a limb that did not move nobody asks. */
  private Turned turned() {
    Turned there = turned;
    if (there == null) {
      there = turn();
      turned = there;
    }
    return there;
  }

  private Turned turn() {
    List<Piece> pieces = new ArrayList<>();
    Rotation turn = Rotation.NONE;
    for (int k = 0; k < trials.size(); k++) {
      int i = limb.segments().get(k);
      List<Rotation> turns = new ArrayList<>();
      for (PathSample sample : trials.get(k).samples()) {
        turn = Rotation.between(turn.turn(skeleton.direction(i)), sample.direction()).after(turn);
        turns.add(turn);
      }
      pieces.add(
          new Piece(
              skeleton.direction(i).vector(), skeleton.length(i), trials.get(k).samples(), turns));
    }
    return new Turned(new RestCurve(skeleton, limb), pieces);
  }

  @Override
  public int count() {
    return trials.size();
  }

  /** Of the samples themselves: the curve between them follows from them. */
  @Override
  public double[] print() {
    int places = trials.stream().mapToInt(trial -> trial.samples().size()).sum();
    double[] print = new double[places * Axis.NUMBERS];
    int at = 0;
    for (SegmentTrial trial : trials) {
      for (PathSample sample : trial.samples()) {
        Axis axis =
            new Axis(
                sample.point(), sample.direction(), sample.bendingStrain(), sample.tensionSide());
        Axis.write(print, at, axis);
        at += Axis.NUMBERS;
      }
    }
    return print;
  }

  @Override
  public Axis at(int k, double u) {
    RestCurve rest = turned().rest();
    Piece piece = turned().pieces().get(k);
    int n = interval(piece.samples(), u);
    PathSample a = piece.samples().get(n);
    PathSample b = piece.samples().get(n + 1);
    double span = b.along() - a.along();
    double t = span > 0 ? Math.min(1, Math.max(0, (u - a.along()) / span)) : 0;
    double beyond = Math.max(0, u - b.along()) * piece.length();
    double length = span * piece.length();
    Hermite curve =
        new Hermite(a.point(), a.direction().times(length), b.point(), b.direction().times(length));
    Point3 straight = curve.point(t).plus(b.direction().times(beyond));
    Vector3 way = curve.slope(t);
    if (way.norm() == 0) {
      way = a.direction().vector();
    }
    Rotation from = piece.turns().get(n);
    Rotation turn =
        Rotation.between(from.turn(piece.way().direction()), way.direction()).after(from);
    return new Axis(
        straight.plus(turn.turn(rest.offset(k, u))),
        turn.turn(rest.slope(k, u)).direction(),
        a.bendingStrain() + t * (b.bendingStrain() - a.bendingStrain()),
        blend(a.tensionSide(), b.tensionSide(), t));
  }

  private static int interval(List<PathSample> samples, double u) {
    int n = 0;
    while (n < samples.size() - 2 && samples.get(n + 1).along() < u) {
      n++;
    }
    return n;
  }

  private static Vector3 blend(Vector3 a, Vector3 b, double t) {
    Vector3 sum = a.times(1 - t).plus(b.times(t));
    return sum.norm() < 1e-9 ? Vector3.ZERO : sum.direction().vector();
  }
}
