// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.edit.BackdropEdits;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.OptionalDouble;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Takes photo files into the document. */
public final class PhotoFiles {
  private static final int MOST_BYTES = 100_000_000;
  private static final double USUAL_STRENGTH = 0.6;

  private final Workspace workspace;
  private final Canvas canvas;
  private final Background background;
  private final PhotoImages images;

  /** A photo that was read. */
  private record Read(byte[] bytes, PhotoImages.Image image) {}

  public PhotoFiles(Workspace workspace, Canvas canvas, Background background, PhotoImages images) {
    this.workspace = workspace;
    this.canvas = canvas;
    this.background = background;
    this.images = images;
  }

  PhotoImages images() {
    return images;
  }

  /** Asks for a photo and adds it. */
  public void choose(Component over) {
    JFileChooser chooser =
        new JFileChooser(
            workspace
                .file()
                .map(Path::toAbsolutePath)
                .map(Path::getParent)
                .map(Path::toFile)
                .orElse(null));
    chooser.setName("photo.chooser");
    chooser.setDialogTitle("Add a photo");
    chooser.setFileFilter(new FileNameExtensionFilter("Photos (JPEG, PNG)", "jpg", "jpeg", "png"));
    if (chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION) {
      File file = chooser.getSelectedFile();
      add(file.toPath());
    }
  }

  /** Adds a photo that stands behind the view the tree is looked at from. */
  public void add(Path file) {
    double azimuth = Math.toRadians(Math.round(Math.toDegrees(canvas.azimuth())));
    double seenFrom = azimuth - 2 * Math.PI * Math.floor(azimuth / (2 * Math.PI));
    String name = file.getFileName().toString();
    background.start(
        "Reading " + name,
        progress -> {
          try {
            return new Outcome(read(file), "");
          } catch (InputException e) {
            return new Outcome(null, e.problems().get(0).line());
          }
        },
        outcome -> {
          if (outcome.read() == null) {
            workspace.say(new Notice(Notice.Kind.FAULT, outcome.refusal()));
          } else {
            add(name, outcome.read(), seenFrom);
          }
        });
  }

  private record Outcome(Read read, String refusal) {}

  private static Read read(Path file) throws InputException {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(MOST_BYTES + 1);
    } catch (IOException e) {
      throw refusal(file, "the file cannot be read", "Check that it is there and may be read");
    }
    if (bytes.length > MOST_BYTES) {
      throw refusal(file, "it is larger than 100 million bytes", "Save it smaller and try again");
    }
    return new Read(bytes, PhotoImages.decode(bytes, file.getFileName().toString()));
  }

  private static InputException refusal(Path file, String found, String remedy) {
    return new InputException(
        Problem.fault(Place.of(file.getFileName().toString()), "unreadable-photo", found, remedy));
  }

  /** The trunk base is sought at the middle near the lower edge until the person clicks on it. */
  private void add(String fileName, Read read, double seenFrom) {
    String name = workspace.photos().take(fileName, read.bytes(), workspace.file());
    images.keep(name, read.image());
    double low = 0.9;
    Backdrop backdrop =
        new Backdrop(
            name,
            seenFrom,
            OptionalDouble.empty(),
            Math.round(read.image().width() / 2.0),
            Math.round(read.image().height() * low),
            USUAL_STRENGTH,
            Map.of());
    if (workspace.edit(BackdropEdits.add(backdrop))) {
      canvas.lookFlatFrom(seenFrom);
      canvas.redraw();
    }
  }
}
