package club.ascham.rig;

import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.form.Words;
import club.ascham.units.LengthText;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Parts and rigs in a few words, as they stand in lists. */
public final class PartWords {
  private PartWords() {}

  /** What decides about fitting it: {@code right · 25 in · ILF}. */
  public static String facts(Part part) {
    if (part.riser() != null) {
      return riser(part.riser());
    }
    if (part.limbs() != null) {
      return limbs(part.limbs());
    }
    return part.onePiece() != null ? onePiece(part.onePiece()) : string(part.string());
  }

  /** {@code right-handed · 68 in · 22 lb}. */
  public static String rig(RigSpec rig) {
    List<String> words = new ArrayList<>();
    words.add(hand(rig.hand()));
    rig.bowLengthIn().ifPresent(length -> words.add(length + " in"));
    words.add(pounds(rig.onePiece() != null ? rig.onePiece().markedLb() : rig.limbs().markedLb()));
    return joined(words.stream());
  }

  static String hand(Hand hand) {
    return hand == null ? "either hand" : Words.said(hand) + "-handed";
  }

  static String pounds(double lb) {
    return (lb == Math.rint(lb) ? Long.toString((long) lb) : Double.toString(lb)) + " lb";
  }

  private static String riser(RiserSpec riser) {
    return joined(
        Stream.of(
            hand(riser.hand()),
            riser.lengthIn() + " in",
            riser.fitting() != null ? riser.fitting() : "for " + riser.limbModel() + " limbs"));
  }

  private static String limbs(LimbsSpec limbs) {
    return joined(
        Stream.of(
            limbs.bowLengthIn() != null
                ? "for " + limbs.bowLengthIn() + " in"
                : Words.said(limbs.size()),
            marked(limbs.markedLb(), limbs.markedAtIn()),
            limbs.fitting(),
            limbs.hmpeTips() == Known.YES ? "tips fit for HMPE" : null));
  }

  private static String onePiece(OnePieceSpec bow) {
    return joined(
        Stream.of(
            hand(bow.hand()), bow.bowLengthIn() + " in", marked(bow.markedLb(), bow.markedAtIn())));
  }

  private static String string(StringSpec string) {
    return joined(
        Stream.of(
            "for " + string.forBowIn() + " in",
            switch (string.material()) {
              case POLYESTER, OTHER -> Words.said(string.material());
              case HMPE, LCP -> string.material().name();
            },
            string.strands() == null ? null : string.strands() + " strands",
            string.measured() == null ? null : "measures " + LengthText.both(string.measured())));
  }

  private static String marked(double lb, double atIn) {
    long in = Math.round(atIn);
    return pounds(lb) + (in == 28 ? "" : " at " + in + " in");
  }

  private static String joined(Stream<String> words) {
    return words.filter(Objects::nonNull).collect(Collectors.joining(" · "));
  }
}
