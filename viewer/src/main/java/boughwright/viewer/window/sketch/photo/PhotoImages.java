// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.photo;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Backdrop;
import boughwright.viewer.picture.Photo;
import boughwright.viewer.window.work.Background;
import boughwright.viewer.window.work.Notice;
import boughwright.viewer.window.work.Workspace;
import java.awt.EventQueue;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The pictures of the photos, read once each and off the event thread. */
public final class PhotoImages {
  /** Sharp enough on a large screen, and small enough to be painted at every frame [pixels]. */
  private static final int MOST = 2400;

  private final Workspace workspace;
  private final Background background;
  private final Runnable changed;
  private final Map<String, Optional<Image>> known = new HashMap<>();
  private final Set<String> wanted = new HashSet<>();

  /**
   * A photo turned upright.
   *
   * @param picture its picture, which may be smaller than the photo
   * @param width width of the photo [pixels]
   * @param height height of the photo [pixels]
   */
  public record Image(BufferedImage picture, int width, int height) {}

  /**
   * @param changed told when a photo has been read
   */
  public PhotoImages(Workspace workspace, Background background, Runnable changed) {
    this.workspace = workspace;
    this.background = background;
    this.changed = changed;
  }

  /** A photo of the document as far as it was read; empty before that, or if it cannot be. */
  public Optional<Image> get(String name) {
    return known.getOrDefault(name, Optional.empty());
  }

  /** Whether a photo was sought and is not there or is no photo. */
  public boolean isMissing(String name) {
    return known.containsKey(name) && known.get(name).isEmpty();
  }

  /** Reads the photos of the document that were not read yet. */
  public void fetch() {
    List<String> missing = new ArrayList<>();
    for (Backdrop backdrop : workspace.document().backdrops()) {
      String name = backdrop.photo();
      if (!known.containsKey(name) && wanted.add(name)) {
        Optional<byte[]> bytes = workspace.photos().bytes(name, workspace.file());
        bytes.ifPresentOrElse(there -> decodeLater(name, there), () -> missing.add(name));
      }
    }
    if (!missing.isEmpty()) {
      boolean one = missing.size() == 1;
      lose(
          missing,
          String.join(", ", missing)
              + (one ? " is" : " are")
              + " missing beside the tree file. Put "
              + (one ? "it back there, or take it out" : "them back there, or take them out"));
    }
  }

  private void decodeLater(String name, byte[] bytes) {
    background.start(
        "Reading " + name,
        progress -> {
          try {
            return Optional.of(decode(bytes, name));
          } catch (InputException e) {
            return Optional.<Image>empty();
          }
        },
        image -> {
          if (image.isEmpty()) {
            lose(
                List.of(name),
                name + " cannot be shown: it is no whole JPEG or PNG picture any more");
          } else {
            keep(name, image.get());
          }
        });
  }

  private void lose(List<String> names, String words) {
    for (String name : names) {
      wanted.remove(name);
      known.put(name, Optional.empty());
    }
    // Said after what is said of the opening of a file, which would hide it.
    EventQueue.invokeLater(() -> workspace.say(new Notice(Notice.Kind.CAUTION, words)));
    changed.run();
  }

  /** Keeps a photo that was read already. */
  void keep(String name, Image image) {
    wanted.remove(name);
    known.put(name, Optional.of(image));
    changed.run();
  }

  /** Forgets what was missing, so that it is sought again, as after another file was opened. */
  public void seekAgain() {
    known.values().removeIf(Optional::isEmpty);
    fetch();
  }

  /**
   * Reads a photo.
   *
   * @throws InputException if it is none
   */
  static Image decode(byte[] bytes, String name) throws InputException {
    Photo photo = Photo.read(name, bytes);
    BufferedImage whole = photo.image();
    double scale = Math.min(1, (double) MOST / Math.max(whole.getWidth(), whole.getHeight()));
    if (scale == 1) {
      return new Image(whole, photo.width(), photo.height());
    }
    int smallWidth = Math.max(1, (int) Math.round(whole.getWidth() * scale));
    int smallHeight = Math.max(1, (int) Math.round(whole.getHeight() * scale));
    BufferedImage small = new BufferedImage(smallWidth, smallHeight, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = small.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(whole, 0, 0, smallWidth, smallHeight, null);
    pen.dispose();
    return new Image(small, photo.width(), photo.height());
  }
}
