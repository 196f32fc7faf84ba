// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.canvas;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.scene.Camera;
import boughwright.viewer.scene.StagesView;
import boughwright.viewer.scene.Visibility;
import boughwright.viewer.window.work.Workspace;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What is painted beside the wood: soil, picked and hovered segments, messages. */
final class Overlay {
  private static final double SOIL_REACH = 1.2;

  private final Workspace work;
  private final Showing showing;
  private Optional<String> hovered = Optional.empty();
  private Camera.Pixel mouse = new Camera.Pixel(0, 0);

  Overlay(Workspace work, Showing showing) {
    this.work = work;
    this.showing = showing;
  }

  void forgetHovered() {
    hovered = Optional.empty();
  }

  /** Takes what is under the mouse, and says whether that changes anything. */
  boolean hover(Optional<Hit> hit, Pointer pointer) {
    Optional<String> next = hit.map(h -> h.spot().segment());
    boolean changed = !Objects.equals(next, hovered) || next.isPresent();
    hovered = next;
    mouse = new Camera.Pixel(pointer.x(), pointer.y());
    return changed;
  }

  /** Every limb of the poses that a picture has to hold. */
  List<StagesView.Outline> everything() {
    return showing.all().stream().distinct().flatMap(wood -> wood.frame().stream()).toList();
  }

  /** The picked segments that are there. */
  List<StagesView.Outline> picked() {
    Skeleton skeleton = showing.tree().skeleton();
    return work.selection().segments().stream()
        .filter(skeleton::has)
        .filter(id -> showing.looks().visibility().of(id) != Visibility.Way.HIDDEN)
        .map(skeleton::indexOf)
        .filter(i -> !showing.tree().kept().isGone(i))
        .map(showing.capsules()::outline)
        .toList();
  }

  /** What is picked, in words. */
  String pickedWords() {
    List<String> picked = work.selection().segments();
    return switch (picked.size()) {
      case 0 -> "Nothing is picked. Click a branch; Ctrl and click adds another.";
      case 1 ->
          label(
              showing.tree().skeleton().segment(showing.tree().skeleton().indexOf(picked.get(0))));
      default -> picked.size() + " segments: " + String.join(", ", picked);
    };
  }

  /** Whether front and planting angle are being chosen, by plumb line and soil line. */
  private boolean isChosen() {
    return showing.stance().isPresent();
  }

  void paintBehind(Graphics2D pen, Camera camera) {
    Point3 base = showing.tree().base();
    if (showing.looks().has(Looks.Extra.SOIL) || isChosen()) {
      double reach = SOIL_REACH * showing.capsules().bounds().diagonal();
      SoilPen.soil(pen, camera, base, reach);
    }
  }

  void paintOver(Graphics2D pen, Camera camera) {
    if (showing.looks().has(Looks.Extra.PLUMB) || isChosen()) {
      double top = 1.05 * showing.capsules().bounds().high().z();
      SoilPen.plumb(pen, camera, showing.tree().base(), top);
    }
    showing.stays().forEach(limb -> StaysPen.outline(pen, camera, limb));
    PickPen picks = new PickPen(pen, camera);
    picked().forEach(segment -> picks.outline(segment, false));
  }

  void paintHovered(Graphics2D pen, Camera camera, Rectangle2D room) {
    Skeleton skeleton = showing.tree().skeleton();
    if (hovered.filter(skeleton::has).isEmpty()) {
      return;
    }
    PickPen picks = new PickPen(pen, camera);
    int i = skeleton.indexOf(hovered.get());
    if (!work.selection().has(hovered.get())) {
      picks.outline(showing.capsules().outline(i), true);
    }
    Camera.Pixel beside = new Camera.Pixel(mouse.x() + 18, mouse.y() + 18);
    picks.plate(label(skeleton.segment(i)), beside, room);
  }

  /** What is written beside the mouse; blank for nothing. */
  String hoveredWords() {
    Skeleton skeleton = showing.tree().skeleton();
    return hovered
        .filter(skeleton::has)
        .map(id -> label(skeleton.segment(skeleton.indexOf(id))))
        .orElse("");
  }

  private String label(Segment segment) {
    return Notes.label(segment, work.units());
  }

  /** What is shown and picked, in words. */
  String words() {
    StringBuilder words = new StringBuilder();
    words.append(Notes.name(work.document().tree().name())).append(", ");
    words.append(showing.preview().map(Preview::words).orElseGet(() -> showing.stop().name()));
    words.append(showing.isBetween() ? ", between poses" : "").append(". ");
    List<String> picked = work.selection().segments();
    words.append(
        picked.isEmpty() ? "Nothing is picked." : "Picked: " + String.join(", ", picked) + ".");
    return words.toString();
  }
}
