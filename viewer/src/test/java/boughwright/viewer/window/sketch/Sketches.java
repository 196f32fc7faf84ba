// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.modeller.edit.NewTree;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.history.History;
import boughwright.modeller.plan.Document;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import boughwright.modeller.units.DisplayUnits;
import boughwright.viewer.window.work.Workspace;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Trees to sketch on; all invented. */
public final class Sketches {
  private Sketches() {}

  /** What a person starts from: one upright trunk segment, 100 mm high. */
  public static Document fresh() {
    try {
      return NewTree.document("Invented", "unknown");
    } catch (InputException e) {
      throw new AssertionError(e);
    }
  }

  /** A workspace on a document. */
  public static Workspace workspace(Document document) {
    return new Workspace(History.unsaved(document), Optional.empty(), DisplayUnits.USUAL);
  }

  /**
   * A trunk of two upright segments, 100 mm each, with a level branch to the viewer's right
   * half-way up the first, and one on that.
   */
  public static Document small() {
    return of(
        List.of(
            piece("t1", "", 1, Kind.TRUNK, new double[] {0, 0, 0.1, 0.03, 0.025}),
            piece("t2", "t1", 1, Kind.TRUNK, new double[] {0, 0, 0.2, 0.025, 0.02}),
            piece("b1", "t1", 0.5, Kind.BRANCH, new double[] {0.08, 0, 0.05, 0.01, 0.008}),
            piece("b1b", "b1", 1, Kind.BRANCH, new double[] {0.14, 0, 0.07, 0.008, 0.006})));
  }

  /** A trunk with branches all round, of a number of segments. */
  public static Document large(int count) {
    List<Segment> segments = new ArrayList<>();
    int trunk = Math.max(2, count / 10);
    for (int i = 0; i < trunk; i++) {
      double top = 0.03 * (i + 1);
      double thick = 0.06 - 0.055 * i / trunk;
      segments.add(
          piece(
              "t" + (i + 1),
              i == 0 ? "" : "t" + i,
              1,
              Kind.TRUNK,
              new double[] {0, 0, top, thick, thick - 0.055 / trunk}));
    }
    for (int i = trunk; i < count; i++) {
      int on = (i - trunk) % trunk;
      double turn = i * 2.4;
      double reach = 0.15 - 0.1 * on / trunk;
      segments.add(
          piece(
              "branch-" + i,
              "t" + (on + 1),
              0.5,
              Kind.BRANCH,
              new double[] {
                reach * Math.cos(turn), reach * Math.sin(turn), 0.03 * on + 0.06, 0.004, 0.003
              }));
    }
    return of(segments);
  }

  /** A trunk with so many branches all round, each of so many segments that grow on one another. */
  public static Document bushy(int branches, int each) {
    List<Segment> segments = new ArrayList<>();
    int trunk = 20;
    for (int i = 0; i < trunk; i++) {
      double thick = 0.08 - 0.003 * i;
      segments.add(
          piece(
              "t" + (i + 1),
              i == 0 ? "" : "t" + i,
              1,
              Kind.TRUNK,
              new double[] {0, 0, 0.03 * (i + 1), thick, thick - 0.003}));
    }
    for (int b = 0; b < branches; b++) {
      int on = 2 + b % (trunk - 2);
      double turn = 2.4 * b;
      for (int k = 0; k < each; k++) {
        double reach = 0.05 + 0.012 * (k + 1);
        double thick = 0.006 - 0.004 * k / each;
        segments.add(
            piece(
                "b" + b + "." + k,
                k == 0 ? "t" + (on + 1) : "b" + b + "." + (k - 1),
                k == 0 ? (b + 0.5) / branches : 1,
                Kind.BRANCH,
                new double[] {
                  reach * Math.cos(turn),
                  reach * Math.sin(turn),
                  0.03 * on + 0.03 * (b + 0.5) / branches + 0.002 * k,
                  thick,
                  thick - 0.004 / each
                }));
      }
    }
    return of(segments);
  }

  private static Document of(List<Segment> segments) {
    return new Document(
        new TreeDraft("Invented", new TreeWood.OfSpecies("unknown"), segments).build(),
        List.of(),
        Map.of());
  }

  private static Segment piece(String id, String on, double along, Kind kind, double[] sizes) {
    boolean base = on.isEmpty();
    return new Segment(
        id,
        base ? Optional.empty() : Optional.of(on),
        along,
        base ? Optional.empty() : Optional.of(along == 1 ? Joint.CONTINUES : Joint.UNION),
        kind,
        base ? Optional.of(Point3.ORIGIN) : Optional.empty(),
        new Point3(sizes[0], sizes[1], sizes[2]),
        sizes[3],
        sizes[4],
        OptionalDouble.empty(),
        Optional.empty(),
        Map.of());
  }

  /** A segment by its name. */
  public static Segment segment(Workspace workspace, String id) {
    return workspace.document().tree().segments().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no segment " + id));
  }
}
