// SPDX-License-Identifier: Apache-2.0
/**
 * What the program says, held against reliability methods, published figures and trees drawn by a
 * generator of its own. Shares no code, constant or threshold with the program; what is stated in
 * docs/theory is written down again.
 */
package boughwright.physics.validation;
