// SPDX-License-Identifier: Apache-2.0
/**
 * What is planned for a tree: proposals, cuts, front, planting angle, apex; and the document that
 * holds a tree with its plans.
 *
 * <p>May import {@code problem}, {@code geometry}, {@code species} and {@code tree}.
 */
package boughwright.modeller.plan;
