// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Material;
import boughwright.viewer.scene.Body;
import boughwright.viewer.scene.Mark;
import boughwright.viewer.scene.Palette;
import boughwright.viewer.scene.Scene;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.Wording;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Says what solid, translucent, hatched and outlined wood means, and the metals of coils. */
final class Key {
  /** From row to row, on the page of the default size [pixels]. */
  static final double ROW = 30;

  private static final double AFTER_SWATCH = 10;
  private static final double AFTER_WORDS = 28;

  private final Page page;
  private final List<Entry> entries = new ArrayList<>();

  /** A swatch and its words. */
  private record Entry(Swatch swatch, String words) {}

  /**
   * Room for the key.
   *
   * @param left where its rows start [pixels]
   * @param right where they end at the latest [pixels]
   */
  record Room(double left, double right) {}

  Key(Page page, Scene scene) {
    this.page = page;
    boolean bent = scene.scale().isPresent();
    String solid = bent ? "bent" : "as measured";
    add(Swatch.solid(), scene.stages().map(StagesView::reached).orElse(solid));
    if (scene.has(Body.Role.GHOST)) {
      add(Swatch.ghost(), "as measured");
    }
    scene.stages().ifPresent(this::addStages);
    if (scene.has(Body.Role.REMOVED)) {
      add(Swatch.removed(), "cut away");
    }
    if (scene.has(Body.Role.FOLIAGE)) {
      add(Swatch.foliage(), "in leaf");
    }
    if (scene.has(Body.Role.GUESSED_FOLIAGE)) {
      add(Swatch.foliage(), "in leaf, a guess");
    }
    if (scene.has(Body.Role.CONTAINER)) {
      add(Swatch.container(), "container now");
    }
    addMetals(scene);
    addAids(scene);
  }

  private void addAids(Scene scene) {
    Set<Aid.Kind> kinds = EnumSet.noneOf(Aid.Kind.class);
    for (Mark mark : scene.marks()) {
      if (mark instanceof Mark.AidPlace aid) {
        kinds.add(aid.kind());
      }
    }
    for (Aid.Kind kind : kinds) {
      switch (kind) {
        case WRAP -> add(Swatch.coil(Ink.of(Palette.RAFFIA)), "raffia");
        case SLOT -> add(Swatch.slot(), "slot");
        case RELIEF_CUT -> add(Swatch.cuts(), "relief cuts");
        case HOLLOW -> add(Swatch.solid(), "hollow inside, not drawn");
      }
    }
  }

  private void add(Swatch swatch, String words) {
    entries.add(new Entry(swatch, words));
  }

  /** Days in one entry, other poses each in its own. */
  private void addStages(StagesView stages) {
    List<StagesView.Ghost> days =
        stages.ghosts().stream().filter(ghost -> ghost.words().startsWith("day ")).toList();
    if (!days.isEmpty()) {
      add(
          Swatch.stages(days.stream().map(ghost -> Ink.of(ghost.tone())).toList()),
          "day "
              + days.stream()
                  .map(ghost -> ghost.words().substring("day ".length()))
                  .collect(Collectors.joining(", ")));
    }
    for (StagesView.Ghost ghost : stages.ghosts()) {
      if (!days.contains(ghost)) {
        add(Swatch.stages(List.of(Ink.of(ghost.tone()))), ghost.words());
      }
    }
    if (!stages.stays().isEmpty()) {
      add(Swatch.outline(), stages.staysWords());
    }
  }

  private void addMetals(Scene scene) {
    Map<Material, TreeSet<Double>> gauges = new TreeMap<>();
    for (Mark mark : scene.marks()) {
      if (mark instanceof Mark.Wire wire) {
        gauges
            .computeIfAbsent(wire.coil().metal(), metal -> new TreeSet<>())
            .add(wire.coil().gauge());
      }
    }
    gauges.forEach(
        (metal, all) -> add(Swatch.coil(Ink.of(Palette.metal(metal))), words(metal, all)));
  }

  /** Such as "copper 2.5, 4 mm". */
  private static String words(Material metal, TreeSet<Double> gauges) {
    String numbers =
        gauges.stream()
            .map(gauge -> Wording.gauge(gauge).replace(" mm", ""))
            .collect(Collectors.joining(", "));
    return String.format(Locale.ROOT, "%s %s mm", Wording.material(metal), numbers);
  }

  private double width(Entry entry) {
    return page.u(entry.swatch().width() + AFTER_SWATCH)
        + page.width(entry.words(), Page.Style.KEY);
  }

  private List<List<Entry>> rows(Room room) {
    List<List<Entry>> rows = new ArrayList<>();
    double x = Double.POSITIVE_INFINITY;
    for (Entry entry : entries) {
      if (x + width(entry) > room.right()) {
        rows.add(new ArrayList<>());
        x = room.left();
      }
      rows.get(rows.size() - 1).add(entry);
      x += width(entry) + page.u(AFTER_WORDS);
    }
    return rows;
  }

  /** How many rows it takes. */
  int rowCount(Room room) {
    return rows(room).size();
  }

  /** Draws it; y is the middle of the first row's swatches [pixels]. */
  void draw(Room room, double y) {
    double at = y;
    for (List<Entry> row : rows(room)) {
      double x = room.left();
      for (Entry entry : row) {
        entry.swatch().draw(page, x, at);
        page.write(
            fitted(entry.words(), room.right() - x - page.u(entry.swatch().width() + AFTER_SWATCH)),
            x + page.u(entry.swatch().width() + AFTER_SWATCH),
            at + page.u(6),
            Page.Style.KEY);
        x += width(entry) + page.u(AFTER_WORDS);
      }
      at += page.u(ROW);
    }
  }

  private String fitted(String words, double width) {
    double size = page.u(Page.Style.KEY.size());
    return Lettering.fitted(words, Page.Style.KEY.weight(), size, width);
  }
}
