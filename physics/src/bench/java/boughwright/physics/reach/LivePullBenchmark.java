// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.modeller.plan.PlanDraft;
import boughwright.modeller.geometry.Direction3;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Tree;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** A hand that draws circles with the tip of a limb; goal: a few milliseconds for each place. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LivePullBenchmark {
  private static final Spot TIP = new Spot("b0s9", 1);
  private static final int ROUND = 200;

  @Param({"300", "2000"})
  public int segments;

  private Grab grab;
  private Point3 tip;
  private LivePull pull;
  private LiveHand hand;
  private int step;

  /** Grows the tree, grabs the tip, and weighs all lines round the circle. */
  @Setup
  public void prepare() {
    Tree tree = BushyTree.of(segments);
    tip =
        tree.segments().stream()
            .filter(segment -> segment.id().equals(TIP.segment()))
            .findFirst()
            .orElseThrow()
            .end();
    grab =
        Grab.anew(
            tree,
            new PlanDraft("a").build(),
            SpeciesTable.bundled().find("Carpinus betulus").get(0),
            TIP);
    pull = LivePull.of(grab);
    hand = LivePull.of(grab).hand();
    for (int n = 0; n < ROUND; n += ROUND / 10) {
      pull.to(target(n));
      while (pull.weigh()) {
        // until nothing is left to weigh
      }
    }
  }

  /** A circle below the tip on the screen of one who looks from the front, seen in depth. */
  private Aim target(int n) {
    double turn = 2 * Math.PI * n / ROUND;
    Point3 at = tip.plus(new Vector3(0.04 * Math.sin(turn), 0, 0.04 * Math.cos(turn) - 0.06));
    return new Aim.Sight(at, Direction3.of(0, 1, 0));
  }

  /** Taking hold: everything that is set up once. */
  @Benchmark
  public LivePull grab() {
    return LivePull.of(grab);
  }

  /** One place of the hand, held by a line. */
  @Benchmark
  public Pulled line() {
    return pull.to(target(step++ % ROUND));
  }

  /** One place of the hand, held by the hand alone. */
  @Benchmark
  public Handed free() {
    return hand.to(target(step++ % ROUND));
  }
}
