// SPDX-License-Identifier: Apache-2.0
/**
 * What a grower would find amiss in the structure of a tree, by named measures against stated
 * limits, and what can be done about each.
 *
 * <p>Everything is SI, in the tree frame as measured unless a name says viewer. May import {@code
 * problem}, {@code geometry}, {@code species}, {@code tree}, {@code plan} and {@code design.shape}.
 */
package boughwright.modeller.design.review;
