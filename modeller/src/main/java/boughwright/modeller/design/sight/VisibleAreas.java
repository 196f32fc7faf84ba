// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * How much of each shape is seen along a line of sight. Scratch: one for each thread, turned anew
 * by {@link #look}.
 *
 * <p>Each shape carries places that stand for parts of its outline and turn with it, and how far
 * each is hidden is exact but for soft edges. So the only error is that a place speaks for its
 * whole part, and turning or mirroring everything changes nothing. Areas outlined are exact.
 */
public final class VisibleAreas {
  /** Width of soft edges, in sizes of all shapes together. Choice; see {@link Cover}. */
  private static final double SOFT = 0.012;

  private final Shapes shapes;
  private final boolean[] asked;
  private final Sight sight;
  private final Cells cells;
  private final OutlinePlaces places;
  private final Cover cover;
  private final Outline outline;

  /** Shape: one per shape [m2]. */
  private final double[] area;

  private final double[] seen;
  private final double[] clear;

  /** How far the place looked at last is hidden by all, and by what is not of its group [1]. */
  private double hidden;

  private double hiddenByOthers;

  /**
   * Makes room to look at shapes.
   *
   * @param fineness how many places stand for a piece as long as all shapes together are big, along
   *     its axis
   * @param asked one per shape; whether its areas are asked for: others only hide
   */
  public VisibleAreas(Shapes shapes, int fineness, boolean[] asked) {
    if (asked.length != shapes.count) {
      throw new IllegalArgumentException("one mark per shape is expected");
    }
    this.shapes = shapes;
    this.asked = asked.clone();
    sight = new Sight(shapes);
    places = new OutlinePlaces(sight, fineness);
    cover = new Cover(sight, SOFT * places.size());
    cells = new Cells(sight, cover.margin());
    outline = new Outline(sight);
    area = new double[shapes.count];
    seen = new double[shapes.count];
    clear = new double[shapes.count];
  }

  /** Looks from the side a direction points to. */
  public void look(Direction3 towardViewer) {
    sight.look(towardViewer);
    cells.fill();
    for (int i = 0; i < shapes.count; i++) {
      if (asked[i]) {
        look(i);
      }
    }
  }

  private void look(int i) {
    places.lay(i);
    double all = 0;
    double shown = 0;
    double free = 0;
    double outlined = 0;
    for (int k = 0; k < places.count(); k++) {
      double x = places.x(k);
      double y = places.y(k);
      double weight = places.weight(k);
      outlined += weight;
      double front = sight.front(i, x, y);
      if (front != Sight.NOTHING) {
        double above = weight * cover.shown(i, x, y, front);
        if (above > 0) {
          all += above;
          hide(i, x, y, cover.surface(i, x, y, front));
          shown += above * (1 - hidden);
          free += above * (1 - hiddenByOthers);
        }
      }
    }
    double part = outlined > 0 ? sight.area(i) / outlined : 0;
    area[i] = all * part;
    seen[i] = shown * part;
    clear[i] = free * part;
  }

  /** Finds how far a place of a shape is hidden. */
  private void hide(int i, double x, double y, double front) {
    int cell = cells.cell(x, y);
    int end = cells.start(cell + 1);
    boolean grouped = shapes.group[i];
    hidden = 0;
    hiddenByOthers = 0;
    for (int place = cells.start(cell); place < end && hiddenByOthers < 1; place++) {
      int other = cells.shape(place);
      if (sight.seen[Sight.SEEN * other + Sight.NEAREST] <= front - cover.margin()) {
        return;
      }
      if (other != i) {
        double covered =
            shapes.joined(i, other)
                ? cover.sharp(other, x, y, front)
                : cover.of(other, x, y, front);
        hidden = Math.max(hidden, covered);
        if (!grouped || !shapes.group[other]) {
          hiddenByOthers = Math.max(hiddenByOthers, covered);
        }
      }
    }
  }

  /**
   * Area a shape that is asked for covers of the picture, whether hidden or not, what soil hides
   * left out [m2].
   */
  public double area(int i) {
    return area[i];
  }

  /**
   * Area seen of a shape that is asked for [m2]. All areas seen add up to the area all shapes cover
   * together.
   */
  public double seen(int i) {
    return seen[i];
  }

  /** Area of a shape of the group that no shape outside the group hides [m2]. */
  public double clear(int i) {
    return clear[i];
  }

  /**
   * How far a point on the bark is hidden by other shapes: 0 not at all, 1 wholly [1].
   *
   * @param point the point [m, tree frame]
   * @param own the shape it is on
   * @param soft how far another shape must stand out before the point to hide it wholly [m]
   */
  public double hidden(Vector3 point, int own, double soft) {
    double x = sight.x(point);
    double y = sight.y(point);
    double front = sight.depth(point);
    int cell = cells.cell(x, y);
    double most = 0;
    for (int place = cells.start(cell); place < cells.start(cell + 1); place++) {
      int other = cells.shape(place);
      if (other != own) {
        double surface = sight.front(other, x, y);
        if (surface > front) {
          double out = Math.min(1, (surface - front) / soft);
          most = Math.max(most, out * cover.shown(other, x, y, surface));
        }
      }
    }
    double above = shapes.inSoil[own] ? cover.ramp(sight.height(x, y, front)) : 1;
    return 1 - above * (1 - most * most * (3 - 2 * most));
  }

  /** Area of the tightest outline without hollows round some shapes [m2]. */
  public double outline(boolean[] counted) {
    return outline.area(counted);
  }
}
