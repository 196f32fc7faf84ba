// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.InputException;
import boughwright.viewer.gl.NoGraphicsException;
import boughwright.viewer.gl.SceneRenderer;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Trees on pages beside one another, all in one scale and on one soil line. */
final class SideBySide {
  private final List<Picture.Drawn> all;
  private final List<Page> pages = new ArrayList<>();
  private final List<Composer> composers = new ArrayList<>();
  private final List<Rect> areas = new ArrayList<>();

  private SideBySide(List<Picture.Drawn> all) {
    this.all = all;
  }

  /** Draws them, each on a page of a size. */
  static BufferedImage draw(List<Picture.Drawn> all, PictureSize part)
      throws NoGraphicsException, InputException {
    SideBySide sheet = new SideBySide(all);
    try (SceneRenderer renderer = SceneRenderer.open()) {
      for (Picture.Drawn one : all) {
        Page page = new Page(part, part.unitBesideOthers());
        sheet.pages.add(page);
        sheet.composers.add(one.on(page));
      }
      sheet.drawPages(renderer);
      return sheet.together(part);
    } finally {
      sheet.pages.forEach(Page::close);
    }
  }

  private void drawPages(SceneRenderer renderer) {
    for (Composer composer : composers) {
      areas.add(composer.drawAround(Optional.empty()));
    }
    double top = areas.stream().mapToDouble(Rect::y).max().orElseThrow();
    double bottom = areas.stream().mapToDouble(Rect::bottom).min().orElseThrow();
    List<Arrangement> arrangements = new ArrayList<>();
    for (int n = 0; n < all.size(); n++) {
      Rect own = areas.get(n);
      Rect alike = new Rect(own.x(), top, own.width(), bottom - top);
      arrangements.add(new Arrangement(pages.get(n), all.get(n).scene(), alike));
    }
    Arrangement.Fit fit =
        IntStream.range(0, all.size())
            .mapToObj(n -> arrangements.get(n).fit(Picture.front(all.get(n).scene())))
            .reduce(Arrangement.Fit::and)
            .orElseThrow();
    for (int n = 0; n < all.size(); n++) {
      ViewFrame frame = arrangements.get(n).arrange(Picture.front(all.get(n).scene()), fit);
      composers.get(n).drawViews(List.of(frame), renderer);
    }
  }

  private BufferedImage together(PictureSize part) {
    BufferedImage whole =
        new BufferedImage(part.width() * pages.size(), part.height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = whole.createGraphics();
    try {
      for (int n = 0; n < pages.size(); n++) {
        pen.drawImage(pages.get(n).image(), n * part.width(), 0, null);
      }
    } finally {
      pen.dispose();
    }
    return whole;
  }
}
