// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.units;

import java.util.Objects;

/**
 * The units a person wants to see and type, everywhere at once.
 *
 * @param length of calipers, lengths and movements: millimetres or inches
 * @param force of pulls
 */
public record DisplayUnits(LengthUnit length, ForceUnit force) {
  /** Millimetres and newtons. */
  public static final DisplayUnits USUAL =
      new DisplayUnits(LengthUnit.MILLIMETRE, ForceUnit.NEWTON);

  public DisplayUnits {
    Objects.requireNonNull(length, "length");
    Objects.requireNonNull(force, "force");
  }
}
