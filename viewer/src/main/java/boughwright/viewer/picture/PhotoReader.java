// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.problem.Place;
import boughwright.modeller.problem.Problem;
import boughwright.viewer.picture.PhotoHeader.Broken;
import boughwright.viewer.picture.PhotoHeader.Colour;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** Reads one photo: looks at its header, then decodes no more of it than is needed. */
final class PhotoReader {
  /** Pixels of the largest photo that is read, and of what is held of one. */
  static final long MOST_PIXELS = 120_000_000;

  static final long MOST_HELD = 16_000_000;

  /** Pixels of the longest side: a row must fit into memory. */
  static final int LONGEST_SIDE = 30_000;

  /** Pixels times passes over them: some tens of seconds of decoding. */
  private static final long MOST_WORK = 2_000_000_000;

  /** A photo smaller than this shows no tree. */
  private static final int SMALLEST_SIDE = 16;

  private static final String SMALLER = "Make a smaller copy of it";

  private final Place place;
  private final byte[] bytes;
  private final List<Problem> warnings = new ArrayList<>();

  PhotoReader(Place place, byte[] bytes) {
    this.place = place;
    this.bytes = bytes;
  }

  Photo photo() throws InputException {
    boolean jpeg = JpegHeader.is(bytes);
    if (!jpeg && !PngHeader.is(bytes)) {
      throw Photo.fault(
          place,
          "no-photo",
          OtherPicture.words(bytes) + "; JPEG and PNG are read",
          "Save it as JPEG, or set the camera to JPEG");
    }
    try {
      PhotoHeader header = jpeg ? JpegHeader.of(bytes) : PngHeader.of(bytes);
      requireSize(header);
      CameraNotes notes = CameraNotes.of(header.exif());
      BufferedImage image = Upright.of(decoded(header, jpeg ? "jpeg" : "png"), notes);
      warn(header, notes);
      boolean sideways = notes.isSideways();
      return new Photo(
          image,
          sideways ? header.height() : header.width(),
          sideways ? header.width() : header.height(),
          warnings);
    } catch (Broken e) {
      throw Photo.fault(place, "broken-photo", e.getMessage(), e.remedy());
    } catch (OutOfMemoryError e) {
      throw Photo.fault(place, "photo-too-large", "there is not enough memory for it", SMALLER);
    }
  }

  private void requireSize(PhotoHeader header) throws Broken {
    if (header.width() <= 0 || header.height() <= 0) {
      throw new Broken("its size is given as 0 pixels");
    }
    boolean large =
        header.pixels() > MOST_PIXELS
            || header.width() > LONGEST_SIDE
            || header.height() > LONGEST_SIDE;
    if (large) {
      throw new Broken(
          String.format(
              Locale.ROOT,
              "it has %,d x %,d pixels, at most %d million and %,d on a side are read",
              header.width(),
              header.height(),
              MOST_PIXELS / 1_000_000,
              LONGEST_SIDE),
          SMALLER);
    }
    if (header.pixels() * header.passes() > MOST_WORK) {
      throw new Broken(
          String.format(Locale.ROOT, "it is built up in %,d layers", header.passes()), SMALLER);
    }
  }

  /** How many pixels in each direction become one. */
  private static int step(PhotoHeader header) {
    int step = 1;
    while (held(header.width(), step) * held(header.height(), step) > MOST_HELD) {
      step++;
    }
    return step;
  }

  private static long held(int side, int step) {
    return (side + step - 1) / step;
  }

  private BufferedImage decoded(PhotoHeader header, String format) throws Broken {
    ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
    List<String> said = new ArrayList<>();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      reader.addIIOReadWarningListener((source, warning) -> said.add(warning));
      reader.setInput(in, true, true);
      ImageReadParam param = reader.getDefaultReadParam();
      int step = step(header);
      param.setSourceSubsampling(step, step, 0, 0);
      BufferedImage image =
          header.colour() == Colour.USUAL
              ? reader.read(0, param)
              : PrintColours.onScreen(reader.readRaster(0, param), header.colour());
      heed(said);
      return image;
    } catch (IOException | RuntimeException e) {
      throw new Broken("its picture is damaged and cannot be shown");
    } finally {
      reader.dispose();
    }
  }

  private void heed(List<String> said) throws Broken {
    for (String one : said) {
      if (one.toLowerCase(Locale.ROOT).contains("premature end")) {
        throw new Broken("it breaks off in the middle");
      }
      if (one.toLowerCase(Locale.ROOT).contains("corrupt")) {
        warnings.add(
            Problem.warning(
                place, "damaged-photo", "parts of the picture are damaged", "Look at it closely"));
        return;
      }
    }
  }

  private void warn(PhotoHeader header, CameraNotes notes) {
    if (notes.damaged()) {
      warnings.add(
          Problem.warning(
              place,
              "damaged-notes",
              "the notes the camera wrote are damaged",
              "See whether it stands upright; if not, turn it and save it again"));
    }
    if (header.colour() != Colour.USUAL) {
      warnings.add(
          Problem.warning(
              place,
              "print-colours",
              "it has the four colours of print, shown about right",
              "Its shape counts; for true colours save it as RGB"));
    }
    if (Math.min(header.width(), header.height()) < SMALLEST_SIDE) {
      warnings.add(
          Problem.warning(
              place,
              "tiny-photo",
              String.format(
                  Locale.ROOT, "it has only %d x %d pixels", header.width(), header.height()),
              "Nothing can be measured in it; choose a larger photo"));
    }
  }
}
