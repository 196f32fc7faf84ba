// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.plan.Document;
import boughwright.modeller.species.Species;
import boughwright.modeller.species.SpeciesTable;
import boughwright.modeller.tree.Skeleton;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the sampler draws, against the handbook's spreads and what was given. */
class BeliefsTest {
  private static final Species BEECH = SpeciesTable.bundled().woodFor("fagus-sylvatica");
  private static final int DRAWS = 60_000;

  /** A coefficient of variation from so many draws is sure to about half a per cent of itself. */
  private static final double VARIATION = 0.004;

  @TempDir Path folder;

  private Beliefs beliefs(String more) {
    TreeText text =
        new TreeText("\"fagus-sylvatica\"")
            .segment(
                "\"id\": \"t\", \"parent\": null, \"kind\": \"trunk\", \"start_mm\": [0,0,0],"
                    + " \"end_mm\": [0,0,100], \"caliper_start_mm\": 20, \"caliper_end_mm\": 18")
            .segment(
                "\"id\": \"t2\", \"parent\": \"t\", \"kind\": \"trunk\","
                    + " \"end_mm\": [0,0,200], \"caliper_start_mm\": 18, \"caliper_end_mm\": 16")
            .segment(
                "\"id\": \"b\", \"parent\": \"t\", \"along\": 0.5, \"kind\": \"branch\","
                    + " \"end_mm\": [100,0,100], \"caliper_start_mm\": 9, \"caliper_end_mm\": 6")
            .proposal("\"about\": \"b\"");
    if (!more.isEmpty()) {
      text.tree(more);
    }
    Document document = text.read(folder);
    TrialRequest request = TrialRequest.of(document.tree(), document.plans().get(0), BEECH);
    return new Beliefs(request, new Skeleton(document.tree()), List.of());
  }

  /** A draw of all trees of one species, whose own branch factor and yield strain are known. */
  private static TrialWood ofOneSpecies(Beliefs beliefs, Random random) {
    double[] shared = normals(random, Beliefs.SHARED);
    shared[Beliefs.MOE_OF_SPECIES] = 0;
    shared[Beliefs.YIELD_OF_SPECIES] = 0;
    return beliefs.wood(shared, normals(random, beliefs.ownCount()));
  }

  private static double[] normals(Random random, int count) {
    double[] values = new double[count];
    for (int k = 0; k < count; k++) {
      values[k] = random.nextGaussian();
    }
    return values;
  }

  /** Forest Products Laboratory 2010, FPL-GTR-190, Table 5-6: MOE 22 %, crushing strength 18 %. */
  @Test
  void withinASpecies_drawsScatterAsTheHandbookTableSays() {
    Beliefs beliefs = beliefs("");
    Random random = new Random(21);
    SummaryStatistics moe = new SummaryStatistics();
    SummaryStatistics crushing = new SummaryStatistics();
    for (int n = 0; n < DRAWS; n++) {
      var wood = ofOneSpecies(beliefs, random).segments().get(2);
      moe.addValue(wood.moe());
      crushing.addValue(wood.moe() * wood.yieldStrain());
    }
    assertThat(moe.getStandardDeviation() / moe.getMean()).isCloseTo(0.22, within(VARIATION));
    assertThat(crushing.getStandardDeviation() / crushing.getMean())
        .isCloseTo(0.18, within(VARIATION));
  }

  @Test
  void limbs_shareTheTreeAndSegmentsOfOneLimbShareAll() {
    Beliefs beliefs = beliefs("");
    Random random = new Random(22);
    double both = 0;
    double trunk = 0;
    double branch = 0;
    double best = Math.log(beliefs.best().segments().get(0).moe());
    for (int n = 0; n < DRAWS; n++) {
      TrialWood wood = ofOneSpecies(beliefs, random);
      assertThat(wood.segments().get(1).moe()).isEqualTo(wood.segments().get(0).moe());
      double t = Math.log(wood.segments().get(0).moe()) - best;
      double b = Math.log(wood.segments().get(2).moe()) - best;
      both += t * b;
      trunk += t * t;
      branch += b * b;
    }
    // half of the variance is the tree's
    assertThat(both / Math.sqrt(trunk * branch)).isCloseTo(0.5, within(0.015));
  }

  @Test
  void reading_isSharedWhereALimbGoesOnWithTheSameCaliper() {
    Beliefs beliefs = beliefs("\"caliper_error_mm\": 0.5");
    Random random = new Random(23);
    SummaryStatistics error = new SummaryStatistics();
    int wide = 0;
    for (int n = 0; n < DRAWS; n++) {
      TrialWood wood = ofOneSpecies(beliefs, random);
      assertThat(wood.startReading()[1]).isEqualTo(wood.endReading()[0]);
      error.addValue(wood.startReading()[2]);
      wide += Math.abs(wood.startReading()[2]) > 0.0005 ? 1 : 0;
    }
    assertThat(error.getMean()).isCloseTo(0, within(5e-6));
    assertThat((double) wide / DRAWS).isCloseTo(0.10, within(0.005));
  }

  @Test
  void modulusGivenForALimb_isItsMiddleAndTellsOfTheOthers() {
    Beliefs beliefs = beliefs("\"wood\": {\"b\": {\"moe_GPa\": 4, \"moe_cv\": 0.05}}");
    double table = Math.log(beliefs.best().segments().get(0).moe());
    Random random = new Random(24);
    SummaryStatistics given = new SummaryStatistics();
    SummaryStatistics other = new SummaryStatistics();
    for (int n = 0; n < DRAWS; n++) {
      double[] shared = normals(random, Beliefs.SHARED);
      beliefs.evidence().correctShared(shared, normals(random, 9), normals(random, 1));
      double[] own = normals(random, beliefs.ownCount());
      beliefs.evidence().correctOwn(own, shared, normals(random, 1));
      TrialWood wood = beliefs.wood(shared, own);
      given.addValue(Math.log(wood.segments().get(2).moe()));
      other.addValue(Math.log(wood.segments().get(0).moe()));
    }
    assertThat(given.getMean()).isCloseTo(Math.log(4e9), within(2e-3));
    assertThat(given.getStandardDeviation()).isCloseTo(0.05, within(2e-3));
    assertThat(other.getMean()).isLessThan(table - 0.2);
    assertThat(other.getStandardDeviation()).isBetween(0.15, 0.3);
  }
}
