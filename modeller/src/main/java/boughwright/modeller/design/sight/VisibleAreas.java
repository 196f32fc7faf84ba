// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.sight;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Vector3;

/**
 * How much of each shape is seen along a line of sight. Scratch: one for each thread, turned anew
 * by {@link #look}.
 *
 * <p>Each shape carries places that stand for parts of its outline and turn with it; each place is
 * hidden or not, exactly. So the only error is that a place speaks for its whole part, and turning
 * or mirroring everything changes nothing. Areas outlined are exact.
 */
public final class VisibleAreas {
  /** Shapes nearer to each other than this part of the picture's depth are equally near. */
  private static final double EQUAL = 1e-9;

  private final Shapes shapes;
  private final Sight sight;
  private final Cells cells;
  private final OutlinePlaces places;

  /** Shape: one per shape [m2]. */
  private final double[] area;

  private final double[] seen;
  private final double[] clear;
  private double equal;

  /**
   * Makes room to look at shapes.
   *
   * @param fineness how many places stand for a piece as long as all shapes together are big, along
   *     its axis
   */
  public VisibleAreas(Shapes shapes, int fineness) {
    this.shapes = shapes;
    sight = new Sight(shapes);
    cells = new Cells(sight);
    places = new OutlinePlaces(sight, fineness);
    area = new double[shapes.count];
    seen = new double[shapes.count];
    clear = new double[shapes.count];
  }

  /** Looks from the side a direction points to. */
  public void look(Direction3 towardViewer) {
    sight.look(towardViewer);
    cells.fill();
    double far = Double.POSITIVE_INFINITY;
    double near = Double.NEGATIVE_INFINITY;
    for (int at = 0; at < sight.seen.length; at += Sight.SEEN) {
      far = Math.min(far, sight.seen[at + Sight.DEPTH]);
      near = Math.max(near, sight.seen[at + Sight.NEAREST]);
    }
    equal = EQUAL * (near - far);
    for (int i = 0; i < shapes.count; i++) {
      look(i);
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
        all += weight;
        int hiding = hiding(i, x, y, front);
        shown += hiding == 0 ? weight : 0;
        free += hiding < 2 ? weight : 0;
      }
    }
    double part = outlined > 0 ? sight.area(i) / outlined : 0;
    area[i] = all * part;
    seen[i] = shown * part;
    clear[i] = free * part;
  }

  /** 0 where a place of a shape is seen, 1 where only its group hides it, 2 where others do. */
  private int hiding(int i, double x, double y, double front) {
    int cell = cells.cell(x, y);
    int end = cells.start(cell + 1);
    boolean grouped = shapes.group[i];
    int found = 0;
    for (int place = cells.start(cell); place < end; place++) {
      int other = cells.shape(place);
      if (other == i || sight.seen[Sight.SEEN * other + Sight.NEAREST] < front - equal) {
        continue;
      }
      double nearer = sight.front(other, x, y) - front;
      if (nearer > equal || nearer >= -equal && other < i) {
        if (!grouped || !shapes.group[other]) {
          return 2;
        }
        found = 1;
      }
    }
    return found;
  }

  /** Area a shape covers of the picture, whether hidden or not, what soil hides left out [m2]. */
  public double area(int i) {
    return area[i];
  }

  /** Area seen of a shape [m2]. All areas seen add up to the area all shapes cover together. */
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
        double out = (sight.front(other, x, y) - front) / soft;
        most = Math.max(most, Math.min(1, out));
      }
    }
    return shapes.inSoil[own] && sight.height(x, y, front) < 0 ? 1 : most * most * (3 - 2 * most);
  }

  /** Area of the tightest outline without hollows round some shapes [m2]. */
  public double outline(boolean[] counted) {
    return Outline.area(sight, counted);
  }
}
