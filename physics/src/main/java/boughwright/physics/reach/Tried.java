// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.reach;

import boughwright.physics.trial.TreeStand;
import java.util.List;

/**
 * Some lines that were tried.
 *
 * @param ties the lines
 * @param stood what came of them, a pose that holds
 * @param missing what is missing to the target [m]
 * @param miss how much that is [m]
 */
record Tried(List<Tie> ties, TreeStand.Stood stood, double[] missing, double miss) {}
