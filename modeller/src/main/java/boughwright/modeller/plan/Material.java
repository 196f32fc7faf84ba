// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a coil or a guy-line is made of; the values are not the modeller's. */
public enum Material {
  COPPER_ANNEALED("copper-annealed", true),
  ALUMINIUM("aluminium", true),
  STEEL_SOFT("steel-soft", true),
  STAINLESS("stainless", true),
  /** Braided polyester cord, for lines only. */
  CORD("cord", false);

  private final String word;
  private final boolean wire;

  Material(String word, boolean wire) {
    this.word = word;
    this.wire = wire;
  }

  /** The word in files and on the command line. */
  public String word() {
    return word;
  }

  /** True for metal wire, which can be coiled. */
  public boolean isWire() {
    return wire;
  }

  public static Optional<Material> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
  }

  /** Words of the materials that can be coiled. */
  public static List<String> wires() {
    return Arrays.stream(values()).filter(Material::isWire).map(Material::word).toList();
  }
}
