// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

/**
 * A colour in sRGB (IEC 61966-2-1), each part from 0 to 1, encoded as in picture files.
 *
 * @param red red part [1]
 * @param green green part [1]
 * @param blue blue part [1]
 */
public record Colour(double red, double green, double blue) {
  /** CIE D65, 2 degree observer, as in IEC 61966-2-1. */
  private static final double WHITE_X = 0.9505;

  private static final double WHITE_Z = 1.089;
  private static final double CUBE_LIMIT = 216.0 / 24389;
  private static final double CUBE_SLOPE = 24389.0 / 27;

  public Colour {
    require(red, "red");
    require(green, "green");
    require(blue, "blue");
  }

  private static void require(double part, String name) {
    if (!(part >= 0 && part <= 1)) {
      throw new IllegalArgumentException(name + " is " + part + ", 0 to 1 is expected");
    }
  }

  /** A colour written as in style sheets, such as {@code 0x8C7B6B}. */
  public static Colour ofHex(int rgb) {
    return new Colour((rgb >> 16 & 255) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0);
  }

  /** The colour of a L*a*b* value; parts that no screen can show are clipped. */
  public static Colour of(Lab lab) {
    double fy = (lab.lightness() + 16) / 116;
    double x = WHITE_X * uncube(fy + lab.a() / 500);
    double y = uncube(fy);
    double z = WHITE_Z * uncube(fy - lab.b() / 200);
    return new Colour(
        encode(3.2406 * x - 1.5372 * y - 0.4986 * z),
        encode(-0.9689 * x + 1.8758 * y + 0.0415 * z),
        encode(0.0557 * x - 0.2040 * y + 1.0570 * z));
  }

  public Lab lab() {
    double r = decode(red);
    double g = decode(green);
    double b = decode(blue);
    double fx = cube((0.4124 * r + 0.3576 * g + 0.1805 * b) / WHITE_X);
    double fy = cube(0.2126 * r + 0.7152 * g + 0.0722 * b);
    double fz = cube((0.0193 * r + 0.1192 * g + 0.9505 * b) / WHITE_Z);
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  /** The colour as 0xRRGGBB. */
  public int rgb() {
    return (int) Math.round(red * 255) << 16
        | (int) Math.round(green * 255) << 8
        | (int) Math.round(blue * 255);
  }

  /** Linear light of an encoded part. */
  private static double decode(double part) {
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  private static double encode(double light) {
    double part = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    return Math.min(1, Math.max(0, part));
  }

  private static double cube(double t) {
    return t > CUBE_LIMIT ? Math.cbrt(t) : (CUBE_SLOPE * t + 16) / 116;
  }

  private static double uncube(double f) {
    return f * f * f > CUBE_LIMIT ? f * f * f : (116 * f - 16) / CUBE_SLOPE;
  }
}
