// SPDX-License-Identifier: Apache-2.0
/**
 * What holds a bend: coiled wire, guy-lines with their pads and anchors, the container.
 *
 * <p>Everything is SI. May import {@code rod}, {@code wood} and the modeller; knows no trial.
 */
package boughwright.physics.hold;
