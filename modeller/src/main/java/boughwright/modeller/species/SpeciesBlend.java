// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * Values computed from several woods; their moduli are freed of shear deflection first, since the
 * sources measured them differently.
 */
final class SpeciesBlend {
  private SpeciesBlend() {}

  /** What a blend is called, and the words that say what it is. */
  private record Label(String key, List<String> names, String words) {}

  /** The mean of some woods, under the key and names of the first. */
  static Species mean(List<Species> woods) {
    String words =
        "mean of " + woods.stream().map(Species::botanicalName).collect(Collectors.joining(", "));
    Label label = new Label(woods.get(0).key(), woods.get(0).commonNames(), words);
    return blend(label, woods, values -> values.average().orElseThrow());
  }

  /** The median of many woods, as a stand-in that says so. */
  static Species median(String key, List<String> names, List<Species> woods) {
    String words = "no wood of its own: median of the " + woods.size() + " published woods here";
    return blend(new Label(key, names, words), woods, SpeciesBlend::middle);
  }

  private static double middle(DoubleStream values) {
    double[] sorted = values.sorted().toArray();
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  private static Species blend(
      Label label, List<Species> woods, ToDoubleFunction<DoubleStream> how) {
    return new Species(
        label.key,
        label.names.get(0),
        label.names,
        how.applyAsDouble(woods.stream().mapToDouble(Species::trueMoe)),
        MoeBasis.AS_PRINTED,
        over(woods, Species::mor, how),
        over(woods, Species::crushing, how),
        over(woods, Species::shear, how),
        over(woods, Species::tensionPerp, how),
        over(woods, Species::compressionPerp, how),
        over(woods, Species::workToMaxLoad, how),
        over(woods, Species::density, how),
        spread(woods, how),
        Optional.of(label.words),
        woods.stream().map(Species::source).distinct().collect(Collectors.joining("; ")),
        "derived");
  }

  /** The scatter of a blend, where that of every wood in it is known. */
  private static Optional<SpeciesSpread> spread(
      List<Species> woods, ToDoubleFunction<DoubleStream> how) {
    List<SpeciesSpread> known = woods.stream().flatMap(wood -> wood.spread().stream()).toList();
    if (known.size() < woods.size()) {
      return Optional.empty();
    }
    double[] shear = known.stream().flatMapToDouble(spread -> spread.shear().stream()).toArray();
    return Optional.of(
        new SpeciesSpread(
            how.applyAsDouble(known.stream().mapToDouble(SpeciesSpread::moe)),
            how.applyAsDouble(known.stream().mapToDouble(SpeciesSpread::mor)),
            how.applyAsDouble(known.stream().mapToDouble(SpeciesSpread::crushing)),
            shear.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(how.applyAsDouble(DoubleStream.of(shear))),
            known.stream()
                .map(SpeciesSpread::source)
                .distinct()
                .collect(Collectors.joining("; "))));
  }

  private static OptionalDouble over(
      List<Species> woods,
      Function<Species, OptionalDouble> value,
      ToDoubleFunction<DoubleStream> how) {
    double[] known =
        woods.stream()
            .map(value)
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .toArray();
    return known.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(how.applyAsDouble(DoubleStream.of(known)));
  }
}
