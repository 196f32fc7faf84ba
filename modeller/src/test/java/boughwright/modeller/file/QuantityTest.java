// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {
  private static final int TRIES = 3_000;

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void decimalOf15Digits_comesBack_asItWas(Quantity quantity) {
    Random random = new Random(1);
    for (int i = 0; i < TRIES; i++) {
      BigDecimal decimal =
          new BigDecimal(random.nextDouble() * 10 - 5)
              .scaleByPowerOfTen(random.nextInt(9) - 4)
              .round(new MathContext(1 + random.nextInt(15)));
      BigDecimal back = quantity.fromSi(quantity.toSi(decimal.toString()));
      assertThat(back).isEqualByComparingTo(decimal);
    }
  }

  @ParameterizedTest
  @EnumSource(Quantity.class)
  void double_comesBack_asItWas(Quantity quantity) {
    Random random = new Random(2);
    for (int i = 0; i < TRIES; i++) {
      double value = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(value) && Math.abs(value) < 1e290 && Math.abs(value) > 1e-290) {
        assertThat(quantity.toSi(quantity.fromSi(value).toString())).isEqualTo(value);
      }
    }
  }

  /** By hand; the degree from pi = 3.14159265358979. */
  @ParameterizedTest
  @CsvSource({
    "MILLIMETRES, 58, 0.058",
    "MILLIMETRES, 150.1, 0.1501",
    "MILLIMETRES, -1e-3, -1e-6",
    "DEGREES, 180, 3.14159265358979",
    "DEGREES, 60, 1.0471975511966",
    "GIGAPASCALS, 4.1, 4.1e9",
    "NEWTONS, 25, 25",
    "KILOGRAMS, 0.2, 0.2",
    "FRACTION, 0.85, 0.85"
  })
  void unit_becomesSi(Quantity quantity, String digits, double si) {
    double printedDigits = 5e-15 * Math.max(1, Math.abs(si));
    assertThat(quantity.toSi(digits))
        .isCloseTo(si, org.assertj.core.data.Offset.offset(printedDigits));
  }

  @ParameterizedTest
  @CsvSource({"1e999, Infinity", "-1e999, -Infinity", "1e-999, 0", "-0.0, 0", "0e99999999999, 0"})
  void numberBeyondDoubles_isInfiniteOrZero(String digits, double expected) {
    for (Quantity quantity : Quantity.values()) {
      assertThat(quantity.toSi(digits)).isEqualTo(expected);
    }
  }
}
