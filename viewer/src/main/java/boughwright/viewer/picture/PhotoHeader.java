// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

/**
 * What the first bytes of a photo tell about it, before anything is decoded.
 *
 * @param width pixels across, as stored
 * @param height pixels down, as stored
 * @param passes how often a decoder goes over the picture
 * @param colour how its colours are stored
 * @param exif the block of notes the camera wrote; empty for none
 */
record PhotoHeader(int width, int height, int passes, Colour colour, byte[] exif) {
  /** How colours are stored, where that matters. */
  enum Colour {
    USUAL,
    /** Four printing colours. */
    CMYK,
    /** Four printing colours, the first three turned into brightness and two differences. */
    YCCK
  }

  /** A picture that is not what its first bytes promised. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    private final String remedy;

    Broken(String found, String remedy) {
      super(found);
      this.remedy = remedy;
    }

    Broken(String found) {
      this(found, "Copy it from the camera again, or choose another photo");
    }

    String remedy() {
      return remedy;
    }
  }

  long pixels() {
    return (long) width * height;
  }
}
