// SPDX-License-Identifier: Apache-2.0
/**
 * From measurements to a tree: the tape sheet.
 *
 * <p>A tape sheet is a table a person fills in at the bench, one row for each straight piece of the
 * tree, with tape, caliper and protractor; {@link boughwright.modeller.measure.TapeSheet} says what
 * its columns mean. Azimuths and elevations are those of {@code geometry}; the tree that comes out
 * stands in the tree frame, with the centre of the trunk base at the origin.
 *
 * <p>May import {@code problem}, {@code geometry}, {@code units}, {@code species}, {@code tree},
 * {@code plan}, {@code edit} and {@code history}.
 */
package boughwright.modeller.measure;
