// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.edit;

import static org.assertj.core.api.Assertions.assertThat;

import boughwright.modeller.geometry.Point3;
import boughwright.modeller.plan.Aid;
import boughwright.modeller.plan.Anchor;
import boughwright.modeller.plan.Document;
import boughwright.modeller.plan.Plan;
import boughwright.modeller.plan.Proposal;
import boughwright.modeller.plan.Spot;
import boughwright.modeller.problem.InputException;
import boughwright.modeller.tree.Joint;
import boughwright.modeller.tree.Segment;
import boughwright.modeller.tree.Skeleton;
import boughwright.modeller.tree.WoodOverride;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What edits of every kind keep, on documents nobody chose. */
class EditPropertiesTest {
  /** A picometre: rounding of doubles of a tree's size, far below any tape [m]. */
  private static final double SAME = 1e-12;

  private static final int DOCUMENTS = 200;

  private static List<Document> documents(long seed) {
    RandomDocuments all = new RandomDocuments(new Random(seed));
    List<Document> documents = new ArrayList<>();
    for (int k = 0; k < DOCUMENTS; k++) {
      documents.add(all.next());
    }
    return documents;
  }

  private static Segment any(Document document, Random random) {
    List<Segment> all = document.tree().segments();
    return all.get(random.nextInt(all.size()));
  }

  private static void assertSame(Point3 found, Point3 expected) {
    assertThat(found.distance(expected)).isLessThan(SAME);
  }

  private static void assertSame(List<Point3> found, List<Point3> expected) {
    assertThat(found).hasSameSizeAs(expected);
    for (int k = 0; k < found.size(); k++) {
      assertSame(found.get(k), expected.get(k));
    }
  }

  private static Map<String, Joint> joints(Document document) {
    Skeleton skeleton = new Skeleton(document.tree());
    Map<String, Joint> joints = new HashMap<>();
    for (int i = 0; i < skeleton.size(); i++) {
      joints.put(skeleton.segment(i).id(), skeleton.joint(i));
    }
    return joints;
  }

  /** Every place the document refers to, in file order, as points; aids as their two ends. */
  private static List<Point3> places(Document document) {
    Skeleton skeleton = new Skeleton(document.tree());
    List<Spot> spots = new ArrayList<>();
    document.tree().wounds().forEach(one -> spots.add(new Spot(one.segment(), one.along())));
    document.tree().pullTests().forEach(one -> spots.add(new Spot(one.segment(), one.along())));
    document
        .tree()
        .foliage()
        .pads()
        .forEach(one -> spots.add(new Spot(one.segment(), one.along())));
    for (Plan plan : document.plans()) {
      spots.addAll(plan.cuts());
      plan.clamp().ifPresent(spots::add);
      for (Proposal one : plan.proposals()) {
        one.guyLines().forEach(line -> spots.add(line.at()));
        one.guyLines().stream()
            .filter(line -> line.anchor() instanceof Anchor.OnTree)
            .forEach(line -> spots.add(((Anchor.OnTree) line.anchor()).spot()));
        one.hungWeights().forEach(weight -> spots.add(weight.at()));
        one.coils().forEach(coil -> spots.addAll(List.of(coil.from(), coil.to())));
        one.handBends().forEach(hand -> spots.add(hand.at()));
      }
    }
    return spots.stream().map(spot -> point(skeleton, spot)).toList();
  }

  private static Point3 point(Skeleton skeleton, Spot spot) {
    return skeleton.point(skeleton.indexOf(spot.segment()), spot.along());
  }

  /** Where the saw and the raffia go: middles of relief cuts, ends of all else, sorted. */
  private static List<Point3> aids(Document document) {
    Skeleton skeleton = new Skeleton(document.tree());
    List<Point3> points = new ArrayList<>();
    for (Plan plan : document.plans()) {
      for (Proposal one : plan.proposals()) {
        one.aids().stream()
            .filter(aid -> aid.kind() == Aid.Kind.RELIEF_CUT)
            .forEach(aid -> cuts(skeleton, aid, points));
      }
    }
    return points;
  }

