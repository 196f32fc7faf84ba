// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.picture;

/**
 * Size of a picture.
 *
 * @param width {@value #SMALLEST_WIDTH} to {@value #LARGEST} [pixels]
 * @param height {@value #SMALLEST_HEIGHT} to {@value #LARGEST} [pixels]
 */
public record PictureSize(int width, int height) {
  /** Narrower than this the words find no room. */
  public static final int SMALLEST_WIDTH = 640;

  /** Lower than this the words find no room. */
  public static final int SMALLEST_HEIGHT = 480;

  /** Enough for a sheet of 40 by 40 cm at 380 dots per inch. */
  public static final int LARGEST = 6000;

  /** What is taken when nothing is said. */
  public static final PictureSize DEFAULT = new PictureSize(1800, 1200);

  /**
   * @throws IllegalArgumentException with the limits, if the size is outside them
   */
  public PictureSize {
    if (width < SMALLEST_WIDTH || width > LARGEST || height < SMALLEST_HEIGHT || height > LARGEST) {
      throw new IllegalArgumentException(
          "a picture of "
              + width
              + "x"
              + height
              + " pixels: "
              + SMALLEST_WIDTH
              + "x"
              + SMALLEST_HEIGHT
              + " to "
              + LARGEST
              + "x"
              + LARGEST
              + " can be drawn");
    }
  }

  /** What one pixel of a page of the default size becomes, so that text stays legible [pixels]. */
  double unit() {
    return unit(DEFAULT.width);
  }

  /** The same for a page with one view that stands beside others: its words are larger [pixels]. */
  double unitBesideOthers() {
    return unit(DEFAULT.height);
  }

  private double unit(double usualWidth) {
    return Math.max(0.5, Math.min(width / usualWidth, (double) height / DEFAULT.height));
  }

  /** As much as plans beside one another need where nothing is said, each taller than wide. */
  public static PictureSize ofPlans(int count) {
    return new PictureSize(
        Math.max(DEFAULT.width, count * DEFAULT.width / 2), 5 * DEFAULT.height / 4);
  }
}
