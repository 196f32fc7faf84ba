// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.edit.BackdropEdits;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Controls;
import boughwright.viewer.window.look.Explanation;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.Prose;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.look.Shade;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.sketch.draw.Tools;
import boughwright.viewer.window.sketch.entry.Shown;
import boughwright.viewer.window.sketch.form.PickList;
import boughwright.viewer.window.work.Topic;
import boughwright.viewer.window.work.Workspace;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;

/** The photos behind the tree: added, scaled, placed, faded, taken out. */
public final class PhotoForm {
  private static final double LEAST = 1e-3;
  private static final double MOST = 20;
  private static final double MOST_PIXELS = 100_000;
  private static final double TURN = 2 * Math.PI;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Shape shape;
  private final PhotoImages images;
  private final PhotoFiles files;
  private final PickList<Backdrop> list;
  private final Prose none =
      new Prose(
          "No photo yet. Stand level with the tree, as far away as you can, put a ruler beside the"
              + " trunk, and take it from the front and from the side.",
          Shade.QUIET);
  private final Prose state = new Prose("", Shade.QUIET);
  private final JButton go = Controls.button("Look from where it was taken");
  private final QuantityField azimuth;
  private final JToggleButton mark = Controls.toggle("Mark a known length on it");
  private final QuantityField known;
  private final QuantityField height;
  private final JToggleButton place = Controls.toggle("Click where the trunk base is");
  private final QuantityField baseX;
  private final QuantityField baseY;
  private final Strength strength = new Strength(this::fade);
  private final JPanel fields = Controls.section("The picked photo");
  private final JPanel section;
  private final ScaleTool scaling;

