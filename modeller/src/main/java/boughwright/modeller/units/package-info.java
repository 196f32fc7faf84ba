// SPDX-License-Identifier: Apache-2.0
/**
 * Text and display units to and from SI.
 *
 * <p>Used only where text or people meet the program: files, sheets, commands, panels. Inside,
 * every length is in metres, every force in newtons, every angle in radians. Base factors are
 * defined exactly (inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s2) and compounds
 * follow by arithmetic; conversions are decimal and rounded once, so that 58.3 mm becomes metres
 * and comes back as 58.3 mm.
 *
 * <p>May import {@code problem}.
 */
package boughwright.modeller.units;
