package club.ascham.accident;

import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.report.Noticed;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.upkeep.Work;
import club.ascham.verdict.Given;
import club.ascham.verdict.Reading;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the record knows of items, row by row, as sentences. */
final class HistoryFacts {
  private HistoryFacts() {}

  /** A row that tells one event or two of an item. */
  interface Fact {
    ItemId item();

    Stream<Event> events();
  }

  record Fitted(ItemId item, RigId rig, String bareCode, Instant from, Instant until)
      implements Fact {
    @Override
    public Stream<Event> events() {
      String on = rigSaid(rig, bareCode);
      Event fitted = Event.of(from, "fitted", "Fitted to " + on + ".", null);
      return until == null
          ? Stream.of(fitted)
          : Stream.of(fitted, Event.of(until, "taken off", "Taken off " + on + ".", null));
    }
  }

  record SetUp(ItemId item, RigId rig, String bareCode, Instant at, SetUpFigures figures, String by)
      implements Fact {
    @Override
    public Stream<Event> events() {
      return Stream.of(
          Event.of(
              at,
              "set up",
              on(
                  rig,
                  bareCode,
                  measured(Reading.of(figures)),
                  "nocking point " + LengthText.both(figures.nocking()),
                  figures.twists() == null ? null : figures.twists() + " twists in the string",
                  turnsOut("upper", figures.turnsUpper()),
                  turnsOut("lower", figures.turnsLower())),
              by));
    }

    private static String turnsOut(String bolt, Double turns) {
      return turns == null ? null : bolt + " bolt " + plain(turns) + " turns out";
    }
  }

  record Check(
      ItemId item,
      RigId rig,
      String bareCode,
      Instant at,
      String kind,
      Reading reading,
      boolean dryLooseOrFall,
      boolean cameBackStrung,
      String verdict,
      long id,
      String signs,
      Long corrects,
      String by,
      Instant releasedAt,
      String releasedBy) {
    Stream<Event> events(Given given) {
      Event check =
          Event.of(
              at,
              kind.equals("LOOK") ? "look" : "check",
              on(
                      rig,
                      bareCode,
                      corrects == null ? null : "corrects an earlier one",
                      reading == null ? null : measured(reading),
                      dryLooseOrFall ? "a dry loose or a fall was told" : null,
                      cameBackStrung ? "it came back strung" : null,
                      signs)
                  + " Verdict "
                  + verdict.toLowerCase(Locale.ROOT)
                  + ": "
                  + given.text(),
              by);
      return releasedAt == null
          ? Stream.of(check)
          : Stream.of(
              check,
              Event.of(
                  releasedAt,
                  "put back",
                  capital(rigSaid(rig, bareCode)) + " put back: ready.",
                  releasedBy));
    }
  }

  record Adjusted(
      ItemId item,
      RigId rig,
      String bareCode,
      Instant at,
      Integer twists,
      Double upperIn,
      Double lowerIn,
      String words,
      String by)
      implements Fact {
    @Override
    public Stream<Event> events() {
      return Stream.of(
          Event.of(
              at,
              "adjusted",
              on(
                  rig,
                  bareCode,
                  twists == null ? null : twists + " twists put in",
                  upperIn == null ? null : "upper bolt " + plain(upperIn) + " turns in",
                  lowerIn == null ? null : "lower bolt " + plain(lowerIn) + " turns in",
                  words),
              by));
    }
  }

  record Done(
      ItemId item,
      Instant at,
      Work work,
      String result,
      String found,
      String measured,
      String partsUsed,
      String replacedBy,
      String by)
      implements Fact {
    @Override
    public Stream<Event> events() {
      return Stream.of(
          Event.of(
              at,
              work.isInspection() ? "inspected" : "replacement",
              capital(work.said())
                  + ": "
                  + joined(
                      result.toLowerCase(Locale.ROOT),
                      found,
                      measured,
                      partsUsed == null ? null : "parts used: " + partsUsed,
                      replacedBy == null ? null : "replaced by " + display(replacedBy))
                  + ".",
              by));
    }
  }

  record AskedFor(ItemId item, Instant at, Work work, String why, boolean blocks, String by)
      implements Fact {
    @Override
    public Stream<Event> events() {
      return Stream.of(
          Event.of(
              at,
              "asked for",
              capital(work.said()) + (blocks ? ", before it goes out again: " : ": ") + why,
              by));
    }
  }

