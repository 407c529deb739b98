package club.ascham.bench;

import club.ascham.bow.Gauge;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Typed;
import club.ascham.mechanics.BoltReckoning;
import club.ascham.mechanics.TwistReckoning;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.statistics.Drift;
import club.ascham.statistics.LifeEstimate;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import club.ascham.web.Forms;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A bow in the hand and a number: three calculators. The questions stand in the address, for they
 * keep nothing and hold nobody's name.
 */
@Path("/bench")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class BenchPages {
  private static final Plausible RISER =
      new Plausible("riser length", Length.ofInches(13), Length.ofInches(30));

  /** Fields of a form that are lengths; their names end in the unit they are reckoned in. */
  private static final Map<String, Plausible> LENGTHS =
      Map.of(
          "bowLengthIn", new Plausible("bow length", Length.ofInches(40), Length.ofInches(80)),
          "drawLengthIn", Plausible.DRAW_LENGTH,
          "markedAtIn", Plausible.DRAW_LENGTH,
          "markedRiserIn", RISER,
          "riserIn", RISER,
          "stringLengthMm", Plausible.STRING_LENGTH,
          "braceMm", Plausible.BRACE,
          "targetBraceMm", Plausible.BRACE,
          "tillerMm", Plausible.TILLER,
          "targetMm", Plausible.TILLER);

  /** Lengths that the trade has in whole inches; a draw is as long as it is. */
  private static final Set<String> BY_WHOLE_INCHES =
      Set.of("bowLengthIn", "markedRiserIn", "riserIn");

  /** An answer in words. */
  public record Said(String number, String range, List<String> more, String basis) {}

  /**
   * Each calculator with what was typed; the answers of those not asked are null.
   *
   * @param asked which one the typed answers are for: twists, bolts or weight
   */
  @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record BenchPage(String asked, Typed twists, Typed bolts, Typed weight, Said answer)
      implements TemplateInstance {}

  /** What the numbers rest on. */
  @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record HowPage(HalfBow bow) implements TemplateInstance {}

  /**
   * What the watch over a bow and the lives of parts rest on.
   *
   * @param fall checks after which a sudden fall is found, {@code creep} a slow one
   * @param charts readings from which the charts judge
   * @param fewest failures with which a life is told
   */
  @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record HowUpkeepPage(int fall, int creep, int charts, int fewest) implements TemplateInstance {}

  /** 173 cm are a bow of 68 in. */
  private static final double A_HAIR_IN = 0.25;

  private static final HalfBow SOLVED = HalfBow.solved();

  private final Actor actor;
  private final ClubBands club;

  BenchPages(Actor actor, ClubBands club) {
    this.actor = actor;
    this.club = club;
  }

  @GET
  public Response bench(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    String asked = typed.value("ask");
    Said said =
        switch (asked) {
          case "twists" -> twists(typed);
          case "bolts" -> bolts(typed);
          case "weight" -> weight(typed);
          default -> null;
        };
    boolean wrong = !typed.sound();
    BenchPage page =
        new BenchPage(
            asked,
            asked.equals("twists") ? typed : Typed.nothing(),
            asked.equals("bolts") ? typed : Typed.nothing(),
            asked.equals("weight") ? typed : Typed.nothing(),
            said);
    return Response.status(wrong ? 422 : 200)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(page)
        .build();
  }

  @GET
  @Path("/how")
  public TemplateInstance how() {
    return new HowPage(SOLVED);
  }

  @GET
  @Path("/how-upkeep")
  public TemplateInstance howUpkeep() {
    return new HowUpkeepPage(
        Drift.CHECKS_FOR_A_FALL,
        Drift.CHECKS_FOR_CREEP,
        Drift.CHARTS_FROM,
        LifeEstimate.FEWEST_FAILURES);
  }

  private Said twists(Typed typed) {
    Typed question =
        question(
            typed,
            List.of("strands", "strandDiameterMm", "twists", "sure"),
            List.of("bowLengthIn", "stringLengthMm", "braceMm"));
    Length target = length(typed, "targetBraceMm");
    question.with("targetMm", target == null ? null : target.mm());
    TwistReckoning twists = BenchQuestions.twists(question, club).orElse(null);
    faults(question, typed, Map.of("targetMm", "targetBraceMm"));
    if (twists == null || !typed.sound()) {
      return null;
    }
    return switch (twists.reach()) {
      case LEAVE_IT ->
          new Said(
              "Leave it",
              "It is off by less than a reading can tell.",
              List.of("Measure once more before anything is twisted."),
              twists.basis());
      case THIS_STRING -> someTwists(twists);
      case LONGER_STRING, SHORTER_STRING -> anotherString(twists, typed);
    };
  }

  private static Said someTwists(TwistReckoning twists) {
    boolean in = twists.turns() > 0;
    List<String> more = new ArrayList<>();
    more.add(expect(twists.expectedMm(), twists.lowMm(), twists.highMm()));
    if (twists.room() != null
        && (twists.high() == null || Math.abs(twists.high()) > twists.room())) {
      more.add(
          "The string has room for %d; it gets there with a chance of about %.0f in 100."
              .formatted(twists.room(), 100 * twists.chance()));
    }
    more.add(
        "String off with the stringer. Twist in the direction it is twisted already; one without twists, the way its serving is wound.");
    more.add(
        "String on, loops seated, the string down the middle of both limbs; then measure brace"
            + " and both tillers again.");
    more.add(
        "The string has to change by %s in length."
            .formatted(Gauge.signed(Length.ofMm(twists.stringChangeMm()))));
    return new Said(
        "%s %d %s"
            .formatted(
                in ? "Put in" : "Take out", Math.abs(twists.turns()), twists(twists.turns())),
        (twists.high() == null
                ? "%d or more".formatted(Math.abs(twists.low()))
                : "%d to %d".formatted(Math.abs(twists.low()), Math.abs(twists.high())))
            + " to %s, 9 times in 10".formatted(in ? "put in" : "take out"),
        more,
        twists.basis());
  }

  /** {@code Expect 8 5/8 in, 8 1/2 to 8 3/4 in (219 mm, 216 to 222), 9 times in 10.} */
  private static String expect(double likelyMm, double lowMm, double highMm) {
    return "Expect %s, %s to %s (%.0f mm, %.0f to %.0f), 9 times in 10."
        .formatted(
            LengthText.inches(Length.ofMm(likelyMm)),
            LengthText.inches(Length.ofMm(lowMm)).replace(" in", ""),
            LengthText.inches(Length.ofMm(highMm)),
            likelyMm,
            lowMm,
            highMm);
  }

  private Said anotherString(TwistReckoning twists, Typed typed) {
    double longerMm = twists.otherStringMm();
    Length now = length(typed, "stringLengthMm");
    return new Said(
        "This string can't get there: fit one about %s %s"
            .formatted(
                LengthText.both(Length.ofMm(Math.abs(longerMm))),
                longerMm > 0 ? "longer" : "shorter"),
        "Untwisted about %s, made for a bow of %s in"
            .formatted(
                LengthText.both(now.plus(Length.ofMm(longerMm))), typed.value("bowLengthIn")),
        List.of(
            "Twisted as often as this one, it would differ by %s."
                .formatted(Gauge.signed(Length.ofMm(twists.stringChangeMm()))),
            "Then set the bow up again from brace to nocking point."),
        twists.basis());
  }

  private static String twists(int turns) {
    return Math.abs(turns) == 1 ? "twist" : "twists";
  }

  private Said bolts(Typed typed) {
    Typed question =
        question(
            typed,
            List.of("style", "upperTurnsOut", "lowerTurnsOut", "maxTurnsOut"),
            typed.has("targetMm") ? List.of("tillerMm", "targetMm") : List.of("tillerMm"));
    BoltReckoning bolts = BenchQuestions.bolts(question).orElse(null);
    faults(question, typed, Map.of());
    if (bolts == null || !typed.sound()) {
      return null;
    }
    return switch (bolts.outcome()) {
      case LEAVE_IT -> no("Leave it", "It is off by less than a reading can tell.", bolts);
      case NO_ROOM ->
          no("No bolt to turn", "None has room the way it would have to be turned.", bolts);
      case LOOK_FIRST ->
          no("Look at limbs and seats first", "So far off, tiller is no bolt work.", bolts);
      case FIND_OUT_WHY -> no("Find out why first", "Its tiller hardly follows its bolts.", bolts);
      case TURN -> someTurns(bolts);
    };
  }

  private static Said no(String number, String range, BoltReckoning bolts) {
    return new Said(number, range, List.of(), bolts.basis());
  }

  private static Said someTurns(BoltReckoning bolts) {
    return new Said(
        "First: "
            + turn("upper", bolts.firstUpper())
            + join(bolts)
            + turn("lower", bolts.firstLower()),
        expect(bolts.expectedMm(), bolts.lowMm(), bolts.highMm()),
        List.of(
            "String off with the stringer before a bolt is turned. Loosen its locking screw, turn,"
                + " tighten the locking screw.",
            "String on, loops seated; measure both tillers and brace again. If tiller went the"
                + " wrong way, put the bolts back: workshop.",
            "In all, once it is measured again: %s."
                .formatted(
                    String.join(
                        ", ",
                        List.of(
                            "upper " + signed(bolts.upper()), "lower " + signed(bolts.lower()))))),
        bolts.basis());
  }

  private static String join(BoltReckoning bolts) {
    return bolts.firstUpper() != 0 && bolts.firstLower() != 0 ? ", " : "";
  }

  private static String turn(String which, double turns) {
    return turns == 0
        ? ""
        : "%s bolt %s %s turn"
            .formatted(which, turns > 0 ? "in" : "out", Math.abs(turns) == 0.25 ? "¼" : "⅛");
  }

  private static String signed(double turns) {
    return turns == 0
        ? "as it is"
        : "%s %.1f turns".formatted(turns > 0 ? "in" : "out", Math.abs(turns));
  }

  private Said weight(Typed typed) {
    Typed question =
        question(
            typed,
            List.of("markedLb", "sure"),
            Stream.of("markedAtIn", "markedRiserIn", "riserIn", "drawLengthIn")
                .filter(field -> typed.has(field) || field.equals("drawLengthIn"))
                .toList());
    WeightOnFingers weight = BenchQuestions.drawWeight(question).orElse(null);
    faults(question, typed, Map.of());
    return weight == null || !typed.sound()
        ? null
        : new Said(
            "About %.0f lb on the fingers".formatted(weight.lb()),
            "%.0f to %.0f lb".formatted(weight.lowLb(), weight.highLb()),
            List.of("A bow scale at the archer's own draw tells exactly."),
            weight.basis());
  }

  /** The question as numbers, its lengths read as people write them. */
  private Typed question(Typed typed, List<String> numbers, List<String> lengths) {
    Typed question = Typed.nothing();
    numbers.forEach(field -> question.with(field, typed.value(field)));
    for (String field : lengths) {
      Length length = length(typed, field);
      if (length != null) {
        question.with(
            field,
            BY_WHOLE_INCHES.contains(field)
                ? inches(length)
                : field.endsWith("In") ? (Number) length.inches() : length.mm());
      }
    }
    return question;
  }

  private Length length(Typed typed, String field) {
    return typed.length(
        field,
        field.equals("stringLengthMm") || field.endsWith("In") ? LengthUnit.INCH : actor.unit(),
        LENGTHS.get(field));
  }

  /** Whole where it is one: risers and bows go by whole inches. */
  private static Number inches(Length length) {
    double inches = length.inches();
    long whole = Math.round(inches);
    return Math.abs(inches - whole) < A_HAIR_IN ? (Number) whole : (Number) inches;
  }

  /** Faults of the question at the fields of the page; a field's own fault comes first. */
  static void faults(Typed question, Typed page, Map<String, String> otherNames) {
    question
        .faults()
        .forEach(
            (field, fault) -> page.fault(otherNames.getOrDefault(field, field), fault.message()));
  }
}
