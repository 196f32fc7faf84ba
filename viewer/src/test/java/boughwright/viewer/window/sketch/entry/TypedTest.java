// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.sketch.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.units.LengthUnit;
import org.junit.jupiter.api.Test;

class TypedTest {
  private static Typed typed(String text) {
    return new Typed("Length", text);
  }

  @Test
  void length_readsTheUnitBesideIt_beforeThatOfTheColumn() throws InputException {
    assertThat(typed("3,5 cm").length(LengthUnit.MILLIMETRE)).isCloseTo(0.035, within(1e-12));
    assertThat(typed("1 1/2 in").length(LengthUnit.MILLIMETRE)).isCloseTo(0.0381, within(1e-12));
    assertThat(typed("12.5").length(LengthUnit.MILLIMETRE)).isCloseTo(0.0125, within(1e-12));
  }

  @Test
  void length_isRefusedInOneLine_whenItIsNothing() {
    for (String text : new String[] {"0", "-4", "", "thick", "1e3"}) {
      assertThatThrownBy(() -> typed(text).length(LengthUnit.MILLIMETRE))
          .as(text)
          .isInstanceOfSatisfying(
              InputException.class, refused -> assertThat(refused.problems()).hasSize(1))
          .hasMessageStartingWith("Length: ");
    }
  }

  @Test
  void elevation_isRefused_pastPlumb() {
    assertThatThrownBy(() -> typed("91").elevation()).hasMessageContaining("past plumb");
  }

  @Test
  void azimuth_isTurnedIntoOneRound_whenNegative() throws InputException {
    assertThat(Math.toDegrees(typed("-90").azimuth())).isCloseTo(270, within(1e-9));
  }

  @Test
  void along_readsFractionAndPercent() throws InputException {
    assertThat(typed("0.25").along()).isEqualTo(0.25);
    assertThat(typed("25 %").along()).isEqualTo(0.25);
    assertThatThrownBy(() -> typed("1.2").along()).hasMessageContaining("not on the segment");
  }

  @Test
  void oneOf_takesTheBeginningOfAword() throws InputException {
    assertThat(typed("sac").oneOf(Kind.values())).isEqualTo(Kind.SACRIFICE);
    assertThatThrownBy(() -> typed("twig").oneOf(Kind.values()))
        .hasMessageContaining("trunk, branch, root, sacrifice, deadwood");
  }
}
