// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Backdrop;
import java.util.ArrayList;
import java.util.List;

/** Changes of the photos to trace over; they are known by their place in the list, from 0. */
public final class BackdropEdits {
  private static final Placed PHOTOS = new Placed("photo");

  private BackdropEdits() {}

  private interface Change {
    void on(List<Backdrop> backdrops) throws InputException;
  }

  private static Edit edit(String name, Change change) {
    return new Edit(
        name,
        document -> {
          List<Backdrop> all = new ArrayList<>(document.backdrops());
          change.on(all);
          return document.withBackdrops(all);
        });
  }

  /** A negative zero is written as 0, and would not be the same when it is read again. */
  private static Backdrop plain(Backdrop from) {
    return new Backdrop(
        from.photo(),
        from.seenFrom() + 0.0,
        from.metresPerPixel(),
        from.baseX() + 0.0,
        from.baseY() + 0.0,
        from.shown() + 0.0,
        from.extras());
  }

  /** Adds a photo. */
  public static Edit add(Backdrop backdrop) {
    return edit("Add photo " + backdrop.photo(), all -> all.add(plain(backdrop)));
  }

  /** Puts another photo, scale, place or strength in the place of one. */
  public static Edit change(int at, Backdrop backdrop) {
    return edit(
        "Change photo " + backdrop.photo(), all -> PHOTOS.replace(all, at, plain(backdrop)));
  }

  /** Takes a photo out; its file stays. */
  public static Edit delete(int at) {
    return edit("Delete photo " + (at + 1), all -> PHOTOS.remove(all, at));
  }
}