  public PhotoForm(Workspace workspace, Canvas canvas, Shape shape, PhotoFiles files) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.shape = shape;
    this.files = files;
    images = files.images();
    list = new PickList<>("photo.list", "Photos", Backdrop::photo, this::words, this::showPicked);
    azimuth = quantity("photo.azimuth", "Taken from azimuth", Measure.ANGLE, -TURN, TURN);
    known = quantity("photo.known", "The marked length is", Measure.LENGTH, LEAST, MOST);
    height = quantity("photo.height", "or: the whole photo is high", Measure.LENGTH, LEAST, MOST);
    baseX = pixels("photo.base-x", "Trunk base from the left");
    baseY = pixels("photo.base-y", "from the upper edge");
    scaling = new ScaleTool(canvas, this::where, this::marked);
    section = lay();
    listen();
    refresh();
  }

  private QuantityField quantity(
      String name, String label, Measure measure, double least, double most) {
    return new QuantityField(
        new QuantityField.Asked(name, label, measure, least, most), workspace.units());
  }

  private QuantityField pixels(String name, String label) {
    return quantity(name, label, Measure.number("px"), -MOST_PIXELS, MOST_PIXELS);
  }

  private JPanel lay() {
    JButton add = Controls.button("Add a photo\u2026");
    Controls.named(add, "photo.add", "Add a photo");
    add.addActionListener(event -> files.choose(section()));
    JButton remove = Controls.button("Take this photo out");
    Controls.named(remove, "photo.remove", "Take this photo out; its file stays");
    remove.addActionListener(event -> remove());
    Controls.named(go, "photo.go", "Look from where the photo was taken");
    Controls.named(mark, "photo.mark", "Mark a known length on the photo");
    Controls.named(place, "photo.place", "Click where the trunk base is");
    state.setName("photo.state");
    azimuth.explainAs(
        new Explanation(
            "Where you stood: 0 is the viewer's side, 90 the viewer's left, 180 behind the tree.",
            "A few degrees off shifts far branches by a few per cent of their depth.",
            "What you say."));
    for (JComponent part :
        List.of(
            state,
            go,
            azimuth,
            mark,
            Controls.row(known, height),
            place,
            Controls.row(baseX, baseY),
            strength,
            remove)) {
      fields.add(part, "wmin 0, growx");
    }
    return Controls.section("Photos to trace over", none, list, add, fields);
  }

  private JComponent section() {
    return section;
  }

  private void listen() {
    go.addActionListener(event -> look());
    azimuth.onCommit(value -> change(one -> with(one, turned(value), one.metresPerPixel())));
    known.onCommit(this::scaleByMarks);
    height.onCommit(this::scaleByHeight);
    baseX.onCommit(value -> change(one -> based(one, value, one.baseY())));
    baseY.onCommit(value -> change(one -> based(one, one.baseX(), value)));
    workspace.listen(this::heard);
  }

  /** Ties the two tools to their buttons. */
  public void join(Tools tools) {
    tools.join(mark, scaling);
    tools.join(
        place,
        new BaseTool(
            this::where,
            at -> {
              change(one -> based(one, Math.round(at.getX()), Math.round(at.getY())));
              tools.none();
            }));
    mark.addActionListener(event -> stand());
    place.addActionListener(event -> stand());
  }

  /** Looks from where the photo was taken, or it could not be clicked on. */
  private void stand() {
    if (where().isEmpty()) {
      look();
    }
  }

  /** Looks at tree and photo from where the picked photo was taken. */
  private void look() {
    picked().ifPresent(files::look);
  }

  private static double turned(double azimuth) {
    return azimuth - TURN * Math.floor(azimuth / TURN);
  }

  public JComponent component() {
    return section;
  }

  private void heard(Topic topic) {
    if (topic == Topic.UNITS) {
      known.use(workspace.units());
      height.use(workspace.units());
    }
    if (topic == Topic.DOCUMENT || topic == Topic.UNITS) {
      refresh();
    }
  }

  /** Shows the photos and their state as they are now. */
  public void refresh() {
    List<Backdrop> all = workspace.document().backdrops();
    none.setVisible(all.isEmpty());
    list.offer(all);
  }

  /** Says again whether the picked photo is shown, as after the view was turned. */
  public void tellState() {
    picked()
        .ifPresent(
            one -> {
              Optional<String> reason =
                  images.isMissing(one.photo())
                      ? Optional.of("The file " + one.photo() + " is missing or is no photo.")
                      : Stance.of(canvas).reasonAgainst(one);
              String shown =
                  one.metresPerPixel().isPresent()
                      ? "Shown behind this view, to scale."
                      : "Shown behind this view, not to scale yet.";
              state.say(reason.orElse(shown), reason.isPresent() ? Shade.CAUTION : Shade.QUIET);
              go.setVisible(reason.isPresent() && !images.isMissing(one.photo()));
            });
  }

  private String words(Backdrop one) {
    return one.photo()
        + ", from "
        + Shown.azimuth(one.seenFrom())
        + "\u00B0"
        + (one.metresPerPixel().isPresent() ? "" : ", not scaled");
  }

  private Optional<Backdrop> picked() {
    return list.picked();
  }

  private void showPicked(Optional<Backdrop> picked) {
    fields.setVisible(picked.isPresent());
    if (picked.isEmpty()) {
      return;
    }
    Backdrop one = picked.get();
    azimuth.setValue(one.seenFrom());
    baseX.setValue(one.baseX());
    baseY.setValue(one.baseY());
    strength.show(one.shown());
    Optional<PhotoImages.Image> image = images.get(one.photo());
    if (image.isPresent() && one.metresPerPixel().isPresent()) {
      height.setValue(one.metresPerPixel().getAsDouble() * image.get().height());
    } else {
      height.clear();
    }
    showMarked();
    tellState();
  }

  private void showMarked() {
    OptionalDouble pixels = scaling.length();
    known.setEnabled(pixels.isPresent());
    OptionalDouble scale = picked().map(Backdrop::metresPerPixel).orElse(OptionalDouble.empty());
    if (pixels.isPresent() && scale.isPresent()) {
      known.setValue(pixels.getAsDouble() * scale.getAsDouble());
    } else {
      known.clear();
    }
  }

  private void marked(double pixels) {
    showMarked();
    known.field().requestFocusInWindow();
    known.field().selectAll();
  }

  private Optional<PhotoPlace> where() {
    return picked()
        .filter(one -> Stance.of(canvas).reasonAgainst(one).isEmpty())
        .flatMap(
            one ->
                images
                    .get(one.photo())
                    .map(
                        image ->
                            PhotoPlace.of(
                                canvas, one, shape.skeleton().start(base()), image.height())));
  }

  private int base() {
    return shape.skeleton().outward(0);
  }

  private void scaleByMarks(double metres) {
    OptionalDouble pixels = scaling.length();
    if (pixels.isPresent() && pixels.getAsDouble() > 0) {
      scale(metres / pixels.getAsDouble());
    }
  }

  private void scaleByHeight(double metres) {
    picked()
        .flatMap(one -> images.get(one.photo()))
        .ifPresent(image -> scale(metres / image.height()));
  }

  /** Takes a scale, and brings the photo, which has another size now, back into view. */
  private void scale(double metresPerPixel) {
    change(one -> with(one, one.seenFrom(), OptionalDouble.of(metresPerPixel)));
    look();
  }

  private void fade(double shown) {
    change(
        one ->
            new Backdrop(
                one.photo(),
                one.seenFrom(),
                one.metresPerPixel(),
                one.baseX(),
                one.baseY(),
                shown,
                one.extras()));
  }

  private static Backdrop with(Backdrop one, double seenFrom, OptionalDouble scale) {
    return new Backdrop(
        one.photo(), seenFrom, scale, one.baseX(), one.baseY(), one.shown(), one.extras());
  }

  private static Backdrop based(Backdrop one, double x, double y) {
    return new Backdrop(
        one.photo(), one.seenFrom(), one.metresPerPixel(), x, y, one.shown(), one.extras());
  }

  private void change(java.util.function.UnaryOperator<Backdrop> how) {
    int at = list.pickedAt();
    picked().ifPresent(one -> workspace.edit(BackdropEdits.change(at, how.apply(one))));
    canvas.redraw();
  }

  private void remove() {
    int at = list.pickedAt();
    if (at >= 0) {
      workspace.edit(BackdropEdits.delete(at));
      canvas.redraw();
    }
  }
}
