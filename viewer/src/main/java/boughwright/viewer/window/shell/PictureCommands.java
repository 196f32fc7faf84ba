// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.shell;

import boughwright.viewer.window.canvas.Snapshots;
import boughwright.viewer.window.look.Command;
import boughwright.viewer.window.look.Keys;
import boughwright.viewer.window.look.Measure;
import boughwright.viewer.window.look.QuantityField;
import boughwright.viewer.window.shell.WindowCommands.Face;
import boughwright.viewer.window.sketch.form.ShortForm;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** Asks what picture is wanted, how large and where, and has it saved. */
final class PictureCommands {
  private static final int USUAL_VIEWS = 24;

  private final MainWindow window;
  private final Optional<Supplier<Snapshots>> canvas;
  private final PictureWork work;

  PictureCommands(MainWindow window) {
    this.window = window;
    canvas = window.parts().snapshots();
    work = new PictureWork(window);
  }

  List<Command> all() {
    return List.of(
        new Face(
                "picture.save",
                "Save the picture\u2026",
                'S',
                Optional.of(Keys.menuShift(KeyEvent.VK_P)),
                "Saves what is seen as a PNG file, at any size")
            .does(() -> canvas.ifPresent(seen -> save(seen.get())), canvas::isPresent),
        new Face(
                "picture.pair",
                "Save before and after\u2026",
                'B',
                Optional.empty(),
                "Saves the tree as measured and as it is shown, beside each other, as a PNG file")
            .does(() -> canvas.ifPresent(seen -> savePair(seen.get())), canvas::isPresent),
        new Face(
                "picture.turntable",
                "Save a turntable\u2026",
                'T',
                Optional.empty(),
                "Saves numbered views from all round into a folder")
            .does(() -> canvas.ifPresent(seen -> saveTurntable(seen.get())), canvas::isPresent));
  }

  private void save(Snapshots seen) {
    Fields fields = new Fields(seen.size());
    String title = "Save the picture";
    if (fields.ask(title, "As on the screen, drawn anew at this size.", List.of())) {
      to("", path -> work.save(seen, path, fields.size()));
    }
  }

  /** Both halves as large as the view is now. */
  private void savePair(Snapshots seen) {
    Snapshots.Size one = seen.size();
    Fields fields =
        new Fields(new Snapshots.Size(Math.min(Snapshots.LARGEST, 2 * one.width()), one.height()));
    String title = "Save before and after";
    String words = "Left as measured, right as it is shown now. The size is that of both together.";
    if (fields.ask(title, words, List.of())) {
      to("-before-after", path -> work.savePair(seen, path, fields.size()));
    }
  }

  private void saveTurntable(Snapshots seen) {
    Fields fields = new Fields(seen.size());
    QuantityField views =
        field("picture.views", "Views all round", new int[] {2, Snapshots.MOST_VIEWS});
    views.setValue(USUAL_VIEWS);
    String words = "Each view is turned on by the same angle. They go into a folder of their own.";
    if (!fields.ask("Save a turntable", words, List.of(views))) {
      return;
    }
    Optional<Path> folder = FilePick.folderToSave(window, near(), name() + "-turntable");
    int many = (int) Math.round(views.value().orElse(USUAL_VIEWS));
    if (folder.isPresent() && work.mayFill(folder.get())) {
      work.saveTurntable(seen, folder.get(), new PictureWork.Round(many, fields.size()));
    }
  }

  private void to(String ending, Consumer<Path> save) {
    Optional<Path> file = FilePick.pictureToSave(window, near(), name() + ending + ".png");
    if (file.isPresent() && work.mayReplace(file.get())) {
      save.accept(file.get());
    }
  }

  private Optional<Path> near() {
    return window.workspace().file();
  }

  private String name() {
    String tree = FilePick.nameFor(window.workspace().document().tree().name());
    return tree.substring(0, tree.length() - FilePick.TREE_END.length());
  }

  private QuantityField field(String name, String label, int[] limits) {
    return new QuantityField(
        new QuantityField.Asked(name, label, Measure.number(""), limits[0], limits[1]),
        window.workspace().units());
  }

  /** How large a picture is to be [pixels]. */
  private final class Fields {
    private final QuantityField width = side("picture.width", "Width in pixels");
    private final QuantityField height = side("picture.height", "Height in pixels");

    Fields(Snapshots.Size usual) {
      width.setValue(usual.width());
      height.setValue(usual.height());
    }

    private QuantityField side(String name, String label) {
      return field(name, label, new int[] {Snapshots.SMALLEST, Snapshots.LARGEST});
    }

    boolean ask(String title, String words, List<QuantityField> first) {
      List<JComponent> parts = new ArrayList<>(first);
      parts.add(width);
      parts.add(height);
      AtomicBoolean yes = new AtomicBoolean();
      new ShortForm(
              window.parts().canvas().component(),
              new ShortForm.Face(title, words, "Save\u2026"),
              parts,
              () -> {
                yes.set(true);
                return "";
              })
          .show();
      return yes.get();
    }

    Snapshots.Size size() {
      return new Snapshots.Size(pixels(width), pixels(height));
    }

    private int pixels(QuantityField side) {
      return (int) Math.round(side.value().orElseThrow());
    }
  }
}
