// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

/**
 * What the wood bears at one place, to be drawn beside its strains.
 *
 * @param segment segment id
 * @param along fraction of the segment's length from its start [1]
 * @param crack tension strain at which the outside cracks [1]
 * @param kink compression strain at which the inside wrinkles [1]
 * @param yield compression strain from which fibres flow; the normal working range begins here [1]
 */
public record LimitSample(String segment, double along, Range crack, Range kink, double yield) {}
