package club.ascham.check;

import club.ascham.bow.Build;
import club.ascham.form.Typed;
import club.ascham.measured.Measurement;
import club.ascham.report.Answering;
import club.ascham.report.Noticed;
import club.ascham.report.PartChoice;
import club.ascham.report.Report;
import club.ascham.rig.Place;
import club.ascham.rig.RigCard;
import club.ascham.time.Evening;
import club.ascham.units.ItemCode;
import club.ascham.units.LengthUnit;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Seen;
import club.ascham.verdict.Sign;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A check as a person gives it, soundly read.
 *
 * @param missing places whose listed part is not there
 * @param stranger a code that is on the bow and not on its list; null: none
 * @param strangerAnswer null: not answered yet
 * @param asTyped the texts of the lengths, the readable and the others
 * @param signs what was seen by part, the deliberate <i>fine</i> included
 * @param assured what the person says of their own look and measuring
 * @param happened null: now
 * @param lastCheck the newest check when the form was made, 0 for none; null: not said
 * @param version of the rig that the form was made from
 * @param adjustment the adjustment that this is the second measurement of; null: none
 * @param corrects the check that this one corrects; null: none
 * @param answers to what was told of the bow; what is told with this very check is {@link
 *     #TOLD_NOW}
 * @param notKept what this hand answered to what another has answered since; null: nothing
 */
record CheckEntry(
    Set<Place> missing,
    ItemCode stranger,
    StrangerAnswer strangerAnswer,
    Reading reading,
    Map<Measurement, String> asTyped,
    List<Sign> signs,
    boolean dryLooseOrFall,
    boolean cameBackStrung,
    Seen.Assured assured,
    Instant happened,
    Long lastCheck,
    OptionalInt version,
    Long adjustment,
    Long corrects,
    String correctionWhy,
    Map<String, Answering> answers,
    String notKept) {
  /** Names, among the reports, the one that this check tells itself. */
  static final String TOLD_NOW = "new";

  private static final Pattern ANSWER = Pattern.compile("report-(\\d+)");
  private static final int LONGEST_WORDS = 400;
  private static final int LARGEST_ID = Integer.MAX_VALUE;

  /**
   * What the answers are read against.
   *
   * @param card the bow by the record
   * @param parts what may be stopped of it
   * @param open what was told of it and nobody has answered
   * @param mayAnswer whether this person may answer what is told now, if it is dangerous or not
   */
  record Asked(
      RigCard card,
      List<PartChoice> parts,
      List<Report> open,
      Predicate<Boolean> mayAnswer,
      LengthUnit unit,
      Instant now,
      ZoneId zone) {}

  /** Ask {@code typed.sound()} before using it. */
  static CheckEntry parse(Typed typed, Asked asked) {
    ItemCode stranger = typed.code("stranger");
    List<Sign> signs = SignAnswers.parse(typed, build(asked.card()));
    Set<Place> missing = missing(typed, asked.card(), stranger != null);
    boolean dryLoose = typed.ticked("dryLooseOrFall");
    Reading reading = Measurement.reading(typed, asked.unit(), "From where was it measured?");
    Map<Measurement, String> asTyped = Measurement.asTyped(typed);
    // What stops a bow, or parts that are wrong, excuse measuring it: the judge asks for the rest.
    Long corrects = number(typed, "corrects");
    String why = typed.reasonIfAny("correctionWhy", LONGEST_WORDS);
    if (corrects != null && why == null) {
      typed.fault("correctionWhy", "What was wrong with the check that this one corrects?");
    }
    return new CheckEntry(
        missing,
        stranger,
        typed.word("strangerAnswer", StrangerAnswer.class),
        reading,
        asTyped,
        signs,
        dryLoose,
        typed.ticked("cameBackStrung"),
        new Seen.Assured(
            typed.ticked("limbsSeated"),
            typed.ticked("measuredEach"),
            number(typed, "looked") != null),
        Evening.read(typed, asked.now(), asked.zone()),
        number(typed, "lastCheck"),
        typed.version(),
        number(typed, "adjustment"),
        corrects,
        why,
        answers(typed, asked, dryLoose),
        notKept(typed, asked.open()));
  }

  /** Each open report may be answered; what isn't stays open. */
  private static Map<String, Answering> answers(Typed typed, Asked asked, boolean dryLoose) {
    LocalDate today = LocalDate.ofInstant(asked.now(), asked.zone());
    Map<String, Answering> answers = new LinkedHashMap<>();
    for (Report report : asked.open()) {
      String key = Long.toString(report.id());
      Answering.parse(typed, Answering.Fields.of(key), report.dangerous(), report.parts(), today)
          .ifPresent(answer -> answers.put(key, answer));
    }
    // Without the right to answer it, what they tell stays told, and open, for the permit holder.
    Answering.parse(typed, Answering.Fields.of(TOLD_NOW), dryLoose, asked.parts(), today)
        .filter(answer -> asked.mayAnswer().test(dryLoose))
        .ifPresent(answer -> answers.put(TOLD_NOW, answer));
    return answers;
  }

  /**
   * What this hand saw is not dropped because another was quicker: it is shown, to be told anew.
   */
  private static String notKept(Typed typed, List<Report> open) {
    StringJoiner said = new StringJoiner("; ");
    typed
        .all()
        .forEach(
            (field, answer) -> {
              Matcher asked = ANSWER.matcher(field);
              if (asked.matches()
                  && open.stream()
                      .noneMatch(one -> Long.toString(one.id()).equals(asked.group(1)))) {
                String words = typed.value(Answering.Fields.of(asked.group(1)).words());
                said.add(
                    "to report %s: %s%s"
                        .formatted(
                            asked.group(1), answer, words.isEmpty() ? "" : ", “" + words + "”"));
              }
            });
    return said.length() == 0 ? null : said.toString();
  }

  /** What this check tells itself. */
  Set<Noticed> tells() {
    Set<Noticed> signs = EnumSet.noneOf(Noticed.class);
    if (dryLooseOrFall) {
      signs.add(Noticed.LOOSED_WITHOUT_ARROW);
      signs.add(Noticed.FELL);
    }
    if (cameBackStrung) {
      signs.add(Noticed.CAME_BACK_STRUNG);
    }
    return signs;
  }

  boolean allAsListed() {
    return missing.isEmpty() && stranger == null;
  }

  boolean stops() {
    return dryLooseOrFall || signs.stream().anyMatch(sign -> sign.gravity() == Gravity.STOP);
  }

  private static Long number(Typed typed, String field) {
    Integer number = typed.whole(field, 0, LARGEST_ID);
    return number == null ? null : number.longValue();
  }

  static Build build(RigCard card) {
    return card.spec().map(spec -> spec.build()).orElse(Build.ONE_PIECE);
  }

  private static Set<Place> missing(Typed typed, RigCard card, boolean stranger) {
    if (typed.ticked("allAsListed")) {
      if (stranger) {
        typed.fault(
            "stranger", "Either all is as listed, or this code is on it: untick one of the two.");
      }
      return Set.of();
    }
    Set<Place> listed = EnumSet.noneOf(Place.class);
    card.parts().forEach(part -> listed.add(part.place()));
    Set<Place> missing = EnumSet.copyOf(listed);
    for (String word : typed.value("parts").split("[,\\s]+")) {
      for (Place place : Place.values()) {
        if (place.name().equalsIgnoreCase(word)) {
          missing.remove(place);
        }
      }
    }
    if (missing.containsAll(listed) && !stranger) {
      typed.fault("allAsListed", "Are these parts on it? Tick those that are.");
    }
    return missing;
  }
}
