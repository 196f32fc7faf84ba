// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.edit.BackdropEdits;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Backdrop;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.picture.Photo;
import boughwright.viewer.window.canvas.Canvas;
import boughwright.viewer.window.look.Focus;
import boughwright.viewer.window.sketch.draw.Shape;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Workspace;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Takes photo files into the document. */
public final class PhotoFiles {
  private static final double USUAL_STRENGTH = 0.6;

  private final Shape shape;
  private final Workspace workspace;
  private final Canvas canvas;
  private final Background background;
  private final PhotoImages images;

  /** A photo that was read. */
  private record Read(byte[] bytes, PhotoImages.Image image) {}

  public PhotoFiles(Shape shape, Canvas canvas, Background background, PhotoImages images) {
    this.shape = shape;
    workspace = shape.workspace();
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
    AtomicInteger answer = new AtomicInteger(JFileChooser.CANCEL_OPTION);
    Focus.lend(over, () -> answer.set(chooser.showOpenDialog(over)));
    if (answer.get() == JFileChooser.APPROVE_OPTION) {
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
    byte[] bytes = Photo.bytes(file);
    return new Read(bytes, PhotoImages.decode(bytes, file.getFileName().toString()));
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
      look(backdrop);
    }
  }

  /** Looks at the whole tree and a photo from where that was taken. */
  void look(Backdrop backdrop) {
    Skeleton skeleton = shape.skeleton();
    Point3 base = skeleton.start(skeleton.outward(0));
    canvas.lookFlatFrom(
        backdrop.seenFrom(),
        images
            .get(backdrop.photo())
            .map(image -> PhotoPlace.corners(backdrop, base, image.width(), image.height()))
            .orElse(List.of()));
    canvas.redraw();
  }
}