  private static void cuts(Skeleton skeleton, Aid aid, List<Point3> points) {
    for (int k = 0; k < aid.count(); k++) {
      double along = aid.from() + (aid.to() - aid.from()) * (2 * k + 1) / (2 * aid.count());
      points.add(point(skeleton, new Spot(aid.segment(), along)));
    }
  }

  /** Length of wood that each kind of aid is done to. */
  private static Map<Aid.Kind, Double> stretches(Document document) {
    Skeleton skeleton = new Skeleton(document.tree());
    Map<Aid.Kind, Double> lengths = new HashMap<>();
    for (Plan plan : document.plans()) {
      for (Proposal one : plan.proposals()) {
        one.aids().stream()
            .filter(aid -> aid.kind() != Aid.Kind.RELIEF_CUT)
            .forEach(
                aid ->
                    lengths.merge(
                        aid.kind(),
                        (aid.to() - aid.from()) * skeleton.length(skeleton.indexOf(aid.segment())),
                        Double::sum));
      }
    }
    return lengths;
  }

  private static String wood(Document document, String id) {
    return document
        .tree()
        .overrideFor(id)
        .map(WoodOverride::moe)
        .map(Object::toString)
        .orElse("of the species");
  }

  @Test
  void everythingKeepsItsPlace_whenASegmentIsSplit() throws Exception {
    Random random = new Random(11);
    int split = 0;
    for (Document before : documents(1)) {
      Segment segment = any(before, random);
      double along = Math.round(random.nextDouble() * 20) / 20.0;
      Document after;
      try {
        after = SegmentEdits.split(segment.id(), along, "outer").of(before);
      } catch (InputException e) {
        assertThat(e.problems().get(0).kind())
            .isIn("out-of-range", "split-in-union", "split-in-cut");
        continue;
      }
      split++;
      assertSame(places(after), places(before));
      assertSame(aids(after), aids(before));
      stretches(before)
          .forEach(
              (kind, length) ->
                  assertThat(Math.abs(stretches(after).get(kind) - length)).isLessThan(SAME));
      Map<String, List<Point3>> was = RandomEdits.ends(before);
      Map<String, List<Point3>> is = RandomEdits.ends(after);
      for (String id : was.keySet()) {
        assertSame(is.get(id).get(0), was.get(id).get(0));
        assertSame(is.get(id.equals(segment.id()) ? "outer" : id).get(1), was.get(id).get(1));
      }
      assertThat(joints(after)).containsAllEntriesOf(joints(before));
      assertThat(joints(after)).containsEntry("outer", Joint.CONTINUES);
      assertThat(wood(after, "outer")).isEqualTo(wood(before, segment.id()));
    }
    assertThat(split).isGreaterThan(DOCUMENTS / 2);
  }

  /** Checked at places between the ends: the wood is as thick as it was. */
  @Test
  void woodKeepsItsCaliper_whenASegmentIsSplit() throws Exception {
    Random random = new Random(12);
    int split = 0;
    for (Document before : documents(2)) {
      Segment segment = any(before, random);
      Document after;
      try {
        after = SegmentEdits.split(segment.id(), 0.55, "outer").of(before);
      } catch (InputException e) {
        continue;
      }
      split++;
      Skeleton was = new Skeleton(before.tree());
      Skeleton is = new Skeleton(after.tree());
      int i = was.indexOf(segment.id());
      for (double along = 0.05; along < 1; along += 0.1) {
        boolean inner = along < 0.55;
        int j = is.indexOf(inner ? segment.id() : "outer");
        double part = inner ? along / 0.55 : (along - 0.55) / 0.45;
        assertThat(is.caliper(j, part)).isCloseTo(was.caliper(i, along), byTenthMicron());
      }
    }
    assertThat(split).isGreaterThan(DOCUMENTS / 2);
  }

  private static org.assertj.core.data.Offset<Double> byTenthMicron() {
    return org.assertj.core.data.Offset.offset(1e-7);
  }

