// SPDX-License-Identifier: Apache-2.0
package boughwright.viewer.command;

import boughwright.modeller.design.front.FrontCase;
import boughwright.modeller.design.front.FrontRange;
import boughwright.modeller.design.front.FrontRules;
import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.file.TreeFile;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.FrontMeasure;
import boughwright.modeller.plan.FrontWishes;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.TreeStyle;
import boughwright.modeller.tree.Container;
import boughwright.modeller.tree.Skeleton;
import boughwright.viewer.scene.FrontWords;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads by what fronts are judged: what the person says, over what the file says. */
final class FrontsReading {
  /** Nobody looks at a tree in a container from further up or away [mm]. */
  private static final double FARTHEST = 20_000;

  private static final double LARGEST_WEIGHT = 1000;

  /** Containers are smaller [mm]. */
  private static final double LARGEST_CONTAINER = 5000;

  private final FrontsOptions options;
  private final Faults faults;
  private final OptionValues values;

  FrontsReading(FrontsOptions options, Faults faults) {
    this.options = options;
    this.faults = faults;
    values = new OptionValues(faults);
  }

  /** What is asked; empty, with its faults noted, if it is not clear. */
  Optional<FrontsAnswer.Asked> read(Optional<TreeFile> file) {
    Optional<Plan> plan =
        options.plan == null
            ? Optional.empty()
            : file.flatMap(
                read -> faults.tryTo(() -> PlanChoice.named(read.document(), options.plan)));
    FrontWishes saved =
        file.map(read -> read.document().fronts().wishes()).orElse(FrontWishes.UNSAID);
    FrontWishes wishes = wishes(saved);
    FrontRules rules = FrontRules.of(wishes);
    if (!rules.countsAnything()) {
      faults.add(
          "--weights", "nothing-counts", "every weight is 0", "Give one of them a weight over 0");
    }
    Optional<FrontRange> range = range(rules.style());
    Optional<Container.Size> container = container();
    if (file.isEmpty() || range.isEmpty() || options.plan != null && plan.isEmpty()) {
      return Optional.empty();
    }
    Document document = file.get().document();
    if (plan.isPresent() && FrontCase.isCutAway(new Skeleton(document.tree()), plan.get())) {
      faults.add(
          "--plan",
          "apex-cut",
          "the cuts of plan " + UsageFaults.quoted(options.plan) + " take its trunk base or apex",
          "Move the cut, name another apex in the plan, or leave --plan out");
      return Optional.empty();
    }
    return Optional.of(
        new FrontsAnswer.Asked(
            file.get(),
            plan,
            wishes,
            FrontCase.of(document, plan, wishes).inLeaf(options.inLeaf),
            rules,
            range.get(),
            container));
  }

  /** Inner sizes of a container to try. */
  private Optional<Container.Size> container() {
    if (options.container == null) {
      return Optional.empty();
    }
    String[] parts = options.container.strip().split("\\s*[xX\u00D7]\\s*", -1);
    if (parts.length != 3) {
      faults.add(
          "--container",
          "no-sizes",
          UsageFaults.quoted(options.container) + " is not length, width and depth",
          "Give inner sizes in mm, such as 330x250x110");
      return Optional.empty();
    }
    OptionValues.Range range =
        new OptionValues.Range("--container", 1, LARGEST_CONTAINER, "a size, such as 330");
    OptionalDouble length = values.length(parts[0], range);
    OptionalDouble width = values.length(parts[1], range);
    OptionalDouble depth = values.length(parts[2], range);
    return length.isPresent() && width.isPresent() && depth.isPresent()
        ? Optional.of(
            new Container.Size(length.getAsDouble(), width.getAsDouble(), depth.getAsDouble()))
        : Optional.empty();
  }

