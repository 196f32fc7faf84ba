// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.design.front;

import boughwright.modeller.design.shape.CutFace;
import boughwright.modeller.design.shape.Frustum;
import boughwright.modeller.design.shape.TrunkLine;
import boughwright.modeller.design.shape.WoodLeft;
import boughwright.modeller.geometry.Point3;
import boughwright.modeller.tree.Kind;
import boughwright.modeller.tree.Skeleton;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The pieces of wood a front is judged by, and what each is to the picture. Immutable.
 *
 * <p>Sacrifice wood is left out with all that sits on it: it is to go, and leaves a face as if it
 * were cut today. Unless the trunk line itself runs on it.
 */
final class Parts {
  /** What a piece is to the picture. */
  enum Role {
    /** Part of the line from the base to the apex. */
    TRUNK,
    BRANCH,
    ROOT,
    DEADWOOD
  }

  static final int NO_BRANCH = -1;

  /** Stands for the piece of a segment that is left out. */
  static final int NO_PIECE = -1;

  final Point3 base;
  final List<Frustum> pieces = new ArrayList<>();
  final List<Role> roles = new ArrayList<>();

  /** What the cuts leave, and what sacrifice wood is to leave. */
  final List<CutFace> faces;

  /** Branches that start on the trunk line; each entry is where one starts [m, tree frame]. */
  final List<Point3> branchStarts = new ArrayList<>();

  /** Shape: one per piece; the branch on the trunk line it belongs to, or {@link #NO_BRANCH}. */
  final int[] branchOf;

  /** Shape: one per piece; true for wood that ends at the soil line: roots and the trunk base. */
  final boolean[] inSoil;

  /** Profile area of the trunk line: its pieces laid flat [m2]. */
  final double trunkProfile;

  /** Distance of the farthest end of wood, roots apart, from the trunk base [m]. */
  final double size;

  Parts(FrontSubject subject) {
    WoodLeft wood = subject.wood();
    Skeleton skeleton = wood.skeleton();
    base = subject.trunk().points().get(0);
    Role[] roleOf = roles(subject);
    for (Frustum piece : wood.pieces()) {
      if (roleOf[piece.segment()] != null && piece.length() > 0) {
        pieces.add(piece);
        roles.add(roleOf[piece.segment()]);
      }
    }
    faces = faces(wood, roleOf);
    branchOf = branches(skeleton, subject.trunk());
    inSoil = new boolean[pieces.size()];
    double profile = 0;
    double far = 0;
    for (int p = 0; p < pieces.size(); p++) {
      Frustum piece = pieces.get(p);
      inSoil[p] = roles.get(p) == Role.ROOT || piece.segment() == skeleton.outward(0);
      profile += roles.get(p) == Role.TRUNK ? profile(piece) : 0;
      far = roles.get(p) == Role.ROOT ? far : Math.max(far, piece.end().distance(base));
    }
    trunkProfile = profile;
    size = far;
  }

  /** Shape: one per segment; null for what is left out. */
  private static Role[] roles(FrontSubject subject) {
    Skeleton skeleton = subject.wood().skeleton();
    Role[] out = new Role[skeleton.size()];
    boolean[] leftOut = new boolean[skeleton.size()];
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      int parent = skeleton.parent(i);
      Kind kind = skeleton.segment(i).kind();
      boolean onLine = subject.trunk().segments().contains(i);
      leftOut[i] =
          !onLine && (kind == Kind.SACRIFICE || parent != Skeleton.NONE && leftOut[parent]);
      if (onLine) {
        out[i] = Role.TRUNK;
      } else if (!leftOut[i]) {
        out[i] =
            switch (kind) {
              case ROOT -> Role.ROOT;
              case DEADWOOD -> Role.DEADWOOD;
              default -> Role.BRANCH;
            };
      }
    }
    return out;
  }

  private static List<CutFace> faces(WoodLeft wood, Role[] roleOf) {
    Skeleton skeleton = wood.skeleton();
    List<CutFace> faces = new ArrayList<>(wood.faces());
    for (Frustum piece : wood.pieces()) {
      int parent = skeleton.parent(piece.segment());
      if (roleOf[piece.segment()] == null && parent != Skeleton.NONE && roleOf[parent] != null) {
        faces.add(CutFace.ofWhole(skeleton, piece.segment()));
      }
    }
    return faces;
  }

  private int[] branches(Skeleton skeleton, TrunkLine trunk) {
    int[] head = new int[skeleton.size()];
    int[] index = new int[skeleton.size()];
    Arrays.fill(index, NO_BRANCH);
    for (int n = 0; n < skeleton.size(); n++) {
      int i = skeleton.outward(n);
      int parent = skeleton.parent(i);
      boolean starts = parent == Skeleton.NONE || trunk.segments().contains(parent);
      head[i] = starts ? i : head[parent];
    }
    int[] out = new int[pieces.size()];
    Arrays.fill(out, NO_BRANCH);
    for (int p = 0; p < out.length; p++) {
      if (roles.get(p) == Role.BRANCH) {
        int first = head[pieces.get(p).segment()];
        if (index[first] == NO_BRANCH) {
          index[first] = branchStarts.size();
          branchStarts.add(skeleton.start(first));
        }
        out[p] = index[first];
      }
    }
    return out;
  }

  /** Area of a piece seen square from the side, without its ends [m2]. */
  static double profile(Frustum piece) {
    return piece.length() * (piece.startRadius() + piece.endRadius());
  }

  /** The piece of a segment, or {@link #NO_PIECE}. */
  int pieceOf(int segment) {
    for (int p = 0; p < pieces.size(); p++) {
      if (pieces.get(p).segment() == segment) {
        return p;
      }
    }
    return NO_PIECE;
  }

  int count() {
    return pieces.size();
  }
}
