// SPDX-License-Identifier: Apache-2.0
/**
 * Tree files: read, check, write and save safely.
 *
 * <p>Millimetres, degrees, gigapascals and the other units of the file are turned into SI and back
 * here and nowhere else in the modeller. May import every other package of the modeller.
 */
package boughwright.modeller.file;
