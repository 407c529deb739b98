package club.ascham.check;

import club.ascham.bow.BracePoint;
import club.ascham.concern.Against;
import club.ascham.form.Typed;
import club.ascham.measured.Measurement;
import club.ascham.report.Answering;
import club.ascham.report.ToAnswer;
import club.ascham.rig.RigCard;
import club.ascham.standing.State;
import club.ascham.units.LengthUnit;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.KnownSign;
import java.util.List;

/**
 * What the check page shows of one bow.
 *
 * @param against what stands against it
 * @param toAnswer what was told of it and nobody has answered
 * @param toldNow the fields of the answer to what this check tells itself
 * @param told what receipts say without a report since it was last put back, set up or checked
 * @param newest the newest check of it, 0 for none
 * @param others the parts that need no answer unless something was seen
 * @param adjusted the adjustment whose second measurement this is; null: none
 * @param corrected the check that this one corrects; null: none
 * @param stranger a part that is on it and not on its list; null: none
 */
record CheckView(
    RigCard card,
    State state,
    boolean judgeable,
    Against against,
    List<ToAnswer> toAnswer,
    Answering.Fields toldNow,
    Checks.Told told,
    long newest,
    List<Tick> parts,
    List<Look> looks,
    List<Look> others,
    Checks.Adjusted adjusted,
    Checks.Row corrected,
    StrangerAsked stranger,
    String unit,
    Typed typed) {

  /** One line of a list to tick: a part that the bow should hold, or a sign that was seen. */
  record Tick(String id, String name, String value, String label, boolean ticked) {
    static Tick part(String place, String label, boolean ticked) {
      return new Tick("part-" + place, "parts", place, label, ticked);
    }

    static Tick sign(KnownSign sign, boolean ticked) {
      return new Tick("sign-" + sign.key(), "signs", sign.key(), sign.words(), ticked);
    }
  }

  /** One part to be looked at, with its fields and the signs that the trade knows of it. */
  record Look(
      BowPart part, String label, String hint, List<Tick> notes, List<Tick> stops, Typed typed) {
    public String field() {
      return SignAnswers.field(part);
    }

    public String wordsField() {
      return SignAnswers.wordsField(part);
    }

    public boolean open() {
      return typed.has(wordsField())
          || typed.messageAt(wordsField()) != null
          || notes.stream().anyMatch(Tick::ticked)
          || stops.stream().anyMatch(Tick::ticked);
    }
  }

  /** Whether it is told already: then it is not asked for again. */
  public boolean shockTold() {
    return told.dryLooseOrFall()
        || toAnswer.stream().anyMatch(open -> open.report().tellsOfShock());
  }

  public boolean strungTold() {
    return told.cameBackStrung()
        || toAnswer.stream().anyMatch(open -> open.report().tellsOfStrung());
  }

  /** Whether nobody strings it before the permit holder has looked. */
  public boolean dangerOpen() {
    return against.staysUnstrung() || toAnswer.stream().anyMatch(open -> open.report().dangerous());
  }

  /** Whether something stands at the readings, or is asked there. */
  public boolean readingsOpen() {
    return typed.messageAt(Measurement.FROM) != null
        || Measurement.READING.stream()
            .map(Measurement::field)
            .anyMatch(field -> typed.messageAt(field) != null || typed.has(field));
  }

  /** Whether two figures are so alike that one may have been typed twice. */
  public boolean askedOfEach() {
    return typed.messageAt("measuredEach") != null || typed.ticked("measuredEach");
  }

  public boolean toldNowOpen() {
    return typed.has(toldNow.answer()) || typed.messageAt(toldNow.answer()) != null;
  }

  public String path() {
    return CheckPages.page(card.id());
  }

  public String gauge(String quantity) {
    return path() + "/gauge?quantity=" + quantity;
  }

  /** Brace is judged by the point that it was measured to. */
  public String braceGauge() {
    return gauge("brace") + "&with=braceFrom";
  }

  /** The lower distance completes the tiller: the upper one is asked with it. */
  public String tillerGauge() {
    return gauge("tillerLower") + "&with=tillerUpper";
  }

  public boolean secondMeasurement() {
    return adjusted != null || typed.has("looked");
  }

  /** Whether something may be answered about riser or rest. */
  public boolean othersOpen() {
    return others.stream().anyMatch(look -> look.open() || typed.has(look.field()));
  }

  public BracePoint setUpPoint() {
    return card.setUp().braceFrom();
  }

  public String braceHint() {
    return "string to " + BowWords.from(setUpPoint());
  }

  public String facts() {
    return BowWords.facts(card);
  }

  public String unitOf(String field) {
    String chosen = typed.value(field + "-unit");
    return chosen.isEmpty() ? unit : chosen;
  }

  static String unit(LengthUnit unit) {
    return unit == LengthUnit.INCH ? "in" : "mm";
  }

  public int faultCount() {
    return typed.faults().size();
  }
}
