package club.ascham.concern;

import static club.ascham.concern.Weight.BLOCKS;
import static club.ascham.concern.Weight.NOTE;
import static club.ascham.concern.Weight.SPEAKS_AGAINST;

import club.ascham.bow.Who;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.upkeep.Work;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Weighs what the record says of a thing on one day. It restricts only: nothing here ever makes a
 * thing fit to go out.
 */
final class Weighing {
  private static final String KEPT =
      "Kept as it is after an accident: until an officer ends the keeping, and the permit holder then"
          + " releases it.";
  private static final int MOST_OF_A_LINE = 60;
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.US);

  private Weighing() {}

  /** A withdrawal or an open report and the work it asks for are one thing, told once. */
  private record Told(ItemId item, Work work) {}

  /** What stands against the thing that these facts are about, on that day. */
  static Against on(LocalDate day, List<Fact> facts) {
    Map<Told, String> withdrawn = new HashMap<>();
    for (Fact fact : facts) {
      if (fact.matter() == Matter.WITHDRAWN && fact.work() != null) {
        withdrawn.merge(
            new Told(fact.item(), fact.work()), fact.why(), (one, other) -> one + other);
      }
    }
    List<Concern> concerns = new ArrayList<>();
    for (Fact fact : facts) {
      if (!isTold(fact, withdrawn)) {
        weight(fact, day).ifPresent(weight -> concerns.add(concern(fact, weight)));
      }
    }
    return new Against(concerns);
  }

  /** What an inspection found since, in other words, has a line of its own. */
  private static boolean isTold(Fact fact, Map<Told, String> withdrawn) {
    String why = withdrawn.get(new Told(fact.item(), fact.work()));
    return why != null
        && (fact.matter() == Matter.ASKED
            || fact.matter() == Matter.INSPECTION_FAILED && why.contains(fact.why()));
  }

  /** Empty where the fact does not stand against anything on that day. */
  static Optional<Weight> weight(Fact fact, LocalDate day) {
    return switch (fact.matter()) {
      case RETIRED, WITHDRAWN, INSPECTION_FAILED, NOT_SET_UP, NOT_CHECKED -> Optional.of(BLOCKS);
      case REPORTED, CHANGING, ASKED -> Optional.of(fact.grave() ? BLOCKS : SPEAKS_AGAINST);
      case OVERDUE -> overdue(fact, day);
      case WATCHED -> day.isAfter(fact.until()) ? Optional.empty() : Optional.of(NOTE);
      case WEIGHING_DUE, ARROWS_NOT_WEIGHED, ARROWS_MISSING -> Optional.of(NOTE);
    };
  }

  private static Optional<Weight> overdue(Fact fact, LocalDate day) {
    if (fact.until() != null && day.isAfter(fact.until())) {
      return Optional.of(BLOCKS);
    }
    boolean isOverdue = fact.since() != null && day.isAfter(fact.since());
    return isOverdue ? Optional.of(fact.grave() ? BLOCKS : SPEAKS_AGAINST) : Optional.empty();
  }

  private static Concern concern(Fact fact, Weight weight) {
    return new Concern(
        weight,
        fact.matter(),
        since(fact, weight),
        fact.item(),
        fact.code(),
        fact.rig(),
        fact.work(),
        said(fact, weight),
        brief(fact),
        ends(fact),
        page(fact),
        fact.source());
  }

  /** Planned work is overdue, or keeps a thing in, from the day after its last day. */
  private static LocalDate since(Fact fact, Weight weight) {
    if (fact.matter() != Matter.OVERDUE) {
      return fact.since();
    }
    return isBeyond(fact, weight) ? fact.until().plusDays(1) : fact.since().plusDays(1);
  }

  /** Whether it is kept in for being later than the club lets pass, and for nothing else. */
  private static boolean isBeyond(Fact fact, Weight weight) {
    return weight == BLOCKS && !fact.grave();
  }

  private static String said(Fact fact, Weight weight) {
    String code = fact.code();
    return switch (fact.matter()) {
      case RETIRED -> sentence(code + " is retired: " + fact.why());
      case WITHDRAWN -> sentence(code + " is withdrawn: " + fact.why());
      case INSPECTION_FAILED ->
          sentence(code + " did not pass its " + fact.work().said() + ": " + fact.why());
      case REPORTED -> sentence(ofWhat(fact) + ", told and not answered yet: " + fact.why());
      case OVERDUE ->
          code
              + ": "
              + fact.work().said()
              + " overdue"
              + (isBeyond(fact, weight) ? " since " + day(fact.since().plusDays(1)) : "")
              + ", "
              + fact.why()
              + (isBeyond(fact, weight) ? ", by more than the club lets pass." : ".");
      case CHANGING -> sentence(code + ": " + fact.why());
      case ASKED -> sentence(code + ": " + fact.work().said() + " asked for: " + fact.why());
      case NOT_SET_UP, NOT_CHECKED -> sentence(fact.why());
      case WATCHED ->
          sentence(ofWhat(fact) + ", watched to " + day(fact.until()) + ": " + fact.why());
      case WEIGHING_DUE -> sentence(code + " is due on the bow scale: " + fact.why());
      case ARROWS_NOT_WEIGHED ->
          code + ": the mass of an arrow is not known, so it is held against no bow.";
      case ARROWS_MISSING ->
          code + ": " + fact.why() + " arrows came back with loan " + fact.source() + ".";
    };
  }

  /** The part, or the bow where nobody knows which part it is. */
  private static String ofWhat(Fact fact) {
    return fact.unsureOf() == null ? fact.code() : "Not known which part of " + fact.unsureOf();
  }

  private static String day(LocalDate day) {
    return DAY.format(day);
  }

  private static String brief(Fact fact) {
    return switch (fact.matter()) {
      case INSPECTION_FAILED -> fact.work().said() + " not passed";
      case REPORTED -> "something told of it";
      case OVERDUE -> fact.work().said() + " overdue";
      case CHANGING -> "its readings change";
      case ASKED -> fact.work().said() + " asked for";
      case NOT_CHECKED -> "to be checked";
      case WEIGHING_DUE -> "to be weighed";
      case WITHDRAWN -> few(fact.why());
      case RETIRED, NOT_SET_UP, WATCHED, ARROWS_NOT_WEIGHED, ARROWS_MISSING ->
          Words.said(fact.matter());
    };
  }

  /** As much of it as a line of a list has room for. */
  private static String few(String words) {
    String bare = words.strip();
    return bare.length() <= MOST_OF_A_LINE
        ? bare
        : bare.substring(0, MOST_OF_A_LINE - 1).strip() + "…";
  }

  private static String ends(Fact fact) {
    return switch (fact.matter()) {
      case RETIRED -> "Unless it is found again.";
      case WITHDRAWN ->
          fact.kept()
              ? KEPT
              : fact.work() != null
                  ? "Until " + done(fact.work()) + " and the permit holder releases it."
                  : fact.grave()
                      ? "Until the permit holder decides what it needs, and releases it."
                      : "Until the permit holder releases it.";
      case INSPECTION_FAILED -> "Until it passes the " + fact.work().said() + ".";
      case REPORTED ->
          fact.grave()
              ? "Until the permit holder has looked and answers it."
              : "Until someone has looked and answers it.";
      case OVERDUE, ASKED, CHANGING -> "Until " + done(fact.work()) + by(fact.work()) + ".";
      case NOT_SET_UP -> "Until its set-up is finished.";
      case NOT_CHECKED -> "Until it is checked and put back.";
      case WATCHED -> "To its last day of being watched.";
      case WEIGHING_DUE -> "Until it is weighed on a bow.";
      case ARROWS_NOT_WEIGHED -> "Until one is weighed and entered.";
      case ARROWS_MISSING -> "Until the set is made up, or next comes back whole.";
    };
  }

  private static String done(Work work) {
    return work.isInspection() ? "the " + work.said() + " is passed" : "it is replaced or kept on";
  }

  private static String by(Work work) {
    return work.signedBy() == Who.PERMIT_HOLDER ? ", signed by a permit holder" : "";
  }

  private static String page(Fact fact) {
    return switch (fact.matter()) {
      case RETIRED, WEIGHING_DUE, ARROWS_NOT_WEIGHED, ARROWS_MISSING -> "/items/" + fact.code();
      case WITHDRAWN -> "/withdrawals/" + fact.source() + "/release";
      case INSPECTION_FAILED, OVERDUE, ASKED, CHANGING ->
          "/upkeep/" + fact.code() + "/" + fact.work().word();
      case REPORTED, WATCHED -> "/reports/" + fact.source();
      case NOT_SET_UP -> "/rigs/" + fact.rig().value() + (fact.grave() ? "/change" : "/set-up");
      case NOT_CHECKED -> "/check/" + fact.rig().value();
    };
  }

  private static String sentence(String words) {
    String bare = words.strip();
    return bare.matches("(?s).*[.!?]”?") ? bare : bare + ".";
  }
}
