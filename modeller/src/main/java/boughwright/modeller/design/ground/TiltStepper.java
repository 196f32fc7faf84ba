// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.ground;

import boughwright.modeller.design.shape.FrontPose;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.geometry.Rotation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Divides a tilt into repottings of which none takes more of the roots than the trade allows. */
final class TiltStepper {
  /** More repottings than this are no plan. Our choice. */
  private static final int MOST = 12;

  /** Tilts looked at between none and all; losses between two of them run steadily enough. */
  private static final int LOOKS = 16;

  private static final int HALVINGS = 12;

  private final RootLosses losses;
  private final RootCare care;
  private final FrontPose pose;

  TiltStepper(RootLosses losses, RootCare care, FrontPose pose) {
    this.losses = losses;
    this.care = care;
    this.pose = pose;
  }

  TiltSteps steps(RootLoss wanted) {
    Optional<TiltSteps.Follow> follow = follow(wanted);
    double tilt = pose.tilt();
    if (wanted.share() <= care.careful()) {
      return new TiltSteps(List.of(tilt), follow);
    }
    double[] shares = new double[LOOKS + 1];
    for (int n = 0; n < LOOKS; n++) {
      shares[n] = share((double) n / LOOKS);
    }
    shares[LOOKS] = wanted.share();
    List<Double> tilts = new ArrayList<>();
    double kept = 1;
    double part = 0;
    while (part < 1 && tilts.size() < MOST) {
      kept *= 1 - care.careful();
      part = farthest(shares, 1 - kept);
      tilts.add(part * tilt);
    }
    return new TiltSteps(part < 1 ? List.of() : tilts, follow);
  }

  private Rotation turn(double part) {
    return new FrontPose(pose.azimuth(), part * pose.tiltRight(), part * pose.tiltToward())
        .toViewer();
  }

  private double share(double part) {
    return losses.share(turn(part));
  }

  /** The largest part of the tilt up to which no more than a share is lost. */
  private double farthest(double[] shares, double most) {
    int n = 0;
    while (n <= LOOKS && shares[n] <= most) {
      n++;
    }
    if (n == 0 || n > LOOKS) {
      return n == 0 ? 0 : 1;
    }
    double good = (n - 1.0) / LOOKS;
    double bad = (double) n / LOOKS;
    for (int h = 0; h < HALVINGS; h++) {
      double middle = (good + bad) / 2;
      if (share(middle) <= most) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return good;
  }

  private Optional<TiltSteps.Follow> follow(RootLoss wanted) {
    if (pose.tilt() == 0) {
      return Optional.empty();
    }
    Stand upright = new Stand(turn(0), losses.foot());
    Stand tilted = new Stand(turn(1), losses.foot());
    List<Root> lost = new ArrayList<>(wanted.lifted());
    wanted.cuts().stream().map(RootCut::root).filter(r -> !lost.contains(r)).forEach(lost::add);
    TiltSteps.Follow worst = null;
    for (Root root : lost) {
      double angle = Math.abs(elevation(root, tilted) - elevation(root, upright));
      double strain = root.caliper() / 2 * angle / root.length();
      if (worst == null || strain > worst.strain()) {
        worst = new TiltSteps.Follow(root, angle, strain);
      }
    }
    return Optional.ofNullable(worst);
  }

  private static double elevation(Root root, Stand stand) {
    Point3 start = stand.at(root.start());
    Point3 tip = stand.at(root.tip());
    return Math.asin((tip.z() - start.z()) / tip.distance(start));
  }
}
