// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import boughwright.modeller.units.DisplayUnits;
import boughwright.modeller.units.UnreadableException;

/** A sort of quantity: how a person sees and types it, and what it is inside [SI]. */
public interface Measure {
  /** Lengths [m]. */
  Measure LENGTH = new Measures.Length();

  /** Forces [N]. */
  Measure FORCE = new Measures.Force();

  /** Angles, in degrees for people [rad]. */
  Measure ANGLE = new Measures.Angle();

  /** Masses, in kilograms or pounds as forces are [kg]. */
  Measure MASS = new Measures.Mass();

  /** Plain numbers with a word or a unit after them that never changes, such as {@code kg}. */
  static Measure number(String unit) {
    return new Measures.Plain(unit);
  }

  /** The unit a person sees, such as {@code mm}; may be empty. */
  String unit(DisplayUnits units);

  /** The number a person sees, without its unit. */
  String show(double value, DisplayUnits units);

  /**
   * What a person typed.
   *
   * @throws UnreadableException if it is no such quantity, with how to write one
   */
  double read(String text, DisplayUnits units) throws UnreadableException;

  /** How much an arrow key adds. */
  double step(DisplayUnits units);

  /** The value to be read, with its unit and no more digits than it deserves. */
  String words(double value, DisplayUnits units);
}
