// SPDX-License-Identifier: Apache-2.0
package boughwright.physics.hold;

import boughwright.modeller.plan.Material;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The metal of a soft wire.
 *
 * @param material what it is
 * @param moe modulus of elasticity [Pa]
 * @param poisson Poisson's ratio [1]
 * @param yield stress at which it begins to flow as sold [Pa]
 * @param hardening Hollomon's K: flow stress is K times strain to the power n [Pa]
 * @param exponent Hollomon's n [1]
 * @param density [kg/m3]
 * @param doubt how far its strength may be from that, nine in ten
 * @param source where the values come from
 */
public record WireMetal(
    Material material,
    double moe,
    double poisson,
    double yield,
    double hardening,
    double exponent,
    double density,
    Doubt doubt,
    String source) {

  /**
   * Nine wires in ten hold between these parts of the best guess: batches differ, and the
   * Bauschinger effect, by which metal that was bent one way yields early the other way, is not in
   * the law (assumption, no narrower than the strengths the standards allow).
   *
   * @param low part of the strength [1]
   * @param high part of the strength [1]
   */
  public record Doubt(double low, double high) {
    public Doubt {
      if (!(low > 0 && low <= 1 && high >= 1)) {
        throw new IllegalArgumentException("parts lie about 1, not " + low + ", " + high);
      }
    }
  }

  private static final Map<Material, WireMetal> BUNDLED = new EnumMap<>(Material.class);

  static {
    read();
  }

  public WireMetal {
    Objects.requireNonNull(material, "material");
    if (!(moe > 0 && yield > 0 && hardening > 0 && density > 0)
        || !(poisson > 0 && poisson < 0.5)
        || !(exponent >= 0 && exponent < 1)) {
      throw new IllegalArgumentException("no metal: " + material);
    }
    Objects.requireNonNull(doubt, "doubt");
    Objects.requireNonNull(source, "source");
  }

  /**
   * The values of a metal.
   *
   * @throws IllegalArgumentException if the material is no wire
   */
  public static WireMetal of(Material material) {
    WireMetal metal = BUNDLED.get(material);
    if (metal == null) {
      throw new IllegalArgumentException(material.word() + " is no wire");
    }
    return metal;
  }

  /** Flow stress after a plastic strain, at least that of the wire as sold [Pa]. */
  public double flowStress(double strain) {
    return Math.max(yield, hardening * Math.pow(Math.abs(strain), exponent));
  }

  private static void read() {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try (InputStream in = WireMetal.class.getResourceAsStream("wire.csv");
        Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      for (CSVRecord row : format.parse(reader)) {
        WireMetal metal = metal(row);
        BUNDLED.put(metal.material, metal);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the table of wires cannot be read", e);
    }
  }

  private static WireMetal metal(CSVRecord row) {
    return new WireMetal(
        Material.of(row.get("material")).orElseThrow(),
        1e9 * number(row, "E_GPa"),
        number(row, "poisson"),
        1e6 * number(row, "yield_MPa"),
        1e6 * number(row, "K_MPa"),
        number(row, "n"),
        number(row, "density_kg_m3"),
        new Doubt(number(row, "low"), number(row, "high")),
        row.get("source"));
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }
}
