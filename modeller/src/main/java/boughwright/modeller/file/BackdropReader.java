// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.file.NumberReader.Range;
import boughwright.modeller.tree.Backdrop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the photos to trace over; the photos themselves are not looked at. */
final class BackdropReader {
  private BackdropReader() {}

  /** All photos of a file that are sound. */
  static List<Backdrop> backdrops(ObjectReader top) {
    List<Backdrop> backdrops = new ArrayList<>();
    for (Value.Fields fields : top.objects("backdrops", Limits.PARTS)) {
      backdrop(new ObjectReader(fields, "backdrop", top.problems())).ifPresent(backdrops::add);
    }
    return backdrops;
  }

  private static Optional<Backdrop> backdrop(ObjectReader object) {
    NumberReader numbers = object.numbers();
    String photo = photo(object);
    double seenFrom =
        numbers.optional("seen_from_azimuth_deg", Quantity.DEGREES, Range.ANY).orElse(0);
    OptionalDouble scale = numbers.optional("mm_per_px", Quantity.MILLIMETRES, Range.POSITIVE);
    Optional<double[]> base = numbers.pixel("base_px");
    if (!object.has("base_px")) {
      object.missing("base_px", "Give [right, down] of the trunk base in the photo, in pixels");
    }
    double shown =
        numbers
            .optional("shown", Quantity.FRACTION, Range.ZERO_TO_ONE)
            .orElse(Backdrop.USUALLY_SHOWN);
    Map<String, Object> extras = object.extras();
    return object.sound()
        ? Optional.of(
            new Backdrop(
                photo, seenFrom, scale, base.orElseThrow()[0], base.get()[1], shown, extras))
        : Optional.empty();
  }

  private static String photo(ObjectReader object) {
    if (!object.has("photo")) {
      object.missing("photo", "Name the picture file, such as front.jpg");
      return "";
    }
    Optional<String> photo = object.text("photo");
    photo
        .flatMap(Backdrop::faultOfPhoto)
        .ifPresent(
            found ->
                object.fault(
                    "photo",
                    "bad-photo-name",
                    "photo " + found,
                    "Put the photo beside the tree file and give its plain name, such as"
                        + " front.jpg"));
    return photo.orElse("");
  }
}
