// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.pull;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Hold;
import boughwright.physics.reach.Aim;
import boughwright.physics.reach.AnchorPlace;
import boughwright.physics.reach.Grab;
import boughwright.physics.reach.LiveHand;
import boughwright.physics.reach.LivePull;
import boughwright.physics.reach.Pulled;
import java.awt.EventQueue;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/**
 * Follows a hand on a thread of its own: only the last place asked for counts, and between places
 * other anchors are weighed. Called on, and tells on, the event thread.
 */
final class Follower implements AutoCloseable {
  /** How what is pulled is held. */
  enum Way {
    LINE,
    COIL
  }

  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          run -> {
            Thread made = new Thread(run, "pull");
            made.setDaemon(true);
            return made;
          });
  private final AtomicReference<Aim> wanted = new AtomicReference<>();
  private final Consumer<Draft> drafts;
  private final Consumer<String> refusals;
  private volatile int grabs;
  private LivePull line;
  private LiveHand hand;
  private Way way = Way.LINE;

  /**
   * @param drafts gets what was found
   * @param refusals gets why a place cannot be pulled
   */
  Follower(Consumer<Draft> drafts, Consumer<String> refusals) {
    this.drafts = drafts;
    this.refusals = refusals;
  }

  /**
   * What is there where a place is pulled.
   *
   * @param start where the place is with nothing but the rest of the plan [m, tree frame]
   * @param anchors what there is to tie to, the nearest first
   */
  record Ground(Point3 start, List<AnchorPlace> anchors) {}

  /** Takes hold of a place; what was pulled before is forgotten. */
  void grab(Grab grab, Way how, Consumer<Ground> known) {
    int mine = ++grabs;
    wanted.set(null);
    thread.execute(
        () -> {
          line = null;
          hand = null;
          way = how;
          LivePull made;
          try {
            made = LivePull.of(grab);
          } catch (IllegalArgumentException e) {
            refuse(mine, e.getMessage());
            return;
          }
          if (made.refused().isPresent()) {
            refuse(
                mine,
                PullWords.sentence(made.refused().get().found())
                    + " "
                    + PullWords.sentence(made.refused().get().remedy()));
            return;
          }
          line = made;
          hand = made.hand();
          Ground ground = new Ground(made.free(), made.anchors());
          EventQueue.invokeLater(
              () -> {
                if (mine == grabs) {
                  known.accept(ground);
                }
              });
        });
  }

  private void refuse(int mine, String why) {
    EventQueue.invokeLater(
        () -> {
          if (mine == grabs) {
            refusals.accept(why);
          }
        });
  }

  /** The hand came to a place. */
  void to(Aim target) {
    int mine = grabs;
    if (wanted.getAndSet(target) == null) {
      thread.execute(() -> follow(mine));
    }
  }

  private void follow(int mine) {
    Aim target = wanted.getAndSet(null);
    if (target == null || line == null || mine != grabs) {
      return;
    }
    if (way == Way.COIL) {
      give(mine, Draft.of(hand.to(target), false));
      return;
    }
    give(mine, Draft.of(line.to(target), false));
    weigh(mine, target);
  }

  private void weigh(int mine, Aim target) {
    boolean more = true;
    while (more && wanted.get() == null && mine == grabs) {
      more = line.weigh();
      if (line.wouldChange() && wanted.get() == null) {
        give(mine, Draft.of(line.to(target), false));
      }
    }
  }

  /** The hand lets go: the pose with the usual accuracy, all anchors weighed. */
  void settle(Aim target) {
    int mine = grabs;
    wanted.set(null);
    thread.execute(
        () -> {
          if (line == null || mine != grabs) {
            return;
          }
          if (way == Way.COIL) {
            Draft live = Draft.of(hand.to(target), false);
            give(mine, hand.settled().map(one -> Draft.of(one, true)).orElse(live));
            return;
          }
          line.to(target);
          while (mine == grabs && line.weigh()) {
            // until nothing is left to weigh
          }
          line.to(target);
          Pulled rested = line.rested();
          Draft loose = Draft.of(rested, true);
          give(mine, line.settled().map(one -> Draft.of(one, true)).orElse(loose));
        });
  }

  /** Holds the line of the last target as it was typed. */
  void hold(Hold hold) {
    int mine = grabs;
    thread.execute(
        () -> {
          if (line == null || mine != grabs) {
            return;
          }
          Optional<Pulled> held = line.held(hold);
          if (held.isPresent()) {
            give(mine, Draft.of(held.get(), true));
          } else {
            refuse(mine, "No pose holds with that. What was shown before still is.");
          }
        });
  }

  /** Ties the line to one anchor, or to the one that does best, from the next place on. */
  void fix(Optional<AnchorPlace> anchor) {
    int mine = grabs;
    thread.execute(
        () -> {
          if (line != null && mine == grabs) {
            line.fix(anchor);
          }
        });
  }

  /** Forgets what was pulled. */
  void letGo() {
    grabs++;
    wanted.set(null);
  }

  private void give(int mine, Draft draft) {
    EventQueue.invokeLater(
        () -> {
          if (mine == grabs) {
            drafts.accept(draft);
          }
        });
  }

  @Override
  public void close() {
    letGo();
    thread.shutdownNow();
  }
}
