// SPDX-License-Identifier: Apache-2.0
/**
 * Values of green wood with their source, spread and moisture state.
 *
 * <p>May import {@code problem}.
 */
package boughwright.modeller.species;