  @Test
  void nothingRefersToTheOldName_whenASegmentIsRenamed() throws Exception {
    Random random = new Random(13);
    for (Document before : documents(3)) {
      String old = any(before, random).id();
      Document after = SegmentEdits.rename(old, "zz").of(before);
      assertThat(names(after)).doesNotContain(old);
      assertSame(places(after), places(before));
      assertThat(wood(after, "zz")).isEqualTo(wood(before, old));
      Map<String, Joint> joints = joints(before);
      joints.put("zz", joints.remove(old));
      assertThat(joints(after)).isEqualTo(joints);
      assertThat(SegmentEdits.rename("zz", old).of(after).plans()).isEqualTo(before.plans());
    }
  }

  @Test
  void nothingRefersToWhatIsGone_whenABranchIsDeleted() throws Exception {
    Random random = new Random(14);
    int deleted = 0;
    for (Document before : documents(4)) {
      String id = any(before, random).id();
      if (id.equals("t1")) {
        continue;
      }
      Edit edit = BranchEdits.delete(before, id);
      Document after = edit.of(before);
      deleted++;
      Set<String> left =
          after.tree().segments().stream().map(Segment::id).collect(Collectors.toSet());
      assertThat(left).containsAll(names(after)).doesNotContain(id);
      Map<String, List<Point3>> was = RandomEdits.ends(before);
      RandomEdits.ends(after).forEach((one, ends) -> assertThat(ends).isEqualTo(was.get(one)));
      Map<String, Joint> joints = joints(before);
      joints.keySet().retainAll(left);
      assertThat(joints(after)).isEqualTo(joints);
      left.forEach(one -> assertThat(wood(after, one)).isEqualTo(wood(before, one)));
      int gone = was.size() - left.size();
      assertThat(edit.name()).contains(gone + (gone == 1 ? " segment" : " segments"));
    }
    assertThat(deleted).isGreaterThan(DOCUMENTS / 2);
  }

  /** Every name of a segment that is used anywhere, but for those of the segments themselves. */
  private static Set<String> names(Document document) {
    Set<String> names = new TreeSet<>();
    document.tree().segments().forEach(one -> one.parent().ifPresent(names::add));
    document.tree().wounds().forEach(one -> names.add(one.segment()));
    document.tree().pullTests().forEach(one -> names.add(one.segment()));
    document.tree().foliage().pads().forEach(one -> names.add(one.segment()));
    document.tree().overrides().stream()
        .map(WoodOverride::pattern)
        .filter(pattern -> !pattern.endsWith("*"))
        .forEach(names::add);
    for (Plan plan : document.plans()) {
      plan.cuts().forEach(cut -> names.add(cut.segment()));
      plan.apex().ifPresent(names::add);
      plan.clamp().ifPresent(spot -> names.add(spot.segment()));
      for (Proposal one : plan.proposals()) {
        one.about().ifPresent(names::add);
        one.guyLines().forEach(line -> names.add(line.at().segment()));
        one.guyLines().stream()
            .map(line -> line.anchor())
            .filter(Anchor.OnTree.class::isInstance)
            .forEach(anchor -> names.add(((Anchor.OnTree) anchor).spot().segment()));
        one.hungWeights().forEach(weight -> names.add(weight.at().segment()));
        one.coils().forEach(coil -> names.add(coil.from().segment()));
        one.coils().forEach(coil -> names.add(coil.to().segment()));
        one.handBends().forEach(hand -> names.add(hand.at().segment()));
        one.aids().forEach(aid -> names.add(aid.segment()));
      }
    }
    return names;
  }

  @Test
  void branchHasItsOldShape_whenItIsMirroredTwice() throws Exception {
    Random random = new Random(15);
    int mirrored = 0;
    for (Document before : documents(5)) {
      Segment base = any(before, random);
      if (base.parent().isEmpty()) {
        continue;
      }
      double azimuth = 6 * random.nextDouble();
      Document once = BranchEdits.mirror(base.id(), azimuth).of(before);
      List<Segment> first = added(before, once);
      Document twice = BranchEdits.mirror(first.get(0).id(), azimuth).of(once);
      List<Segment> second = added(once, twice);
      mirrored++;
      assertThat(second).hasSameSizeAs(first);
      List<Segment> original = branch(before, base.id());
      for (int k = 0; k < second.size(); k++) {
        assertSame(second.get(k).end(), original.get(k).end());
        assertThat(second.get(k).caliperEnd()).isEqualTo(original.get(k).caliperEnd());
        if (original.get(k).features().deadFace().isPresent()) {
          double off =
              second.get(k).features().deadFace().get().round()
                  - original.get(k).features().deadFace().get().round();
          assertThat(Math.abs(Math.sin(off / 2))).isLessThan(1e-9);
        }
      }
    }
    assertThat(mirrored).isGreaterThan(DOCUMENTS / 2);
  }

