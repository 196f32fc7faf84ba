// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashSet;
import java.util.Set;

/**
 * How the camera was held, from the notes in a photo. Nothing else of them is looked at or kept.
 *
 * @param orientation 1 to 8 as in Exif 2.3, table 6 (Orientation): 1 is upright
 * @param damaged whether the notes could not be read whole
 */
record CameraNotes(int orientation, boolean damaged) {
  private static final int UPRIGHT = 1;
  private static final int LAST = 8;

  /** Bytes of one note. */
  private static final int ENTRY = 12;

  static CameraNotes of(byte[] exif) {
    if (exif.length == 0) {
      return new CameraNotes(UPRIGHT, false);
    }
    try {
      Metadata metadata = new Metadata();
      new ExifReader().extract(new ByteArrayReader(exif), metadata);
      boolean damaged = isRing(exif);
      for (Directory directory : metadata.getDirectories()) {
        damaged |= directory.hasErrors();
      }
      for (ExifIFD0Directory first : metadata.getDirectoriesOfType(ExifIFD0Directory.class)) {
        Integer found = first.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
        if (found != null) {
          boolean known = found >= UPRIGHT && found <= LAST;
          return new CameraNotes(known ? found : UPRIGHT, damaged || !known);
        }
      }
      return new CameraNotes(UPRIGHT, damaged);
    } catch (RuntimeException e) {
      return new CameraNotes(UPRIGHT, true);
    }
  }

  /** Whether a list of notes (TIFF 6.0, section 2) leads back to one before it. */
  private static boolean isRing(byte[] exif) {
    ByteBuffer notes = ByteBuffer.wrap(exif);
    notes.order(exif[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    Set<Integer> seen = new HashSet<>();
    int at = notes.getInt(4);
    while (at > 0 && at + 2 <= exif.length) {
      if (!seen.add(at)) {
        return true;
      }
      int next = at + 2 + ENTRY * (notes.getShort(at) & 0xFFFF);
      at = next + 4 <= exif.length ? notes.getInt(next) : 0;
    }
    return false;
  }

  /** Whether turning it upright swaps width and height. */
  boolean isSideways() {
    return orientation > 4;
  }
}
