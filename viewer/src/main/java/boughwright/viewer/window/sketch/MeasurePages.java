// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch;

import boughwright.viewer.window.look.Pages.Page;
import java.util.List;

/** The pages of measuring; the table takes all the height there is. */
final class MeasurePages {
  static final Page TREE = new Page("tree", "Tree", 'T', false);
  static final Page SEGMENTS = new Page("segments", "Segments", 'g', false);
  static final Page TABLE = new Page("table", "Table", 'b', true);
  static final Page WOUNDS = new Page("wounds", "Wounds", 'u', false);
  static final Page FOLIAGE = new Page("foliage", "Foliage", 'o', false);
  static final Page PHOTOS = new Page("photos", "Photos", 'h', false);
  static final List<Page> ALL = List.of(TREE, SEGMENTS, TABLE, WOUNDS, FOLIAGE, PHOTOS);

  private MeasurePages() {}
}