  private static List<Segment> added(Document before, Document after) {
    Set<String> old =
        before.tree().segments().stream().map(Segment::id).collect(Collectors.toSet());
    return after.tree().segments().stream().filter(one -> !old.contains(one.id())).toList();
  }

  private static List<Segment> branch(Document document, String base) {
    Set<String> ids = new TreeSet<>(Set.of(base));
    boolean more = true;
    while (more) {
      more = false;
      for (Segment one : document.tree().segments()) {
        more |= one.parent().filter(ids::contains).isPresent() && ids.add(one.id());
      }
    }
    return document.tree().segments().stream().filter(one -> ids.contains(one.id())).toList();
  }

  /** Turned a whole turn onto its own place, a copy lies on the original. */
  @Test
  void copyLiesOnTheOriginal_whenItIsTurnedOnceRound() throws Exception {
    Random random = new Random(16);
    for (Document before : documents(6)) {
      Segment base = any(before, random);
      if (base.parent().isPresent()) {
        var place = new BranchEdits.BranchPlace(base.parent().get(), base.along());
        Document after = BranchEdits.duplicate(base.id(), place, 2 * Math.PI).of(before);
        List<Segment> copy = added(before, after);
        List<Segment> original = branch(before, base.id());
        assertThat(copy).hasSameSizeAs(original);
        for (int k = 0; k < copy.size(); k++) {
          assertSame(copy.get(k).end(), original.get(k).end());
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 2, 3, 4, 6, 7, 8, 9, 11, 12, 13, 19, 22})
  void pointsOfWhatIsNotTouched_stay(int kind) throws Exception {
    Random random = new Random(kind);
    RandomEdits edits = new RandomEdits(random);
    int made = 0;
    for (Document before : documents(7)) {
      Document after;
      try {
        after = edits.next(before, kind).of(before);
      } catch (InputException e) {
        continue;
      }
      made++;
      Map<String, List<Point3>> was = RandomEdits.ends(before);
      Map<String, List<Point3>> is = RandomEdits.ends(after);
      Set<String> moved = touched(before, after);
      for (String id : was.keySet()) {
        if (!moved.contains(id)) {
          assertSame(is.get(id), was.get(id));
        }
      }
      Map<String, Joint> joints = joints(before);
      if (kind == 4 || kind == 11) {
        moved.stream().limit(kind == 4 ? moved.size() : 0).forEach(joints::remove);
        Optional<String> changed = changedJoint(before, after);
        changed.ifPresent(joints::remove);
      }
      assertThat(joints(after)).containsAllEntriesOf(joints);
    }
    assertThat(made).isGreaterThan(DOCUMENTS / 8);
  }

  private static Optional<String> changedJoint(Document before, Document after) {
    Map<String, Joint> was = joints(before);
    List<String> changed =
        joints(after).entrySet().stream()
            .filter(one -> was.get(one.getKey()) != one.getValue())
            .map(Map.Entry::getKey)
            .toList();
    assertThat(changed).hasSizeLessThanOrEqualTo(1);
    return changed.stream().findFirst();
  }

  /** The first segment, in file order outward, whose record changed, and all that grows on it. */
  private static Set<String> touched(Document before, Document after) {
    Set<String> touched = new TreeSet<>();
    Map<String, Segment> now =
        after.tree().segments().stream().collect(Collectors.toMap(Segment::id, one -> one));
    for (Segment one : before.tree().segments()) {
      if (!now.get(one.id()).equals(one)) {
        branch(before, one.id()).forEach(segment -> touched.add(segment.id()));
        return touched;
      }
    }
    return touched;
  }
}
