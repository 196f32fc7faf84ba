// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import net.miginfocom.layout.ComponentWrapper;
import net.miginfocom.layout.ContainerWrapper;
import net.miginfocom.layout.UnitConverter;
import net.miginfocom.layout.UnitValue;

/** A unit of layouts that grows and shrinks with the text, also while a window is open. */
final class TextUnit extends UnitConverter {
  private static final String NAME = "tx";

  private TextUnit() {}

  /** Makes layouts understand it; once for the program. */
  static void install() {
    for (UnitConverter known : UnitValue.getGlobalUnitConverters()) {
      if (known instanceof TextUnit) {
        return;
      }
    }
    UnitValue.addGlobalUnitConverter(new TextUnit());
  }

  static String of(int usual) {
    return usual + NAME;
  }

  @Override
  public int convertToPixels(
      float value,
      String unit,
      boolean isHor,
      float reference,
      ContainerWrapper parent,
      ComponentWrapper part) {
    return NAME.equals(unit) ? Theme.px(Math.round(value)) : UNABLE;
  }
}