  record Withdrawn(
      ItemId item,
      Instant at,
      String why,
      Work work,
      String by,
      Instant releasedAt,
      String releaseWhy,
      String releasedBy)
      implements Fact {
    @Override
    public Stream<Event> events() {
      Event withdrawn =
          Event.of(
              at,
              "withdrawn",
              work == null ? why : joined(why, "needs a " + work.said()) + ".",
              by);
      return releasedAt == null
          ? Stream.of(withdrawn)
          : Stream.of(withdrawn, Event.of(releasedAt, "released", releaseWhy, releasedBy));
    }
  }

  record Told(
      ItemId item,
      Instant at,
      boolean dangerous,
      String signs,
      String words,
      String by,
      Instant answeredAt,
      String answer,
      String answerWords,
      String answeredBy)
      implements Fact {
    @Override
    public Stream<Event> events() {
      String noticed =
          signs == null
              ? "Told in own words"
              : capital(
                  Arrays.stream(signs.split(","))
                      .map(Noticed::valueOf)
                      .sorted()
                      .map(Noticed::said)
                      .collect(Collectors.joining("; ")));
      Event told =
          Event.of(at, "told", noticed + (dangerous ? "; dangerous." : "."), by).with(words);
      return answeredAt == null
          ? Stream.of(told)
          : Stream.of(
              told,
              Event.of(
                      answeredAt,
                      "answered",
                      capital(answer.toLowerCase(Locale.ROOT).replace('_', ' ')) + ".",
                      answeredBy)
                  .with(answerWords));
    }
  }

  record Lent(
      ItemId item,
      LoanId loan,
      boolean session,
      String who,
      RigId rig,
      String bareCode,
      Instant out,
      LocalDate dueOn,
      String by,
      Instant back,
      String outcome,
      Integer shots,
      boolean dryLooseOrFall,
      boolean cameBackStrung,
      String words,
      String receivedBy)
      implements Fact {
    @Override
    public Stream<Event> events() {
      Event lent =
          new Event(
              out,
              "lent",
              (session ? "With a session" : "With a kit")
                  + (rig == null ? "" : ", on " + rigSaid(rig, bareCode))
                  + ", until "
                  + ClubTime.said(dueOn)
                  + ".",
              by,
              loan,
              who,
              null);
      if (back == null) {
        return Stream.of(lent);
      }
      String how =
          joined(
              outcome.toLowerCase(Locale.ROOT),
              shots == null ? null : shots + " shots",
              dryLooseOrFall ? "a dry loose or a fall was told" : null,
              cameBackStrung ? "it came back strung" : null);
      return Stream.of(
          lent, new Event(back, "came back", capital(how) + ".", receivedBy, loan, who, words));
    }
  }

  record Weighed(ItemId item, Instant at, double drawIn, double forceLb, String by)
      implements Fact {
    @Override
    public Stream<Event> events() {
      return Stream.of(
          Event.of(
              at, "weighed", plain(forceLb) + " lb at a draw of " + plain(drawIn) + " in.", by));
    }
  }

  /** Null where nothing was measured: nobody strings a cracked bow to measure it. */
  private static String measured(Reading reading) {
    String said =
        joined(
            length("brace ", reading.brace()),
            length("upper ", reading.tillerUpper()),
            length("lower ", reading.tillerLower()),
            reading.tiller() == null ? null : "tiller " + Gauge.signed(reading.tiller()));
    return said.isEmpty() ? null : said;
  }

  private static String length(String what, Length length) {
    return length == null ? null : what + LengthText.both(length);
  }

  /** {@code On rig R-0115-2: brace 212 mm; upper 192 mm.} */
  private static String on(RigId rig, String bareCode, String... parts) {
    String said = joined(parts);
    return "On " + rigSaid(rig, bareCode) + (said.isEmpty() ? "." : ": " + said + ".");
  }

  private static String rigSaid(RigId rig, String bareCode) {
    return "rig " + (bareCode == null ? rig.value() : display(bareCode));
  }

  private static String display(String bareCode) {
    return new ItemCode(bareCode).display();
  }

  private static String joined(String... parts) {
    return Stream.of(parts)
        .filter(Objects::nonNull)
        .map(part -> part.endsWith(".") ? part.substring(0, part.length() - 1) : part)
        .collect(Collectors.joining("; "));
  }

  private static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
