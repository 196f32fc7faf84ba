// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.window.look;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JPanel;

/**
 * A clear panel that is as high as its width lets it be, as text is: layouts around ask for its
 * height only once its width is known.
 *
 * <p>The toolkit keeps the sizes of what is laid out, but not of what waits for it, and a layout
 * asks each part for several sizes: through panels within panels that multiplies at every level. So
 * while one size is worked out, what is known of the panels in it is kept.
 */
public class HighAsWide extends JPanel {
  private static final long serialVersionUID = 1L;

  /** Sizes known while one is worked out; the lock of the toolkit's tree is that of these too. */
  private static final Map<HighAsWide, Dimension> PREFERRED = new IdentityHashMap<>();

  private static final Map<HighAsWide, Dimension> LEAST = new IdentityHashMap<>();
  private static int deep;

  /**
   * @param layout null where it comes later
   */
  public HighAsWide(LayoutManager layout) {
    super(layout);
    setOpaque(false);
    putClientProperty("migLayout.dynamicAspectRatio", true);
  }

  @Override
  public Dimension getPreferredSize() {
    return once(PREFERRED, super::getPreferredSize);
  }

  @Override
  public Dimension getMinimumSize() {
    return once(LEAST, super::getMinimumSize);
  }

  private Dimension once(Map<HighAsWide, Dimension> known, Supplier<Dimension> working) {
    synchronized (getTreeLock()) {
      Dimension size = known.get(this);
      if (size == null) {
        deep++;
        try {
          size = working.get();
          known.put(this, size);
        } finally {
          deep--;
          if (deep == 0) {
            PREFERRED.clear();
            LEAST.clear();
          }
        }
      }
      return new Dimension(size);
    }
  }
}
