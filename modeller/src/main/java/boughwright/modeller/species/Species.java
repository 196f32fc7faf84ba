// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Published values of one wood, clear stem wood as tested.
 *
 * @param key the name used in files, lower case with hyphens, from the botanical name
 * @param botanicalName botanical name
 * @param commonNames names a person may search for, the most usual first
 * @param moe modulus of elasticity as printed in the source [Pa]
 * @param moeBasis how that modulus was measured, which decides its shear correction
 * @param mor modulus of rupture [Pa]
 * @param crushing crushing strength along the grain [Pa]
 * @param shear shear strength along the grain [Pa]
 * @param tensionPerp strength in tension across the grain [Pa]
 * @param compressionPerp stress at the proportional limit in compression across the grain [Pa]
 * @param workToMaxLoad work to the greatest load in bending, by volume [J/m3]
 * @param density basic density: oven-dry mass over green volume [kg/m3]
 * @param spread how much the wood's own values scatter; empty where nobody published it
 * @param proxyFor empty for published values of this very wood; else the words that say whose
 *     values stand in and why
 * @param source where the values were published
 * @param checked how the figures were seen: {@code seen}, {@code memory}, {@code derived}
 */
public record Species(
    String key,
    String botanicalName,
    List<String> commonNames,
    double moe,
    MoeBasis moeBasis,
    OptionalDouble mor,
    OptionalDouble crushing,
    OptionalDouble shear,
    OptionalDouble tensionPerp,
    OptionalDouble compressionPerp,
    OptionalDouble workToMaxLoad,
    OptionalDouble density,
    Optional<SpeciesSpread> spread,
    Optional<String> proxyFor,
    String source,
    String checked) {
  public Species {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(botanicalName, "botanicalName");
    commonNames = List.copyOf(commonNames);
    if (!(moe > 0) || Double.isInfinite(moe)) {
      throw new IllegalArgumentException("moe is " + moe + " Pa, a positive number is expected");
    }
    Objects.requireNonNull(moeBasis, "moeBasis");
    Objects.requireNonNull(spread, "spread");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(checked, "checked");
  }

  public boolean isProxy() {
    return proxyFor.isPresent();
  }

  /** The modulus with the shear deflection of the test taken out [Pa]. */
  public double trueMoe() {
    return moe * moeBasis.shearCorrection();
  }
}
