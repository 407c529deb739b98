package club.ascham.issue;

import club.ascham.bow.BowLength;
import club.ascham.bow.Candidate;
import club.ascham.bow.Compatibility;
import club.ascham.bow.Hand;
import club.ascham.bow.RigSpec;
import club.ascham.bow.Style;
import club.ascham.bow.Suitability;
import club.ascham.bow.Suited;
import club.ascham.loan.Archer;
import club.ascham.rig.Part;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Parts that lie ready and would make a rig for an archer.
 *
 * @param limbs null: a one-piece bow takes none
 */
record AssemblyOffer(Part body, Part limbs, Part string, RigSpec spec) {
  private static final int AT_MOST = 5;

  /** The page that assembles them. */
  String page() {
    return "/rigs/new?body="
        + body.code()
        + (limbs == null ? "" : "&limbs=" + limbs.code())
        + "&string="
        + string.code();
  }

  String name() {
    return body.code() + (limbs == null ? "" : ", " + limbs.code()) + ", " + string.code();
  }

  /** The best few for this archer, no riser and no pair of limbs named twice. */
  static List<Suited<AssemblyOffer>> suited(Archer archer, Collection<Part> ready) {
    List<Candidate<AssemblyOffer>> candidates = new ArrayList<>();
    for (Part body : ready) {
      if (isBodyFor(body, archer.hand())) {
        addAround(body, ready, candidates);
      }
    }
    List<Suited<AssemblyOffer>> best = new ArrayList<>();
    Set<Part> used = new HashSet<>();
    for (Suited<AssemblyOffer> suited : Suitability.rank(archer.answers(), candidates).suited()) {
      AssemblyOffer offer = suited.rig();
      if (best.size() < AT_MOST && !used.contains(offer.body()) && !used.contains(offer.limbs())) {
        best.add(suited);
        used.add(offer.body());
        if (offer.limbs() != null) {
          used.add(offer.limbs());
        }
      }
    }
    return best;
  }

  private static boolean isBodyFor(Part part, Hand hand) {
    if (part.riser() != null) {
      return part.riser().hand() == hand;
    }
    return part.onePiece() != null
        && (part.onePiece().hand() == null || part.onePiece().hand() == hand);
  }

  private static void addAround(
      Part body, Collection<Part> ready, List<Candidate<AssemblyOffer>> candidates) {
    if (body.onePiece() != null) {
      addStrung(body, null, OptionalInt.of(body.onePiece().bowLengthIn()), ready, candidates);
      return;
    }
    for (Part limbs : ready) {
      if (limbs.limbs() != null && Compatibility.misfits(body.riser(), limbs.limbs()).isEmpty()) {
        addStrung(body, limbs, BowLength.of(body.riser(), limbs.limbs()), ready, candidates);
      }
    }
  }

  /** With the first string that fits: strings of one length are alike to the archer. */
  private static void addStrung(
      Part body,
      Part limbs,
      OptionalInt bowIn,
      Collection<Part> ready,
      List<Candidate<AssemblyOffer>> candidates) {
    for (Part string : ready) {
      if (string.string() == null
          || bowIn.isEmpty()
          || string.string().forBowIn() != bowIn.getAsInt()) {
        continue;
      }
      RigSpec spec =
          new RigSpec(
              body.riser(),
              limbs == null ? null : limbs.limbs(),
              body.onePiece(),
              string.string(),
              Style.SPLIT_FINGER);
      if (Compatibility.misfits(spec).isEmpty()) {
        candidates.add(new Candidate<>(new AssemblyOffer(body, limbs, string, spec), spec, null));
        return;
      }
    }
  }
}
