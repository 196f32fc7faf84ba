// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import boughwright.modeller.tree.Finding;
import boughwright.modeller.tree.Finding.Words;
import boughwright.modeller.tree.Foliage;
import boughwright.modeller.tree.Link;
import boughwright.modeller.tree.PullTest;
import boughwright.modeller.tree.Response;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.TreeRules;
import boughwright.modeller.tree.WoodOverride;
import boughwright.modeller.tree.Wound;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Segments, wounds and overrides of a file, with the objects they came from: reads them all, then
 * asks the tree's own rules and says where in the file each finding is.
 */
final class TreeParts {
  private static final Pattern ELEMENT = Pattern.compile("(segments|wounds)\\[(\\d+)]\\.(\\w+)");

  private final ObjectReader top;
  private final List<Segment> segments = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<ObjectReader> segmentObjects = new ArrayList<>();
  private final List<Wound> wounds = new ArrayList<>();
  private final List<ObjectReader> woundObjects = new ArrayList<>();
  private final List<WoodOverride> overrides;
  private List<PullTest> pullTests = List.of();
  private Foliage foliage = Foliage.UNSAID;
  private final Set<String> ids = new LinkedHashSet<>();

  private TreeParts(ObjectReader top, Response usual) {
    this.top = top;
    readSegments();
    for (Value.Fields fields : top.objects("wounds", Limits.SEGMENTS)) {
      ObjectReader object = SegmentReader.named(fields, "wound", top.problems());
      SegmentReader.wound(object)
          .ifPresent(
              wound -> {
                wounds.add(wound);
                woundObjects.add(object);
              });
    }
    this.overrides = WoodReader.overrides(top, usual);
  }

  static TreeParts read(ObjectReader top, OptionalDouble bark, Response usual) {
    TreeParts parts = new TreeParts(top, usual);
    parts.judge(bark);
    parts.pullTests = PullTestReader.read(top, parts.ids);
    parts.foliage = FoliageReader.read(top, parts.ids);
    return parts;
  }

  List<Segment> segments() {
    return segments;
  }

  List<Wound> wounds() {
    return wounds;
  }

  List<WoodOverride> overrides() {
    return overrides;
  }

  List<PullTest> pullTests() {
    return pullTests;
  }

  Foliage foliage() {
    return foliage;
  }

  /** Ids of all segments that have one, sound or not. */
  Set<String> ids() {
    return ids;
  }

  private void readSegments() {
    if (!top.has("segments")) {
      top.missing("segments", "Measure at least the trunk and list it here");
      return;
    }
    for (Value.Fields fields : top.objects("segments", Limits.SEGMENTS)) {
      ObjectReader object = SegmentReader.named(fields, "segment", top.problems());
      segmentObjects.add(object);
      Optional<Segment> segment = SegmentReader.segment(object);
      segment.ifPresent(segments::add);
      Link link =
          segment
              .map(s -> new Link(s.id(), s.parent()))
              .orElseGet(() -> SegmentReader.link(fields));
      links.add(link);
      ids.add(link.id());
    }
  }

  private void judge(OptionalDouble bark) {
    if (!top.sound() && segmentObjects.isEmpty()) {
      return;
    }
    boolean all = segments.size() == segmentObjects.size() && top.sound();
    List<Finding> findings = new ArrayList<>();
    if (all) {
      findings.addAll(TreeRules.findings(segments, wounds, bark));
    } else {
      findings.addAll(TreeRules.linkFindings(links));
      findings.addAll(TreeRules.woundFindings(ids, wounds));
    }
    findings.addAll(TreeRules.woodFindings(ids, overrides));
    findings.forEach(this::note);
  }

  private void note(Finding finding) {
    Words words = finding.words();
    Matcher element = ELEMENT.matcher(finding.field());
    if (element.matches()) {
      List<ObjectReader> objects =
          element.group(1).equals("segments") ? segmentObjects : woundObjects;
      ObjectReader object = objects.get(Integer.parseInt(element.group(2)));
      top.problems().add(finding.severity(), object.at(element.group(3)), object.subject(), words);
    } else if (finding.field().startsWith("wood.")) {
      String pattern = finding.field().substring("wood.".length());
      Value wood = top.at("wood");
      Value at =
          wood instanceof Value.Fields fields ? fields.members().getOrDefault(pattern, wood) : wood;
      top.problems().add(finding.severity(), at, "wood \"" + pattern + "\"", words);
    } else {
      top.problems().add(finding.severity(), top.at(finding.field()), "", words);
    }
  }
}
