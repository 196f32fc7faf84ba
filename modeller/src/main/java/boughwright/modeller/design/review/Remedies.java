// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.review;

import boughwright.modeller.tree.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What can be done about a fault: only what makes sense there. */
final class Remedies {
  /** No sacrifice branch makes a trunk thicker than so many times (common practice, no source). */
  private static final double MOST_THICKENING = 1.5;

  private final Structure structure;
  private final Cuts cuts;
  private final Shortening shortening;

  Remedies(Structure structure) {
    this.structure = structure;
    cuts = new Cuts(structure);
    shortening = new Shortening(structure);
  }

  List<Remedy> of(Found found) {
    List<Remedy> out = new ArrayList<>();
    out.add(Remedy.keep());
    if (found.subject() instanceof Found.Subject.Branches branches) {
      ofBranches(found.kind(), branches.shoots(), out);
    } else if (found.subject() instanceof Found.Subject.Place place) {
      shorten(place.shoot(), shortening.before(place.shoot(), place.at()), out);
      remove(List.of(place.shoot()), out);
      bend(place.shoot(), out);
    } else if (found.subject() instanceof Found.Subject.Stretch stretch) {
      ofStretch(found.kind(), stretch, out);
    }
    return out;
  }

  private void ofBranches(FaultKind kind, List<Shoot> shoots, List<Remedy> out) {
    Shoot first = shoots.get(0);
    if (shoots.size() == 1) {
      shorten(first, shortening.usual(first), out);
    }
    remove(shoots, out);
    switch (kind) {
      case TOO_THICK ->
          sacrifice(
              first,
              first.seat().caliper() / structure.limit(Limit.BRANCH_CALIPER),
              below(first),
              out);
      case TOO_LOW, COMPETING_LEADER ->
          sacrifice(
              first,
              structure.height() / structure.limit(Limit.HEIGHT_TO_CALIPER),
              Where.on(structure.main().line(), 0),
              out);
      default -> {}
    }
    if (kind == FaultKind.PARALLEL
        || kind == FaultKind.COMPETING_LEADER
        || kind == FaultKind.BRANCH_AT_VIEWER) {
      bend(first, out);
    }
  }

  private void ofStretch(FaultKind kind, Found.Subject.Stretch stretch, List<Remedy> out) {
    Shoot shoot = stretch.shoot();
    switch (kind) {
      case BARE_STRETCH -> {
        out.add(Remedy.at(Remedy.Action.GRAFT, Where.on(shoot.line(), stretch.middle())));
        if (!shoot.isMain()) {
          shorten(shoot, shortening.into(shoot, stretch.middle()), out);
        }
      }
      case STRAIGHT -> {
        bendStretch(stretch, out);
        shorten(shoot, shortening.before(shoot, stretch.middle()), out);
      }
      case REVERSE_TAPER, SWELLING -> {
        shorten(shoot, shortening.before(shoot, stretch.from()), out);
        thicken(stretch, out);
        if (!structure.isStem(shoot)) {
          remove(List.of(shoot), out);
        }
      }
      default -> bendStretch(stretch, out);
    }
  }

  private void shorten(Shoot shoot, OptionalDouble at, List<Remedy> out) {
    if (at.isPresent()) {
      Aftermath left = cuts.shortening(shoot, at.getAsDouble());
      out.add(Remedy.cutting(Remedy.Action.SHORTEN, left));
    }
  }

  private void remove(List<Shoot> shoots, List<Remedy> out) {
    if (shoots.stream().noneMatch(Shoot::isMain)) {
      out.add(Remedy.cutting(Remedy.Action.REMOVE, cuts.removing(shoots)));
    }
  }

  private void bend(Shoot shoot, List<Remedy> out) {
    if (!shoot.isMain() && shoot.seat().caliper() <= structure.limit(Limit.BENDABLE)) {
      out.add(Remedy.at(Remedy.Action.BEND, Found.mark(shoot)));
    }
  }

  private void bendStretch(Found.Subject.Stretch stretch, List<Remedy> out) {
    if (stretch.caliper() <= structure.limit(Limit.BENDABLE)) {
      out.add(Remedy.at(Remedy.Action.BEND, Where.on(stretch.shoot().line(), stretch.middle())));
    }
  }

  private Where below(Shoot shoot) {
    return Where.on(structure.shoots().get(shoot.seat().on()).line(), shoot.seat().at());
  }

  /** Only where the trunk is not as thick yet, at the place it is measured, and can become so. */
  private void sacrifice(Shoot shoot, double until, Where measured, List<Remedy> out) {
    if (until > measured.caliper() && until <= MOST_THICKENING * measured.caliper()) {
      out.add(Remedy.sacrifice(cuts.removing(List.of(shoot)), until, measured));
    }
  }

  /**
   * The lowest live shoot at or below a pinch may grow until the pinch is as thick as the bulge.
   */
  private void thicken(Found.Subject.Stretch rise, List<Remedy> out) {
    WoodLine line = rise.shoot().line();
    Optional<Shoot> helper =
        structure.on(rise.shoot()).stream()
            .filter(shoot -> shoot.live() && shoot.kind() != Kind.DEADWOOD)
            .filter(shoot -> shoot.seat().at() >= rise.from() && shoot.seat().at() < rise.to())
            .findFirst();
    double until = line.caliper(rise.to());
    helper
        .filter(shoot -> structure.isStem(rise.shoot()))
        .ifPresent(shoot -> sacrifice(shoot, until, Where.on(line, rise.from()), out));
  }
}
