package club.ascham.report;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Keeps what somebody tells of a bow; a dangerous sign keeps it in until it was looked at. */
@ApplicationScoped
public class TellReport {
  private final Reports reports;
  private final AskForWork askForWork;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  TellReport(
      Reports reports, AskForWork askForWork, Rows rows, Story story, Actor actor, ClubTime time) {
    this.reports = reports;
    this.askForWork = askForWork;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * Keeps it, and answers its number. May be called inside another use case.
   *
   * @param telling with a sign at least, of a part or a bow
   */
  @Writes
  public long tell(Telling telling, About about) {
    List<PartChoice> parts =
        telling.part() != null
            ? List.of(telling.part())
            : reports.partsOf(about.rig(), about.noticed());
    if (telling.isNothing() || parts.isEmpty()) {
      throw new IllegalArgumentException("a report tells something of something");
    }
    long report = keep(telling, about, telling.isDangerous(), parts);
    if (telling.isDangerous()) {
      parts.forEach(part -> askFor(part, telling, about));
    }
    return report;
  }

  /**
   * Keeps, inside another use case, that a maker calls a thing back. It stands whatever else does,
   * and as a danger, until someone with the permit has looked and answers it.
   */
  @Writes
  public long tellRecalled(PartChoice part, LoanId loan, String words) {
    About about = new About(part.rig(), loan, null, About.ToldAt.BOW, time.now());
    Telling telling = new Telling(Set.of(Noticed.SOMETHING_ELSE), words, part, part.rig());
    return keep(telling, about, true, List.of(part));
  }

  private long keep(Telling telling, About about, boolean dangerous, List<PartChoice> parts) {
    long report = keep(telling, about, dangerous);
    for (Noticed sign : telling.signs()) {
      rows.change("INSERT INTO report_sign (report_id, sign) VALUES (?1, ?2)", report, sign);
    }
    for (PartChoice part : parts) {
      rows.change(
          "INSERT INTO report_part (report_id, item_id) VALUES (?1, ?2)", report, part.item());
    }
    tell(telling, about, parts.stream().map(PartChoice::item).toList());
    return report;
  }

  private long keep(Telling telling, About about, boolean dangerous) {
    return rows.add(
        NewRow.of("report")
            .with("rig_id", about.rig())
            .with("loan_id", about.loan())
            .with("receipt_id", about.receipt())
            .with("told_at", about.toldAt())
            .with("happened_at", about.noticed())
            .with("recorded_at", time.now())
            .with("told_to", actor.id())
            .with("part_known", telling.part() != null)
            .with("dangerous", dangerous)
            .with("words", telling.words()));
  }

  private void tell(Telling telling, About about, List<ItemId> parts) {
    String sentence =
        "Reported: "
            + Telling.said(telling.signs())
            + (telling.part() == null ? "; part not known." : "; " + telling.part().code() + ".");
    story.tell(
        new Story.Told(
            about.noticed(),
            actor.id(),
            sentence,
            telling.words(),
            about.loan(),
            parts,
            about.rig() == null ? List.of() : List.of(about.rig())));
  }

  private void askFor(PartChoice part, Telling telling, About about) {
    String why =
        "Reported: "
            + telling.signs().stream()
                .filter(Noticed::isDangerous)
                .map(Noticed::said)
                .collect(Collectors.joining("; "))
            + ".";
    Remedy.of(part.kind(), telling.signs())
        .forEach(
            work ->
                askForWork.ask(
                    part.item(),
                    new Request(work, why, true, Request.Cause.REPORTED),
                    about.noticed()));
  }
}
