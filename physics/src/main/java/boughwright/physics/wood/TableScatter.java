// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.wood;

import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * How published green woods differ from each other: medians, and standard deviations of the
 * logarithm over the species table.
 */
final class TableScatter {
  /** Of the modulus [1]. */
  static final double MOE = spread(species -> OptionalDouble.of(species.trueMoe()));

  /** Of modulus of rupture over modulus [1]. */
  static final double RUPTURE = spread(species -> over(species.mor(), species));

  /** Of crushing strength over modulus [1]. */
  static final double CRUSHING = spread(species -> over(species.crushing(), species));

  /** Of tension strength across the grain over modulus [1]. */
  static final double ACROSS = spread(species -> over(species.tensionPerp(), species));

  static final double MEDIAN_ACROSS = median(species -> over(species.tensionPerp(), species));
  static final double MEDIAN_RUPTURE = median(species -> over(species.mor(), species));
  static final double MEDIAN_SHEAR = median(species -> over(species.shear(), species));

  private TableScatter() {}

  static OptionalDouble over(OptionalDouble strength, Species species) {
    return strength.isPresent()
        ? OptionalDouble.of(strength.getAsDouble() / species.trueMoe())
        : OptionalDouble.empty();
  }

  private static double spread(Function<Species, OptionalDouble> value) {
    return logarithms(value).getStandardDeviation();
  }

  static double median(Function<Species, OptionalDouble> value) {
    return Math.exp(logarithms(value).getPercentile(50));
  }

  private static DescriptiveStatistics logarithms(Function<Species, OptionalDouble> value) {
    DescriptiveStatistics logarithms = new DescriptiveStatistics();
    SpeciesTable.bundled().all().stream()
        .filter(species -> !species.isProxy())
        .map(value)
        .filter(OptionalDouble::isPresent)
        .forEach(found -> logarithms.addValue(Math.log(found.getAsDouble())));
    return logarithms;
  }
}
