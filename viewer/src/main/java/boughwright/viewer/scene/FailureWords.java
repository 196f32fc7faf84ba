// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.modeller.problem.VisibleText;
import boughwright.physics.trial.FailureMode;
import boughwright.physics.trial.FailurePlace;

/** Ways to fail and their places, in words a person can mark on bark. */
public final class FailureWords {
  private FailureWords() {}

  /** One word. */
  public static String name(FailureMode mode) {
    return switch (mode) {
      case KINK -> "kink";
      case CRACK -> "crack";
      case SPLIT -> "split";
      case SHEAR -> "shear";
      case TEAR -> "tear";
    };
  }

  /** What happens, in a few words. */
  public static String what(FailureMode mode) {
    return switch (mode) {
      case KINK -> "kink on the inside";
      case CRACK -> "crack on the outside";
      case SPLIT -> "split along the middle";
      case SHEAR -> "shear along the grain";
      case TEAR -> "tear at the union";
    };
  }

  /** Segment, side and distance, such as "b1: top, 14 mm from the union". */
  public static String marked(FailurePlace place) {
    return onSegment(place) + ", " + distance(place);
  }

  /** The segment and its side. */
  static String onSegment(FailurePlace place) {
    return VisibleText.of(place.segment()) + ": " + side(place.side());
  }

  /** How far from the union, or how far along a segment of the trunk. */
  static String distance(FailurePlace place) {
    return place.fromUnion().isPresent()
        ? Wording.millimetres(place.fromUnion().getAsDouble()) + " from the union"
        : Math.round(place.along() * 100) + " % along it";
  }

  private static String side(String side) {
    return side.equals("left") || side.equals("right") ? side + " side" : side;
  }
}
