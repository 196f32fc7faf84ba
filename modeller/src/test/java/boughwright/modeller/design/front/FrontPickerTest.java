// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FrontPickerTest {
  /** Two hills, at 10 and at 30 of 40: both come before the flanks, though one is low. */
  @Test
  void topsComeFirst_flanksFillUp() {
    double[] best =
        IntStream.range(0, 40)
            .mapToDouble(n -> Math.max(10 - 0.1 * Math.abs(n - 10), 8.5 - Math.abs(n - 30)))
            .toArray();
    List<FrontPicker.Side> sides = new FrontPicker(best, 6).pick(4);
    assertThat(sides).contains(new FrontPicker.Side(10, true), new FrontPicker.Side(30, true));
    assertThat(sides.get(0).azimuth()).isEqualTo(10);
    assertThat(sides.stream().filter(side -> !side.top()).map(FrontPicker.Side::azimuth))
        .containsExactlyInAnyOrder(4, 16);
  }

  @Test
  void pickedSides_areApart_andTheBestComesFirst() {
    Random random = new Random(3);
    for (int n = 0; n < 200; n++) {
      double[] best = random.doubles(72).toArray();
      List<FrontPicker.Side> sides = new FrontPicker(best, 6).pick(5);
      assertThat(sides).hasSize(5);
      assertThat(best[sides.get(0).azimuth()]).isEqualTo(Arrays.stream(best).max().orElseThrow());
      for (FrontPicker.Side one : sides) {
        for (FrontPicker.Side other : sides) {
          int round = Math.abs(one.azimuth() - other.azimuth());
          assertThat(one == other || Math.min(round, 72 - round) >= 6).isTrue();
        }
      }
    }
  }

  /** What is open is enough: whatever the scores known nearly turn out to be, the picks stand. */
  @Test
  void azimuthsThatAreNotOpen_cannotChangeThePicks() {
    Random random = new Random(4);
    double doubt = 0.04;
    for (int n = 0; n < 200; n++) {
      double[] truth = new double[60];
      double[] near = new double[60];
      double phase = 6 * random.nextDouble();
      for (int k = 0; k < truth.length; k++) {
        truth[k] =
            Math.sin(0.21 * k + phase) + 0.3 * Math.sin(0.73 * k) + 0.1 * random.nextDouble();
        near[k] = truth[k] + doubt / 2 * (2 * random.nextDouble() - 1);
      }
      double[] off = new double[truth.length];
      Arrays.fill(off, doubt / 2);
      for (int[] open = open(near, off); open.length > 0; open = open(near, off)) {
        for (int azimuth : open) {
          // Some are known better first, and truly when they are asked for again.
          boolean nearly = off[azimuth] == doubt / 2 && random.nextBoolean();
          off[azimuth] = nearly ? doubt / 10 : 0;
          near[azimuth] = truth[azimuth] + off[azimuth] * (2 * random.nextDouble() - 1);
        }
      }
      assertThat(azimuths(near)).isEqualTo(azimuths(truth));
    }
  }

  private static int[] open(double[] near, double[] off) {
    FrontMayBe.Range[] ranges = new FrontMayBe.Range[near.length];
    Arrays.setAll(ranges, n -> new FrontMayBe.Range(near[n], near[n] - off[n], near[n] + off[n]));
    return Arrays.stream(new FrontMayBe(5).open(ranges)).filter(n -> off[n] > 0).toArray();
  }

  private static List<Integer> azimuths(double[] best) {
    return new FrontPicker(best, 5)
        .pick(5).stream().map(FrontPicker.Side::azimuth).collect(Collectors.toList());
  }
}
