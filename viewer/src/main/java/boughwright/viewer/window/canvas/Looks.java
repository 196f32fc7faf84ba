// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.viewer.picture.SceneWords;
import boughwright.viewer.scene.Visibility;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a person has chosen to see of the tree.
 *
 * @param extras what is drawn beside the wood, and how
 * @param visibility which segments are left out or hinted at
 */
public record Looks(Set<Extra> extras, Visibility visibility) {
  /** What most people want to see most of the time. */
  public static final Looks USUAL =
      new Looks(
          EnumSet.of(Extra.GHOSTS, Extra.STRAIN, Extra.MARKS, Extra.SOIL, Extra.SCALE),
          Visibility.ALL);

  /** Something that can be shown or not. */
  public enum Extra {
    /** Other poses beside the one that is shown. */
    GHOSTS,
    /** The colours of strain. */
    STRAIN,
    /** The pads of leaves. */
    IN_LEAF,
    /** Words at lines, coils, weights, weak places and the apex. */
    MARKS,
    /** The soil line. */
    SOIL,
    /** The plumb line through the root base. */
    PLUMB,
    /** The scale bar. */
    SCALE,
    /** Heights above the soil. */
    HEIGHTS,
    /** Calipers at the segments. */
    CALIPERS,
    /** Names of the segments. */
    NAMES,
    /** Seen as by an eye; else flat, true to scale. */
    PERSPECTIVE
  }

  public Looks {
    extras = Set.copyOf(extras);
  }

  public boolean has(Extra extra) {
    return extras.contains(extra);
  }

  /** What of this is written over a picture. */
  Set<SceneWords.Part> written() {
    EnumSet<SceneWords.Part> parts = EnumSet.noneOf(SceneWords.Part.class);
    if (has(Extra.MARKS)) {
      parts.add(SceneWords.Part.MARKS);
    }
    if (has(Extra.SCALE)) {
      parts.add(SceneWords.Part.BAR);
    }
    return parts;
  }

  /** The same with something shown or not. */
  public Looks with(Extra extra, boolean on) {
    EnumSet<Extra> changed = EnumSet.noneOf(Extra.class);
    changed.addAll(extras);
    if (on) {
      changed.add(extra);
    } else {
      changed.remove(extra);
    }
    return new Looks(changed, visibility);
  }

  public Looks with(Visibility other) {
    return new Looks(extras, other);
  }
}
