// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Leaves;
import boughwright.modeller.tree.Pad;
import boughwright.modeller.tree.PadRules;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a tree wears in leaf, and notes where the rules of pads find something. */
final class FoliageReader {
  private static final Pattern FIELD = Pattern.compile("pads\\[(\\d+)]\\.(\\w+)");

  private final List<Pad> pads = new ArrayList<>();
  private final List<ObjectReader> objects = new ArrayList<>();

  private FoliageReader() {}

  /** The foliage; only to be used if the file is sound. */
  static Foliage read(ObjectReader top, Collection<String> segmentIds) {
    return top.object("foliage", "foliage")
        .map(object -> new FoliageReader().foliage(object, segmentIds))
        .orElse(Foliage.UNSAID);
  }

  private Foliage foliage(ObjectReader object, Collection<String> segmentIds) {
    Optional<Leaves> leaves = object.choice("leaves", Leaves.class);
    for (Value.Fields fields : object.objects("pads", Limits.SEGMENTS)) {
      pad(SegmentReader.named(fields, "pad", object.problems()));
    }
    PadRules.findings(segmentIds, pads).forEach(this::note);
    return new Foliage(leaves, pads, object.extras());
  }

  private void pad(ObjectReader object) {
    NumberReader numbers = object.numbers();
    String id = object.id("id");
    String segment = object.id("segment");
    double along = numbers.along("along");
    double length = numbers.required("length_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double width = numbers.required("width_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double thickness = numbers.required("thickness_mm", Quantity.MILLIMETRES, Range.POSITIVE);
    double raised = numbers.optional("raised_mm", Quantity.MILLIMETRES, Range.ANY).orElse(0);
    Map<String, Object> extras = object.extras();
    if (object.sound()) {
      pads.add(new Pad(id, segment, along, length, width, thickness, raised, extras));
      objects.add(object);
    }
  }

  private void note(Finding finding) {
    Matcher field = FIELD.matcher(finding.field());
    if (!field.matches()) {
      throw new IllegalStateException("no field of a pad: " + finding.field());
    }
    ObjectReader object = objects.get(Integer.parseInt(field.group(1)));
    object
        .problems()
        .add(finding.severity(), object.at(field.group(2)), object.subject(), finding.words());
  }
}
