package club.ascham.bow;

import club.ascham.units.Length;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a whole rig should measure.
 *
 * @param brace height, from the point the set-up names
 * @param tiller upper minus lower; signed
 * @param nocking height of the nocking point above square
 */
public record Targets(Target brace, Target tiller, Target nocking) {
  /** Care tolerance of a stated brace height, as one bowyer has it. */
  static final Length BRACE_CARE = Length.ofMm(10);

  private static final String BRACE_CARE_SOURCE =
      "10 mm either way is a care tolerance (" + InPrint.BOWYER + ")";

  /** The window that a recurve maker's manual asks for. */
  private static final Band NOCKING_WINDOW = Band.ofInches(0, 0.5);

  /**
   * The targets of one rig. Brace: the maker's own range first, else the club's own for this bow,
   * else the table in force; where none of them speaks there is no inner band, and the set-up
   * figure with a care tolerance either way is the outer one. Tiller goes by the style where limb
   * bolts set it. A figure that rests on judgement says so in its basis.
   *
   * @param inForce the brace table the club has put in force
   * @param clubBrace the club's own brace range for this bow; null: none entered
   * @param setUp what the rig measured when its set-up was finished; null: not set up yet
   */
  public static Targets of(RigSpec rig, BraceTable inForce, Band clubBrace, SetUpFigures setUp) {
    return new Targets(
        brace(rig, inForce, clubBrace, setUp),
        rig.tillerAdjusts() ? tillerSetByBolts(rig.style()) : tillerFixed(),
        nockingPoint());
  }

  /**
   * The same where nothing sets the tiller: one that has moved from its set-up figure by more than
   * readers differ lies outside.
   *
   * @param setUp what the rig measured when its set-up was finished
   * @param scatter how far two readings may lie apart without a change
   */
  public Targets withFixedTiller(RigSpec rig, SetUpFigures setUp, Length scatter) {
    if (rig.tillerAdjusts()) {
      return this;
    }
    Length figure = setUp.tiller();
    Band whole = tiller.outer();
    Length low = Collections.max(List.of(whole.low(), figure.minus(scatter)));
    Length high = Collections.min(List.of(whole.high(), figure.plus(scatter)));
    // A set-up figure that no bow should have leaves the whole band: it lies outside that too.
    Band outer = low.compareTo(high) > 0 ? whole : new Band(low, high);
    return new Targets(brace, new Target(tiller.inner(), outer, tiller.basis()), nocking);
  }

  /**
   * Where to try the nocking point first: as high above square as the tiller is positive, kept
   * within the published window. Common practice; no published source.
   *
   * @param tiller upper minus lower
   */
  public static Length nockingStart(Length tiller) {
    if (tiller.compareTo(NOCKING_WINDOW.low()) < 0) {
      return NOCKING_WINDOW.low();
    }
    return tiller.compareTo(NOCKING_WINDOW.high()) > 0 ? NOCKING_WINDOW.high() : tiller;
  }

  private static Target brace(RigSpec rig, BraceTable inForce, Band clubBrace, SetUpFigures setUp) {
    String from = measuredFrom(setUp);
    Band maker = rig.makerBrace();
    if (maker != null) {
      return known(maker, "The maker's own range for these limbs, which beats any table.", from);
    }
    if (clubBrace != null) {
      return known(clubBrace, "The club's own range for this bow.", from);
    }
    OptionalInt bowIn = rig.bowLengthIn();
    Optional<Band> table = bowIn.isPresent() ? inForce.band(bowIn.getAsInt()) : Optional.empty();
    if (table.isPresent()) {
      return known(table.get(), "The table in force at this club: " + inForce.source(), from);
    }
    String silent =
        bowIn.isPresent()
            ? "Neither the maker's range nor the table in force speaks for a bow of "
                + bowIn.getAsInt()
                + " in."
            : "The bow length is not known, so no table speaks.";
    if (setUp == null || setUp.brace() == null) {
      return new Target(
          null, null, silent + " Enter the maker's or the club's own range, or set the rig up.");
    }
    return new Target(
        null,
        Band.around(setUp.brace(), BRACE_CARE),
        silent
            + " The outer band is the set-up figure and "
            + BRACE_CARE_SOURCE
            + "; there is none to aim for."
            + from);
  }

  private static Target known(Band inner, String whose, String from) {
    return new Target(
        inner,
        inner.widenedBy(BRACE_CARE),
        whose
            + " Beyond the outer band something is wrong: "
            + BRACE_CARE_SOURCE
            + " (our judgement)."
            + from);
  }

  private static String measuredFrom(SetUpFigures setUp) {
    return setUp != null && setUp.braceFrom() == BracePoint.BUTTON
        ? " Ranges are given from the throat of the grip, which on most risers lies nearly under"
            + " the button that this rig is measured from."
        : "";
  }

  /** What a tiller that limb bolts set should be, by how the string is held. */
  public static Target tillerSetByBolts(Style style) {
    return switch (style) {
      case SPLIT_FINGER ->
          new Target(
              Band.ofMm(0, 6),
              Band.ofMm(-4, 10),
              "Split finger: 0 to +6 mm ("
                  + InPrint.TILLER_ARTICLE
                  + "); +1/8 to +1/4 in is the usual choice ("
                  + InPrint.TILLER_CLUB
                  + "). Beyond -4 mm (our judgement) or +10 mm ("
                  + InPrint.BOWYER
                  + ") something is wrong.");
      case THREE_UNDER ->
          new Target(
              Band.ofMm(-2, 2),
              Band.ofMm(-6, 10),
              "Three fingers under: an even tiller is often used (common practice); 2 mm either way"
                  + " is our judgement, and so is -6 mm. Beyond it or +10 mm ("
                  + InPrint.BOWYER
                  + ") something is wrong.");
      case STRING_WALKING ->
          new Target(
              Band.ofMm(-6, 0),
              Band.ofMm(-10, 4),
              "String walking: a negative tiller is common ("
                  + InPrint.TILLER_ARTICLE
                  + "); how far is our judgement, as the outer band is.");
    };
  }

  private static Target tillerFixed() {
    return new Target(
        null,
        Band.ofMm(0, 10),
        "This bow's tiller can't be set, so there is no band to aim for. A negative tiller, or more"
            + " than +10 mm, is a matter for a bowyer ("
            + InPrint.BOWYER
            + "); so is one that has moved from its set-up figure.");
  }

  private static Target nockingPoint() {
    return new Target(
        NOCKING_WINDOW,
        null,
        "0 to 1/2 in above square ("
            + InPrint.MAKER_MANUAL
            + "). Start as high as the tiller is positive (common practice). Outside the window the"
            + " point is tied again; no figure is published beyond which something else is wrong.");
  }
}
