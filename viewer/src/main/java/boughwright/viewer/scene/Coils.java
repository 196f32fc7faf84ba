// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Coil;
import boughwright.modeller.plan.Cutting;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the coiled wires of a plan, coarser where there are many. */
final class Coils {
  private final Skeleton skeleton;
  private final Pose pose;
  private final CoilStore store;
  private final boolean fine;
  private final List<Mesh> meshes = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();

  /**
   * @param store what was wound before
   * @param fine whether they are drawn for a tree that stands still
   */
  Coils(Skeleton skeleton, Pose pose, CoilStore store, boolean fine) {
    this.skeleton = skeleton;
    this.pose = pose;
    this.store = store;
    this.fine = fine;
  }

  List<Mesh> meshes() {
    return meshes;
  }

  List<Mark> marks() {
    return marks;
  }

  /**
   * How finely wire is drawn.
   *
   * @param steps places on each turn
   * @param sides corners of its cross-section
   */
  record Detail(int steps, int sides) {
    /** Fine for the coils of one tree, coarser for hundreds of turns and thousands. */
    static Detail forTurns(double turns) {
      if (turns <= 250) {
        return new Detail(26, 10);
      }
      return turns <= 1200 ? new Detail(16, 7) : new Detail(10, 5);
    }

    /** For a tree that is being turned or bent. */
    static Detail moving(double turns) {
      return turns <= 250 ? new Detail(14, 6) : new Detail(9, 4);
    }
  }

  /** Draws coils that lie on what the cuts leave. */
  void add(List<Coil> coils, Cutting kept) {
    double turns = coils.stream().mapToDouble(this::roughTurns).sum();
    Detail detail = fine ? Detail.forTurns(turns) : Detail.moving(turns);
    for (Coil coil : coils) {
      if (kept.holds(coil.from()) && kept.holds(coil.to())) {
        path(coil).ifPresent(path -> add(path, coil, detail));
      }
    }
  }

  private void add(BarkPath path, Coil coil, Detail detail) {
    CoilStore.Wound wound =
        store.get(new CoilStore.Key(coil, detail), path.prints(), () -> draw(path, coil, detail));
    meshes.addAll(wound.meshes());
    marks.add(wound.mark());
  }

  private Optional<BarkPath> path(Coil coil) {
    return BarkPath.of(skeleton, pose, coil.from(), coil.to());
  }

  /** About how many turns all its strands have. */
  private double roughTurns(Coil coil) {
    return path(coil)
        .map(
            path -> {
              double round = 2 * Math.PI * path.at(path.length() / 2).radius();
              double pitch = Math.max(coil.gauge(), round / Math.tan(coil.angleToAxis()));
              return coil.strands() * path.length() / pitch;
            })
        .orElse(0.0);
  }

  private static CoilStore.Wound draw(BarkPath path, Coil coil, Detail detail) {
    CoilCurve curve = new CoilCurve(path, coil, detail.steps());
    List<Mesh> strands = new ArrayList<>();
    Tube tube = new Tube(coil.gauge() / 2, detail.sides(), Palette.metal(coil.metal()));
    for (int n = 0; n < coil.strands(); n++) {
      List<Point3> way = curve.strand(n).stream().map(CoilCurve.Bead::wire).toList();
      if (way.size() > 1) {
        strands.add(tube.along(way));
      }
    }
    List<Point3> places = new ArrayList<>();
    List<CoilCurve.Bead> first = curve.strand(0);
    for (int n = 1; n < 10; n++) {
      places.add(first.get(first.size() * n / 10).wire());
    }
    return new CoilStore.Wound(strands, new Mark.Wire(coil, places, Wording.coil(coil)));
  }
}
