// SPDX-License-Identifier: Apache-2.0
/**
 * A bend in the course of time: stages, waits, what is left of the pull, when it stays by itself.
 *
 * <p>Everything is SI, times are counted from the first bend. May import every package of the
 * physics above it, {@code trial} the last of them, and the modeller.
 */
package boughwright.physics.stage;