  private FrontWishes wishes(FrontWishes saved) {
    Optional<TreeStyle> style = options.style.read(saved.style(), faults);
    OptionalDouble eye = or(length(options.eye, "--eye-mm", -FARTHEST), saved.eyeHeight());
    OptionalDouble distance =
        or(length(options.distance, "--eye-distance-mm", 1), saved.eyeDistance());
    if (options.distance != null && options.eye == null && saved.eyeHeight().isEmpty()) {
      faults.add(
          "--eye-distance-mm",
          "no-eye",
          "the eye is taken level with the middle of the tree, however far away",
          "Add --eye-mm, the height of the eye above the soil line");
    }
    Map<FrontMeasure, Double> weights = new EnumMap<>(FrontMeasure.class);
    weights.putAll(saved.weights());
    weights.putAll(weights());
    return new FrontWishes(style, eye, distance, weights, saved.extras());
  }

  private static OptionalDouble or(OptionalDouble said, OptionalDouble saved) {
    return said.isPresent() ? said : saved;
  }

  private OptionalDouble length(String text, String option, double low) {
    return text == null
        ? OptionalDouble.empty()
        : values.length(
            text, new OptionValues.Range(option, low, FARTHEST, "a length, such as 400"));
  }

  private Map<FrontMeasure, Double> weights() {
    Map<FrontMeasure, Double> weights = new EnumMap<>(FrontMeasure.class);
    if (options.weights == null) {
      return weights;
    }
    for (String part : options.weights.split(",", -1)) {
      String[] sides = part.split("=", -1);
      if (sides.length != 2) {
        faults.add(
            "--weights",
            "no-weight",
            UsageFaults.quoted(part.strip()) + " is no measure with its weight",
            "Write it like movement=2, several with commas between them");
        continue;
      }
      Optional<FrontMeasure> measure = measure(sides[0].strip());
      OptionalDouble weight =
          values.number(
              sides[1],
              new OptionValues.Range("--weights", 0, LARGEST_WEIGHT, "a weight, such as 2"));
      if (measure.isPresent() && weight.isPresent()) {
        weights.put(measure.get(), weight.getAsDouble());
      }
    }
    return weights;
  }

  private Optional<FrontMeasure> measure(String word) {
    String plain = word.toLowerCase(Locale.ROOT).replace('_', '-');
    for (FrontMeasure measure : FrontMeasure.values()) {
      String whole = measure.name().toLowerCase(Locale.ROOT).replace('_', '-');
      if (plain.equals(FrontWords.key(measure)) || plain.equals(whole)) {
        return Optional.of(measure);
      }
    }
    faults.add(
        UsageFaults.noneOf(
            "--weights",
            "unknown-measure",
            word,
            Arrays.stream(FrontMeasure.values()).map(FrontWords::key).toList()));
    return Optional.empty();
  }

  private Optional<FrontRange> range(TreeStyle style) {
    if (options.tilt == null) {
      return Optional.of(FrontRange.usual(style));
    }
    OptionalDouble most =
        values.number(
            options.tilt,
            new OptionValues.Range("--tilt-deg", 0, 90, "the most tilt in degrees, such as 25"));
    return most.isPresent()
        ? Optional.of(FrontRange.square(Math.toRadians(most.getAsDouble())))
        : Optional.empty();
  }

  /** The pose to explain, if one is asked for. */
  Optional<FrontPose> at() {
    if (options.at == null) {
      return Optional.empty();
    }
    String[] parts = options.at.strip().split("\\s*[,;]\\s*", -1);
    if (parts.length != 1 && parts.length != 3) {
      faults.add(
          "--at",
          "no-front",
          UsageFaults.quoted(options.at) + " is neither an azimuth nor an azimuth and two tilts",
          "Give degrees with decimal points, such as 40 or 40,5,-2");
      return Optional.empty();
    }
    double[] degrees = new double[3];
    for (int k = 0; k < parts.length; k++) {
      double most = k == 0 ? 360 : 90;
      OptionalDouble one =
          values.number(
              parts[k],
              new OptionValues.Range(
                  "--at", -most, most, "an azimuth and tilts in degrees, such as 40,5,-2"));
      if (one.isEmpty()) {
        return Optional.empty();
      }
      degrees[k] = Math.toRadians(one.getAsDouble());
    }
    return Optional.of(new FrontPose(degrees[0], degrees[1], degrees[2]));
  }
}
