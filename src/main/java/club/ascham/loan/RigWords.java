package club.ascham.loan;

import club.ascham.bow.RigSpec;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A rig and its weight in the few words that an officer chooses by. */
public final class RigWords {
  private RigWords() {}

  /** {@code 68 in · marked 24 lb · right hand}, as far as it is known. */
  public static String about(RigSpec spec) {
    List<String> words = new ArrayList<>();
    spec.bowLengthIn().ifPresent(inches -> words.add(inches + " in"));
    double markedLb =
        spec.onePiece() != null ? spec.onePiece().markedLb() : spec.limbs().markedLb();
    words.add("marked " + lb(markedLb));
    words.add(spec.hand() == null ? "either hand" : Words.said(spec.hand()) + " hand");
    words.add(
        switch (spec.build()) {
          case ADJUSTABLE -> "adjustable";
          case SCREW_IN -> "screw-in";
          case ONE_PIECE -> "one-piece";
        });
    return String.join(" · ", words);
  }

  /** {@code about 21.5 lb}. */
  public static String weight(WeightOnFingers weight) {
    return "about " + lb(weight.lb());
  }

  public static String lb(double pounds) {
    return String.format(Locale.ROOT, "%.1f", pounds).replace(".0", "") + " lb";
  }
}
