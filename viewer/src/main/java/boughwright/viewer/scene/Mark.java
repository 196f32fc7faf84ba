// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Vector3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Coil;
import boughwright.physics.trial.FailureMode;
import java.util.List;
import java.util.Optional;

/** Something that is pointed out in a picture: a place and the words for it. */
public sealed interface Mark {

  /** The place the words belong to [m, scene frame]. */
  Point3 at();

  /** The words, the most important line first. */
  List<String> words();

  /**
   * A guy-line.
   *
   * @param pad where it holds the tree [m, scene frame]
   * @param anchor where it is tied [m, scene frame]
   * @param words id and tension
   */
  record Guy(Point3 pad, Point3 anchor, List<String> words) implements Mark {
    public Guy {
      words = List.copyOf(words);
    }

    @Override
    public Point3 at() {
      return pad.toward(anchor, 0.5);
    }
  }

  /**
   * A hung weight.
   *
   * @param at the middle of the weight [m, scene frame]
   * @param radius half its width [m]
   * @param words mass
   */
  record Weight(Point3 at, double radius, List<String> words) implements Mark {
    public Weight {
      words = List.copyOf(words);
    }
  }

  /**
   * The proposed apex and where it stands over the root base.
   *
   * @param at the tip of the apex [m, scene frame]
   * @param foot the soil straight below it [m, scene frame]
   * @param base the middle of the root base [m, scene frame]
   * @param right how far the apex lies to the right of the root base, seen from the front [m]
   * @param behind how far it lies behind the root base, seen from the front [m]
   * @param words id and offset
   */
  record Apex(Point3 at, Point3 foot, Point3 base, double right, double behind, List<String> words)
      implements Mark {
    public Apex {
      words = List.copyOf(words);
    }
  }

  /**
   * The place bent hardest.
   *
   * @param at the bark on the most stretched side [m, scene frame]
   * @param outward the way the bark faces there, length one or zero
   * @param words strain and place
   */
  record Hardest(Point3 at, Vector3 outward, List<String> words) implements Mark {
    public Hardest {
      words = List.copyOf(words);
    }
  }

  /**
   * A place where the wood would fail.
   *
   * @param at the bark there [m, scene frame]
   * @param outward the way the bark faces, length one
   * @param mode how it would fail
   * @param words how likely, then where to mark it
   */
  record Failure(Point3 at, Vector3 outward, FailureMode mode, List<String> words) implements Mark {
    public Failure {
      words = List.copyOf(words);
    }
  }

  /**
   * A place where the tree is cut.
   *
   * @param at the axis there [m, scene frame]
   * @param words what is cut
   */
  record CutPlace(Point3 at, List<String> words) implements Mark {
    public CutPlace {
      words = List.copyOf(words);
    }
  }

  /**
   * A coiled wire.
   *
   * @param coil the wire
   * @param places places along its middle, in order, at least one [m, scene frame]
   * @param words metal and gauge, then how it is wound
   */
  record Wire(Coil coil, List<Point3> places, List<String> words) implements Mark {
    public Wire {
      places = List.copyOf(places);
      words = List.copyOf(words);
    }

    @Override
    public Point3 at() {
      return places.get(places.size() / 2);
    }
  }

  /**
   * Something done to the wood to make it bend.
   *
   * @param kind what is done
   * @param at its middle, on the bark where it has a side [m, scene frame]
   * @param words what it is, with its size
   */
  record AidPlace(Aid.Kind kind, Point3 at, List<String> words) implements Mark {
    public AidPlace {
      words = List.copyOf(words);
    }
  }

  /**
   * A pull by hand.
   *
   * @param at where the hand takes hold, as measured [m, scene frame]
   * @param to where it brings that place, seen along its pull [m, scene frame]
   * @param words that it is by hand, and how far
   */
  record Hand(Point3 at, Point3 to, List<String> words) implements Mark {
    public Hand {
      words = List.copyOf(words);
    }
  }

  /**
   * The end that moves most, in a pose on the way.
   *
   * @param at where it is [m, scene frame]
   * @param words the day
   */
  record StageEnd(Point3 at, List<String> words) implements Mark {
    public StageEnd {
      words = List.copyOf(words);
    }
  }

  /**
   * Something a person asked to see beside a place, such as a caliper.
   *
   * @param at the place on the axis [m, scene frame]
   * @param radius half the thickness there [m]
   * @param words what is said there
   * @param picked whether it is said of what a person has picked
   */
  record Note(Point3 at, double radius, List<String> words, boolean picked) implements Mark {
    public Note {
      words = List.copyOf(words);
    }
  }

  /**
   * A fault of structure.
   *
   * @param at the place on the axis [m, scene frame]
   * @param number its number in the list beside the picture
   * @param words what it is, then where and by what measure
   */
  record Flaw(Point3 at, int number, List<String> words) implements Mark {
    public Flaw {
      words = List.copyOf(words);
    }
  }

  /** The flaws among some marks, in order. */
  static List<Flaw> flaws(List<Mark> marks) {
    return marks.stream().filter(Flaw.class::isInstance).map(Flaw.class::cast).toList();
  }

  /** The apex among some marks. */
  static Optional<Apex> apex(List<Mark> marks) {
    return marks.stream().filter(Apex.class::isInstance).map(Apex.class::cast).findFirst();
  }
}
