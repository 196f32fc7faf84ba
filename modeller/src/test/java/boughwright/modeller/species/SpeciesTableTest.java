// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.species;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpeciesTableTest {
  private static final SpeciesTable TABLE = SpeciesTable.bundled();

  /** One pound-force per square inch: 4.4482216152605 N / (0.0254 m)^2 (exact by definition). */
  private static final double PSI = 4.4482216152605 / (0.0254 * 0.0254);

  /** The table holds 0.01 GPa; the handbook prints 0.01 million psi. */
  private static final double PRINTED_MOE = 0.005e6 * PSI + 0.005e9;

  /** The table holds 0.1 MPa; the handbook prints 100 psi. */
  private static final double PRINTED_MOR = 50 * PSI + 0.05e6;

  /** Two sets of woods and laboratories differ by this much in a coefficient of variation [1]. */
  private static final double LIKE_THE_HANDBOOK = 0.04;

  private static List<Species> published() {
    return TABLE.all().stream().filter(s -> !s.isProxy() && s.checked().equals("seen")).toList();
  }

  @Test
  void table_holdsAtLeast80PublishedGreenWoods_eachWithItsSource() {
    assertThat(published()).hasSizeGreaterThanOrEqualTo(80);
    assertThat(published())
        .allSatisfy(
            species -> {
              assertThat(species.source()).containsAnyOf("FPL-GTR-282", "BR 241", "FPL-GTR-102");
              assertThat(species.mor()).as(species.key()).isPresent();
              assertThat(species.crushing()).as(species.key()).isPresent();
              assertThat(species.density()).as(species.key()).isPresent();
            });
  }

  /**
   * Green values of the printed Wood Handbook (FPL-GTR-282, Table 5-3b), from memory, in the
   * handbook's own units: MOE in million psi, MOR in psi.
   */
  @ParameterizedTest
  @CsvSource({
    "acer-rubrum, 1.39, 7700, 0.49",
    "ulmus-americana, 1.11, 7200, 0.46",
    "celtis-occidentalis, 0.95, 6500, 0.49",
    "juniperus-virginiana, 0.65, 7000, 0.44",
    "quercus-alba, 1.25, 8300, 0.60",
    "pinus-strobus, 0.99, 4900, 0.34"
  })
  void values_agreeWithThePrintedHandbook(String key, double moe, double mor, double gravity) {
    Species species = TABLE.find(key).get(0);
    assertThat(species.moe()).isCloseTo(moe * 1e6 * PSI, within(PRINTED_MOE));
    assertThat(species.mor().orElseThrow()).isCloseTo(mor * PSI, within(PRINTED_MOR));
    assertThat(species.density().orElseThrow()).isCloseTo(gravity * 1000, within(5.0));
    assertThat(species.trueMoe()).isCloseTo(1.1 * species.moe(), within(1.0));
  }

  /** A slip of a unit or column would leave these ranges of all commercial woods (from memory). */
  @Test
  void everyWood_liesInTheRangeOfRealWoods() {
    assertThat(TABLE.all())
        .allSatisfy(
            species -> {
              assertThat(species.moe()).as(species.key()).isBetween(3e9, 16e9);
              inRange(species.mor(), 25e6, 120e6, species);
              inRange(species.crushing(), 12e6, 55e6, species);
              inRange(species.shear(), 3e6, 18e6, species);
              inRange(species.density(), 250, 900, species);
              inRange(species.tensionPerp(), 0.5e6, 8e6, species);
              inRange(species.compressionPerp(), 0.8e6, 15e6, species);
              inRange(species.workToMaxLoad(), 30e3, 230e3, species);
            });
  }

  private static void inRange(OptionalDouble value, double low, double high, Species species) {
    if (value.isPresent()) {
      assertThat(value.getAsDouble()).as(species.key()).isBetween(low, high);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "carpinus-betulus, carpinus-betulus",
    "Carpinus betulus, carpinus-betulus",
    "CARPINUS  BETULUS, carpinus-betulus",
    "hornbeam, carpinus-betulus",
    "European hornbeam, carpinus-betulus",
    "Japanese maple, acer-palmatum",
    "shimpaku, juniperus-chinensis",
    "european larch, larix-decidua",
    "Horse chestnut, aesculus-hippocastanum",
    "Ulmus × hollandica, ulmus-hollandica",
    "Ulmus hollandica, ulmus-hollandica",
    "Quercus petraea, quercus-robur",
    "thuja-plicata, thuja-plicata",
    "Chinese  Juniper, juniperus-chinensis",
    "generic hardwood, generic-hardwood"
  })
  void find_takesKeyBotanicalAndCommonNames(String text, String key) {
    assertThat(TABLE.find(text)).extracting(Species::key).containsExactly(key);
    assertThat(TABLE.woodFor(text).key()).isEqualTo(key);
  }

  @Test
  void find_givesAllWoodsOfOneName() {
    assertThat(TABLE.find("Thuja plicata"))
        .extracting(Species::key)
        .containsExactlyInAnyOrder("thuja-plicata", "thuja-plicata-uk");
    assertThat(TABLE.find("redwood")).hasSize(2);
    assertThat(TABLE.woodFor("redwood")).isEqualTo(TABLE.generic());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Arbor incognita", "xyz"})
  void unknownName_isNotFound_andTheGenericWoodStandsIn(String text) {
    assertThat(TABLE.find(text)).isEmpty();
    assertThat(TABLE.woodFor(text)).isEqualTo(TABLE.generic());
  }

  @ParameterizedTest
  @CsvSource({
    "carpinus betulis, carpinus-betulus",
    "hornbeem, carpinus-betulus",
    "japanes maple, acer-palmatum",
    "Acer palmatun, acer-palmatum"
  })
  void suggest_findsCloseNames(String text, String key) {
    assertThat(TABLE.suggest(text)).contains(key);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u0410cer palmatum", "Acer p\u0430lm\u0430tum", "\u0391cer palmatum"})
  void lettersOfAnotherAlphabet_areSeenThrough(String text) {
    assertThat(TABLE.find(text)).isEmpty();
    assertThat(TABLE.lookAlikes(text)).extracting(Species::key).containsExactly("acer-palmatum");
    assertThat(TABLE.suggest(text)).containsExactly("acer-palmatum");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "acer-palmatum",
        "acer-buergerianum",
        "ulmus-parvifolia",
        "juniperus-chinensis",
        "pinus-thunbergii",
        "pinus-parviflora",
        "pinus-densiflora",
        "ficus",
        "ligustrum",
        "rhododendron",
        "crataegus",
        "fagus-crenata",
        "carpinus-turczaninowii",
        "picea-jezoensis",
        "buxus-sempervirens",
        "olea-europaea",
        "taxus-baccata",
        "malus",
        "zelkova-serrata"
      })
  void bonsaiWoodWithoutPublishedGreenValues_isAProxyThatSaysSo(String key) {
    Species species = TABLE.find(key).get(0);
    assertThat(species.isProxy()).isTrue();
    assertThat(species.proxyFor().orElseThrow()).startsWith("no published green values");
    assertThat(species.checked()).isIn("derived", "memory");
  }

  @Test
  void proxyOfOneWood_hasItsValues() {
    Species maple = TABLE.find("acer-palmatum").get(0);
    Species red = TABLE.find("acer-rubrum").get(0);
    assertThat(maple.moe()).isEqualTo(red.moe());
    assertThat(maple.moeBasis()).isEqualTo(red.moeBasis());
    assertThat(maple.mor()).isEqualTo(red.mor());
    assertThat(maple.source()).isEqualTo(red.source());
    assertThat(maple.proxyFor().orElseThrow()).contains("Acer rubrum");
  }

  /** Sugar maple 10.69, black maple 9.17 GPa as printed; each 10 % more without shear. */
  @Test
  void proxyOfSeveralWoods_hasTheMeanOfTheirTrueModuli() {
    Species trident = TABLE.find("acer-buergerianum").get(0);
    assertThat(trident.trueMoe()).isCloseTo(1.1 * (10.69e9 + 9.17e9) / 2, within(1e3));
    assertThat(trident.moeBasis()).isEqualTo(MoeBasis.AS_PRINTED);
  }

  /** Box at 12 % moisture: 17.2 GPa times 0.79; the handbook's green/dry step made plain. */
  @Test
  void dryValue_isTurnedIntoAGreenOne_inTheOpen() {
    Species box = TABLE.find("buxus-sempervirens").get(0);
    assertThat(box.moe()).isCloseTo(13.59e9, within(0.005e9));
    assertThat(box.proxyFor().orElseThrow()).contains("17.20 GPa", "0.79", "from memory");
  }

  @Test
  void genericWood_isTheMedianOfThePublishedOnes_andSaysSo() {
    double[] moduli = published().stream().mapToDouble(Species::trueMoe).sorted().toArray();
    int n = moduli.length;
    double median = (moduli[(n - 1) / 2] + moduli[n / 2]) / 2;
    assertThat(TABLE.generic().trueMoe()).isCloseTo(median, within(1.0));
    assertThat(TABLE.generic().proxyFor().orElseThrow()).contains("median of the " + n);
    assertThat(TABLE.find("generic-softwood").get(0).trueMoe())
        .isLessThan(TABLE.find("generic-hardwood").get(0).trueMoe());
  }

  /**
   * Green values of the printed Wood Handbook (FPL-GTR-282, Table 5-3b), from memory, in pounds per
   * square inch: tension and compression across the grain.
   */
  @ParameterizedTest
  @CsvSource({
    "fagus-grandifolia, 720, 540",
    "acer-rubrum, 0, 400",
    "quercus-alba, 770, 670",
    "pinus-strobus, 250, 220"
  })
  void valuesAcrossTheGrain_agreeWithThePrintedHandbook(String key, int tension, int crushing) {
    Species species = TABLE.find(key).get(0);
    if (tension > 0) {
      assertThat(species.tensionPerp().orElseThrow()).isCloseTo(tension * PSI, within(5 * PSI));
    }
    assertThat(species.compressionPerp().orElseThrow()).isCloseTo(crushing * PSI, within(5 * PSI));
  }

  /**
   * The average scatter of some 50 other woods in the Wood Handbook (Table 5-6: MOE 22, MOR 16,
   * crushing 18, shear 14 %) lies near the middle of these; a slip of a column would not.
   */
  @Test
  void spreadOfWoods_isLikeThatOfTheHandbook() {
    List<SpeciesSpread> own = published().stream().flatMap(s -> s.spread().stream()).toList();
    assertThat(own).hasSizeGreaterThan(30);
    assertThat(middle(own, SpeciesSpread::moe)).isCloseTo(0.22, within(LIKE_THE_HANDBOOK));
    assertThat(middle(own, SpeciesSpread::mor)).isCloseTo(0.16, within(LIKE_THE_HANDBOOK));
    assertThat(middle(own, SpeciesSpread::crushing)).isCloseTo(0.18, within(LIKE_THE_HANDBOOK));
    assertThat(middle(own, s -> s.shear().orElse(0.14))).isCloseTo(0.14, within(LIKE_THE_HANDBOOK));
  }

  private static double middle(List<SpeciesSpread> own, ToDoubleFunction<SpeciesSpread> value) {
    double[] sorted = own.stream().mapToDouble(value).sorted().toArray();
    return sorted[sorted.length / 2];
  }

  /** Hornbeam in BR 241: MOE 9700, SD 940 of 26 pieces; MOR 66, SD 5.9. */
  @Test
  void proxy_carriesTheSpreadOfItsWood_andABlendOnlyWhereAllHaveOne() {
    SpeciesSpread hornbeam = TABLE.find("carpinus-turczaninowii").get(0).spread().orElseThrow();
    assertThat(hornbeam.moe()).isCloseTo(940.0 / 9700, within(0.0005));
    assertThat(hornbeam.mor()).isCloseTo(5.9 / 66, within(0.0005));
    assertThat(hornbeam.source()).contains("BR 241");
    assertThat(TABLE.find("ulmus-parvifolia").get(0).spread()).isEmpty();
    assertThat(TABLE.generic().spread()).isEmpty();
    assertThat(TABLE.generic().tensionPerp()).isPresent();
  }

  @Test
  void keys_areWrittenAsInFiles() {
    assertThat(TABLE.all()).extracting(Species::key).doesNotHaveDuplicates();
    assertThat(TABLE.all())
        .allSatisfy(species -> assertThat(species.key()).matches("[a-z]+(-[a-z]+)*"));
    assertThat(Arrays.asList(MoeBasis.values())).hasSize(2);
  }
}
