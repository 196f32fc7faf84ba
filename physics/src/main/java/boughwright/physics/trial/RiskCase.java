// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * What all draws of one trial share.
 *
 * @param request what is tried
 * @param rods the tree as rods of its best guess
 * @param beliefs what is believed of wood and readings
 * @param state how the tree grew and what was ticked
 */
record RiskCase(TrialRequest request, TreeRods rods, Beliefs beliefs, WoodState state) {}
