// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.scene;

import boughwright.physics.trial.Risk;
import java.util.Optional;

/**
 * What a picture shows of the risk.
 *
 * @param risk the risk
 * @param limb the limb that works hardest; empty where nothing is bent
 */
public record RiskView(Risk risk, Optional<LimbStrain> limb) {}
