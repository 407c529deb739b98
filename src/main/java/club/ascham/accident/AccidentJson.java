package club.ascham.accident;

import club.ascham.story.Story;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** How accidents stand in JSON; what is not known, or not for the reader, is left out. */
final class AccidentJson {
  private AccidentJson() {}

  /** Accidents in a list. */
  record Listed(List<Line> items) {}

  /** An accident in a list. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Line(
      long id,
      Long loan,
      Long rig,
      Instant happenedAt,
      Instant recordedAt,
      String toldBy,
      boolean kept,
      List<String> bows) {
    static Line of(Accidents.Head head) {
      return new Line(
          head.id(),
          head.loan() == null ? null : head.loan().value(),
          head.rig() == null ? null : head.rig().value(),
          head.happened(),
          head.recorded(),
          head.toldBy(),
          head.isKept(),
          head.bows());
    }
  }

  /**
   * An accident with all that is on record of what was in hand.
   *
   * @param seal the record’s newest, at the moment it was read
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Accident(
      long id,
      Long loan,
      Long rig,
      Instant happenedAt,
      Instant recordedAt,
      String toldBy,
      String words,
      String who,
      String contact,
      String guardian,
      boolean kept,
      Instant endedAt,
      String endedBy,
      String endWhy,
      String seal,
      Instant readAt,
      List<ThingJson> things) {
    static Accident of(
        Accidents.Head head,
        Map<Accidents.Thing, Histories.Past> things,
        String seal,
        Instant readAt) {
      return new Accident(
          head.id(),
          head.loan() == null ? null : head.loan().value(),
          head.rig() == null ? null : head.rig().value(),
          head.happened(),
          head.recorded(),
          head.toldBy(),
          head.words(),
          head.who(),
          head.contact(),
          head.guardian(),
          head.isKept(),
          head.endedAt(),
          head.endedBy(),
          head.endWhy(),
          seal,
          readAt,
          things.entrySet().stream()
              .map(one -> ThingJson.of(one.getKey(), one.getValue()))
              .toList());
    }
  }

  /**
   * A thing that was in hand.
   *
   * @param arrows out of a pool: they can’t be told apart, so nothing is on record of these
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record ThingJson(
      String item,
      String kind,
      String maker,
      String model,
      String batch,
      String serials,
      LocalDate boughtOn,
      LocalDate registeredOn,
      LocalDate retiredOn,
      Long rig,
      Integer arrows,
      Long withdrawal,
      List<EventJson> history,
      List<SentenceJson> record) {
    static ThingJson of(Accidents.Thing thing, Histories.Past history) {
      return new ThingJson(
          thing.code(),
          thing.mark(),
          thing.maker(),
          thing.model(),
          thing.batch(),
          thing.serials(),
          thing.boughtOn(),
          thing.registeredOn(),
          thing.retiredOn(),
          thing.rig() == null ? null : thing.rig().value(),
          thing.arrows(),
          thing.withdrawal(),
          history.events().stream().map(EventJson::of).toList(),
          history.story().stream().map(SentenceJson::of).toList());
    }
  }

  /** One thing that the record knows of an item. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record EventJson(
      Instant at, String kind, String said, String by, Long loan, String who, String words) {
    static EventJson of(Event event) {
      return new EventJson(
          event.at(),
          event.kind(),
          event.said(),
          event.by(),
          event.loan() == null ? null : event.loan().value(),
          event.who(),
          event.words());
    }
  }

  /** A sentence of the record, with its number there. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record SentenceJson(
      long entry,
      Instant happenedAt,
      Instant recordedAt,
      String by,
      String sentence,
      String why,
      Story.TakenIn takenIn) {
    static SentenceJson of(Histories.Sentence one) {
      return new SentenceJson(
          one.id(),
          one.happened(),
          one.recorded(),
          one.by(),
          one.sentence(),
          one.why(),
          one.takenIn());
    }
  }
}
