// SPDX-License-Identifier: Apache-2.0
/**
 * The immutable tree as measured: segments, calipers, wounds; and what makes one valid.
 *
 * <p>Everything is SI in the tree frame of {@code geometry}. May import {@code problem}, {@code
 * geometry} and {@code species}.
 */
package boughwright.modeller.tree;
