// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.edit.NewTree;
import boughwright.modeller.edit.SegmentEdits;
import boughwright.modeller.plan.Document;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A program of its own that keeps documents until it is killed, or takes what is left behind. */
public final class RecoveryChild {
  private RecoveryChild() {}

  /** Says a word when it has done what the first argument says, in the folder of the second. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[1]);
    if (arguments[0].equals("take")) {
      List<LeftBehind> left = Recovery.leftBehind(folder);
      System.out.println("ready");
      System.in.read();
      long taken = 0;
      for (LeftBehind one : left) {
        taken += one.take().isPresent() ? 1 : 0;
      }
      System.out.println("took " + taken);
    } else {
      Document document = NewTree.document("Invented larch", "larix-decidua");
      Recovery one = new Recovery(folder);
      Recovery other = new Recovery(folder);
      one.keep(document, Optional.of(folder.resolve("larch.tree.json")));
      other.keep(document, Optional.empty(), Map.of("front.jpg", new byte[] {1, 2, 3}));
      Document changed = SegmentEdits.setCalipers("t1", 0.041, 0.037).of(document);
      one.keep(changed, Optional.of(folder.resolve("larch.tree.json")));
      System.out.println("kept");
    }
    System.out.flush();
    Thread.sleep(600_000);
  }
}
