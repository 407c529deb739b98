package club.ascham.report;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Reads who tells what of which bow, for the page and for programs alike. */
@ApplicationScoped
class ReportDesk {
  /** What is told of a past day is taken to have been noticed in its evening. */
  private static final LocalTime EVENING = LocalTime.of(21, 0);

  private final Reports reports;
  private final ClubTime time;

  ReportDesk(Reports reports, ClubTime time) {
    this.reports = reports;
    this.time = time;
  }

  /**
   * What a report may be about.
   *
   * @param among the things it may be about
   * @param item the one it was begun from; null: none
   * @param loan null: it is not told of a loan
   */
  record Subject(List<PartChoice> among, PartChoice item, LoanId loan) {
    List<RigId> rigs() {
      return among.stream().map(PartChoice::rig).filter(Objects::nonNull).distinct().toList();
    }

    RigId onlyRig() {
      return rigs().size() == 1 ? rigs().get(0) : null;
    }

    /** What is asked about, for a heading. */
    String name() {
      if (item != null) {
        return item.code();
      }
      return onlyRig() == null
          ? "loan " + loan.value()
          : among.stream()
              .filter(part -> onlyRig().equals(part.rig()))
              .map(PartChoice::code)
              .findFirst()
              .orElseThrow();
    }
  }

  /** Reads {@code loan}, {@code item} or {@code rig}; empty: the fault is at its field. */
  Optional<Subject> subject(Typed typed) {
    if (typed.has("loan")) {
      return ofLoan(typed);
    }
    if (typed.has("item")) {
      return ofItem(typed);
    }
    Optional<RigId> rig = rig(typed);
    List<PartChoice> parts = rig.map(id -> reports.partsOf(id, time.now())).orElse(List.of());
    if (parts.isEmpty()) {
      typed.fault(
          "rig",
          typed.has("rig")
              ? "There is no such bow."
              : "Which bow? Its number, or the code of any part of it; or an item, or a loan.");
      return Optional.empty();
    }
    return Optional.of(new Subject(parts, null, null));
  }

  private Optional<RigId> rig(Typed typed) {
    if (typed.value("rig").matches("\\d{1,9}")) {
      return Optional.of(new RigId(Long.parseLong(typed.value("rig"))));
    }
    ItemCode code = typed.code("rig");
    return code == null ? Optional.empty() : reports.part(code).map(PartChoice::rig);
  }

  private Optional<Subject> ofLoan(Typed typed) {
    Integer number = typed.whole("loan", 1, Integer.MAX_VALUE);
    LoanId loan = number == null ? null : new LoanId(number);
    List<PartChoice> parts = loan == null ? List.of() : reports.outWith(loan);
    if (parts.isEmpty()) {
      typed.fault("loan", "There is no such loan.");
      return Optional.empty();
    }
    if (!typed.has("rig")) {
      return Optional.of(new Subject(parts, null, loan));
    }
    RigId rig = rig(typed).orElse(null);
    List<PartChoice> ofRig = parts.stream().filter(p -> Objects.equals(p.rig(), rig)).toList();
    if (rig == null || ofRig.isEmpty()) {
      typed.fault("rig", "That bow did not go out with this loan.");
      return Optional.empty();
    }
    return Optional.of(new Subject(ofRig, null, loan));
  }

  private Optional<Subject> ofItem(Typed typed) {
    ItemCode code = typed.code("item");
    Optional<PartChoice> item = code == null ? Optional.empty() : reports.part(code);
    if (item.isEmpty()) {
      typed.fault("item", "The club has nothing with that code.");
      return Optional.empty();
    }
    RigId rig = item.get().rig();
    return Optional.of(
        new Subject(
            rig == null ? List.of(item.get()) : reports.partsOf(rig, time.now()),
            item.get(),
            null));
  }

  /** What is to be kept. */
  record Read(Telling telling, About about) {}

  /** Reads it whole; empty: the faults are at their fields. */
  Optional<Read> read(Typed typed, Subject subject) {
    if (!typed.has("part") && subject.item() != null) {
      typed.with("part", subject.item().code());
    }
    Telling telling =
        Telling.parse(typed, Telling.Fields.PLAIN, subject.among(), Telling.WordsAlone.ASK);
    RigId rig = telling.rig() != null || telling.part() != null ? telling.rig() : subject.onlyRig();
    if (telling.part() == null && rig == null) {
      if (subject.among().size() == 1) {
        telling = new Telling(telling.signs(), telling.words(), subject.among().get(0), null);
      } else {
        typed.fault("part", "Which of these?");
      }
    }
    Instant noticed = noticed(typed, rig, telling.part() == null);
    if (!typed.sound()) {
      return Optional.empty();
    }
    About.ToldAt toldAt = subject.loan() == null ? About.ToldAt.BOW : About.ToldAt.LOAN;
    ItemId part = telling.part() == null ? null : telling.part().item();
    LoanId loan =
        subject.loan() == null ? reports.loanOf(rig, part, noticed).orElse(null) : subject.loan();
    return Optional.of(new Read(telling, new About(rig, loan, null, toldAt, noticed)));
  }

  private Instant noticed(Typed typed, RigId rig, boolean wholeBow) {
    LocalDate on = typed.day("on");
    if (on == null || on.equals(time.today())) {
      return time.now();
    }
    Instant noticed = time.momentOf(on.atTime(EVENING));
    if (on.isAfter(time.today())) {
      typed.fault("on", "That day is still to come.");
    } else if (rig != null
        && reports.assembled(rig).filter(since -> !since.isAfter(noticed)).isEmpty()) {
      typed.fault("on", "That is before this bow was put together.");
    } else if (wholeBow && rig != null && reports.partsOf(rig, noticed).isEmpty()) {
      typed.fault("on", "Nothing was fitted to this bow then.");
    }
    return noticed;
  }
}
