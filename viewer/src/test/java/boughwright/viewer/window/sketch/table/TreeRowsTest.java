// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.table;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.window.sketch.Sketches;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TreeRowsTest {
  private final TreeRows rows = new TreeRows(new Skeleton(Sketches.small().tree()));

  @Test
  void rows_followAsegmentItsBranchesAndThenTheShoot() {
    assertThat(IntStream.range(0, rows.size()).mapToObj(rows::id))
        .isEqualTo(List.of("t1", "b1", "b1b", "t2"));
  }

  @Test
  void generation_countsUnions_notSegments() {
    assertThat(IntStream.range(0, rows.size()).map(row -> rows.get(row).generation()))
        .containsExactly(0, 1, 1, 0);
  }

  @Test
  void rows_holdEverySegmentOnce_inALargeTree() {
    TreeRows large = new TreeRows(new Skeleton(Sketches.large(2000).tree()));

    assertThat(IntStream.range(0, large.size()).mapToObj(large::id).distinct()).hasSize(2000);
  }
}
