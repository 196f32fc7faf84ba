// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import boughwright.viewer.picture.PhotoHeader.Broken;
import boughwright.viewer.picture.PhotoHeader.Colour;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Walks the segments of a JPEG file (ITU-T T.81, annex B) up to its pixels. */
final class JpegHeader {
  private static final int MARKER = 0xFF;
  private static final int START_OF_SCAN = 0xDA;
  private static final int APP1 = 0xE1;
  private static final int APP14 = 0xEE;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
  private static final byte[] ADOBE = "Adobe".getBytes(StandardCharsets.ISO_8859_1);

  /** Where the Adobe segment says how colours were turned, and the value for YCCK. */
  private static final int ADOBE_TRANSFORM = 11;

  private static final int TRANSFORM_YCCK = 2;

  private final byte[] bytes;
  private byte[] exif = new byte[0];
  private boolean ycck;
  private int frame;

  private JpegHeader(byte[] bytes) {
    this.bytes = bytes;
  }

  static boolean is(byte[] bytes) {
    return bytes.length > 2
        && at(bytes, 0) == MARKER
        && at(bytes, 1) == 0xD8
        && at(bytes, 2) == MARKER;
  }

  static PhotoHeader of(byte[] bytes) throws Broken {
    JpegHeader header = new JpegHeader(bytes);
    int scan = header.walk();
    if (header.frame == 0) {
      throw new Broken("it has no picture in it");
    }
    return header.photo(scan);
  }

  private static int at(byte[] bytes, int i) {
    return bytes[i] & 0xFF;
  }

  private int word(int i) {
    return at(bytes, i) << 8 | at(bytes, i + 1);
  }

  /** Notes what segments tell; gives the place of the first scan. */
  private int walk() throws Broken {
    int i = 2;
    while (i + 4 <= bytes.length) {
      if (at(bytes, i) != MARKER) {
        throw new Broken("it is damaged near its start");
      }
      int marker = at(bytes, i + 1);
      if (marker == MARKER) {
        i++;
        continue;
      }
      if (marker == START_OF_SCAN) {
        return i;
      }
      int length = word(i + 2);
      if (length < 2 || i + 2 + length > bytes.length) {
        break;
      }
      segment(marker, i + 4, i + 2 + length);
      i += 2 + length;
    }
    throw new Broken("it breaks off before its first pixel");
  }

  private void segment(int marker, int from, int to) throws Broken {
    if (marker == APP1 && exif.length == 0 && starts(from, to, EXIF)) {
      exif = Arrays.copyOfRange(bytes, from + EXIF.length, to);
    } else if (marker == APP14 && starts(from, to, ADOBE) && from + ADOBE_TRANSFORM < to) {
      ycck = at(bytes, from + ADOBE_TRANSFORM) == TRANSFORM_YCCK;
    } else if (isFrame(marker)) {
      if (to - from < 6) {
        throw new Broken("it is damaged near its start");
      }
      frame = from;
    }
  }

  private boolean starts(int from, int to, byte[] start) {
    return to - from >= start.length
        && Arrays.equals(bytes, from, from + start.length, start, 0, start.length);
  }

  /** Start-of-frame markers are C0 to CF but for the tables C4, C8 and CC. */
  private static boolean isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
  }

  private PhotoHeader photo(int scan) {
    boolean four = at(bytes, frame + 5) == 4;
    Colour colour = four ? ycck ? Colour.YCCK : Colour.CMYK : Colour.USUAL;
    return new PhotoHeader(word(frame + 3), word(frame + 1), scans(scan), colour, exif);
  }

  private int scans(int first) {
    int scans = 0;
    for (int i = first; i + 1 < bytes.length; i++) {
      if (at(bytes, i) == MARKER && at(bytes, i + 1) == START_OF_SCAN) {
        scans++;
      }
    }
    return scans;
  }
}
