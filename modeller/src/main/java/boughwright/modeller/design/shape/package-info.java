// SPDX-License-Identifier: Apache-2.0
/**
 * What the judgement of a tree looks at: the wood that the cuts leave, its limbs, the line of its
 * trunk, its mass, and how it stands before the viewer.
 *
 * <p>Everything is SI, in the tree frame as measured unless a name says viewer. The viewer's frame
 * is right-handed too: x to the viewer's right, y away from the viewer, z up, origin at the centre
 * of the trunk base. May import {@code problem}, {@code geometry}, {@code species}, {@code tree}
 * and {@code plan}.
 */
package boughwright.modeller.design.shape;
