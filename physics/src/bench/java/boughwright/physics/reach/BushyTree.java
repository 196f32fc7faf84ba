// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.tree.AnchorKind;
import boughwright.modeller.tree.AnchorPoint;
import boughwright.modeller.tree.Growing;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Setting;
import boughwright.modeller.tree.Tree;
import boughwright.modeller.tree.TreeDraft;
import boughwright.modeller.tree.TreeWood;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** An invented tree of as many segments as wanted: a trunk, limbs round it, and twigs on them. */
final class BushyTree {
  private static final int OF_LIMB = 10;
  private static final int TWIGS_OF_LIMB = 4;
  private static final double TRUNK = 0.9;

  private final Random random = new Random(7);
  private final List<Segment> segments = new ArrayList<>();

  private BushyTree() {}

  /** The tree; its first limb is called b0s0 to b0s9. */
  static Tree of(int count) {
    return new BushyTree().grown(count);
  }

  private Tree grown(int count) {
    int limbs = Math.max(1, count / (OF_LIMB + TWIGS_OF_LIMB + 1));
    int trunk = count - limbs * (OF_LIMB + TWIGS_OF_LIMB);
    Point3 at = Point3.ORIGIN;
    for (int n = 0; n < trunk; n++) {
      Point3 end = at.plus(new Vector3(0, 0, TRUNK / trunk));
      double from = 0.06 * (1 - 0.8 * n / trunk);
      add("t" + n, n == 0 ? null : "t" + (n - 1), 1, end, new double[] {from, from - 0.048 / trunk});
      at = end;
    }
    for (int n = 0; n < limbs; n++) {
      limb(n, (int) ((0.15 + 0.8 * n / limbs) * trunk));
    }
    List<AnchorPoint> anchors = new ArrayList<>();
    for (int n = 0; n < 8; n++) {
      Vector3 out = Direction3.ofAzimuth(Math.PI * n / 4).times(0.18);
      anchors.add(
          new AnchorPoint("s" + n, Point3.ORIGIN.plus(out), AnchorKind.SCREW, Map.of()));
    }
    return new TreeDraft("invented for measuring times", new TreeWood.OfSpecies("carpinus-betulus"), segments).bark(OptionalDouble.of(0.0004)).setting(new Setting(Optional.empty(), Growing.UNSAID, anchors)).build();
  }

  private void limb(int n, int on) {
    Direction3 way = Direction3.ofAzimuth(2.4 * n, 0.4);
    Point3 tip = segments.get(on).end();
    double caliper = 0.014;
    String parent = "t" + on;
    for (int k = 0; k < OF_LIMB; k++) {
      Point3 end = tip.plus(way.times(k == 0 ? 0.06 : 0.03));
      String id = "b" + n + "s" + k;
      add(id, parent, 1, end, new double[] {caliper, 0.9 * caliper});
      if (k >= 3 && k < 3 + TWIGS_OF_LIMB) {
        Point3 aside = tip.plus(way.anySquare().times(0.05));
        add("w" + n + "s" + k, parent, 1, aside, new double[] {0.003, 0.002});
      }
      caliper *= 0.9;
      tip = end;
      parent = id;
      Vector3 turn = new Vector3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      way = Rotation.ofVector(turn.times(0.1)).turn(way);
    }
  }

  private void add(String id, String parent, double along, Point3 end, double[] calipers) {
    segments.add(
        new Segment(
            id,
            Optional.ofNullable(parent),
            along,
            Optional.empty(),
            id.startsWith("t") ? Kind.TRUNK : Kind.BRANCH,
            parent == null ? Optional.of(Point3.ORIGIN) : Optional.empty(),
            end,
            calipers[0],
            calipers[1],
            OptionalDouble.empty(),
            Optional.empty(),
            Map.of()));
  }
}
