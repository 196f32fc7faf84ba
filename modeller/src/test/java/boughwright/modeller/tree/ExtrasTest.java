// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ExtrasTest {

  @Test
  void copy_keepsNullsAndOrder() {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("z", null);
    fields.put("a", List.of());
    fields.put("m", true);
    assertThat(Extras.copyOf(fields).keySet()).containsExactly("z", "a", "m");
    assertThat(Extras.copyOf(fields)).containsEntry("z", null);
  }

  @Test
  void copy_doesNotChange_whenTheOriginalDoes() {
    List<Object> list = new ArrayList<>(List.of("x"));
    Map<String, Object> inner = new LinkedHashMap<>(Map.of("list", list));
    Map<String, Object> copy = Extras.copyOf(Map.of("inner", inner));
    list.add("y");
    inner.put("more", 1);
    assertThat(copy).isEqualTo(Map.of("inner", Map.of("list", List.of("x"))));
  }

  @Test
  void copy_cannotBeChanged() {
    Map<String, Object> copy = Extras.copyOf(Map.of("inner", Map.of("a", "b")));
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> copy.put("c", "d"));
    @SuppressWarnings("unchecked")
    Map<String, Object> inner = (Map<String, Object>) copy.get("inner");
    assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(inner::clear);
  }
}
