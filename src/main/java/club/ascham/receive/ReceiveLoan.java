package club.ascham.receive;

import club.ascham.Settings;
import club.ascham.check.SettleStranger;
import club.ascham.check.StrangerBack;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.ReceiptId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.loan.Missing;
import club.ascham.people.Actor;
import club.ascham.report.About;
import club.ascham.report.PartChoice;
import club.ascham.report.Reports;
import club.ascham.report.TellReport;
import club.ascham.report.Telling;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.undo.Moves;
import club.ascham.units.Money;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Takes back what is here; what is missing keeps its loan open. Checking comes later. */
@ApplicationScoped
public class ReceiveLoan {
  private final Rows rows;
  private final LoanLines lines;
  private final TakeLineBack takeLineBack;
  private final BowInHand bowInHand;
  private final SettleStranger settleStranger;
  private final TellReport tellReport;
  private final Reports reports;
  private final Moves moves;
  private final Actor actor;
  private final ClubTime time;
  private final Story story;
  private final Currency currency;

  ReceiveLoan(
      Rows rows,
      LoanLines lines,
      TakeLineBack takeLineBack,
      BowInHand bowInHand,
      SettleStranger settleStranger,
      TellReport tellReport,
      Reports reports,
      Moves moves,
      Actor actor,
      ClubTime time,
      Story story,
      Settings settings) {
    this.rows = rows;
    this.lines = lines;
    this.takeLineBack = takeLineBack;
    this.bowInHand = bowInHand;
    this.settleStranger = settleStranger;
    this.tellReport = tellReport;
    this.reports = reports;
    this.moves = moves;
    this.actor = actor;
    this.time = time;
    this.story = story;
    this.currency = Currency.getInstance(settings.currency());
  }

  /**
   * Reads a receipt and keeps it; a fault is left at its field.
   *
   * @param out what is out with the loan
   */
  Outcome<ReceiptId> receive(Receipts.Head loan, List<LoanLine> out, Typed typed) {
    ReceiptDetails details =
        ReceiptDetails.parse(
            typed,
            out,
            bowInHand.stranger(typed, out),
            loan.deposit(),
            currency,
            new ReceiptDetails.When(loan.issuedAt(), time.now(), time.zone()));
    return typed.sound() ? receive(loan.id(), details) : Outcome.unread();
  }

  @Writes
  Outcome<ReceiptId> receive(LoanId loan, ReceiptDetails details) {
    Map<Long, LoanLine> out =
        lines.of(loan).stream()
            .filter(LoanLine::isOut)
            .collect(Collectors.toMap(LoanLine::id, Function.identity()));
    List<LineBack> here = details.lines().stream().filter(LineBack::back).toList();
    if (here.stream().anyMatch(line -> !out.containsKey(line.line()))) {
      return Outcome.refused(
          Refusal.now(
              "Already back",
              "lines",
              "Someone received part of this a moment ago. Look at what is still out, and save"
                  + " again."));
    }
    long receipt = receipt(loan, details);
    Set<RigId> rigs = new LinkedHashSet<>();
    Set<ItemId> items = new LinkedHashSet<>();
    for (LineBack back : here) {
      LoanLine line = out.get(back.line());
      takeLineBack.take(receipt, line, back, details.happened());
      items.add(line.item());
      if (line.rig() != null) {
        rigs.add(line.rig());
      }
    }
    boolean closed = here.size() == out.size();
    settleDeposit(loan, details, closed);
    story.tell(
        new Story.Told(
            details.happened(),
            actor.id(),
            sentence(loan, details, closed, here, out),
            details.told().words(),
            loan,
            items,
            rigs));
    if (!details.told().isNothing()) {
      report(
          details.told(),
          ReceiptDetails.choices(here.stream().map(back -> out.get(back.line())).toList()),
          rig -> new About(rig, loan, receipt, About.ToldAt.RECEIVING, details.happened()));
    }
    if (details.stranger() != null) {
      Outcome<RigId> settled =
          settleStranger.settle(
              details.stranger(),
              new About(
                  details.stranger().card().id(),
                  loan,
                  receipt,
                  About.ToldAt.RECEIVING,
                  details.happened()));
      if (!(settled instanceof Outcome.Done)) {
        QuarkusTransaction.setRollbackOnly();
        return Outcome.refused(
            StrangerBack.Fields.PLAIN.answer(), settled.refusals().get(0).words());
      }
    }
    moves.received(loan, receipt);
    return Outcome.done(new ReceiptId(receipt));
  }

  /**
   * Keeps what a second hand told of things that the first had received by then. Words that sound
   * like a danger are kept as they are: nobody is asked twice.
   */
  @Writes
  Outcome<LoanId> tellAfter(LoanId loan, Typed typed) {
    List<PartChoice> back = reports.outWith(loan);
    Telling told =
        Telling.parse(
            StrangerBack.Fields.PLAIN
                .inWords(damageInWords(loan, typed), Telling.Fields.PLAIN.words())
                .with(Telling.Fields.PLAIN.notSo(), "on"),
            Telling.Fields.PLAIN,
            back,
            Telling.WordsAlone.SOMETHING_ELSE);
    if (told.isNothing()) {
      return Outcome.done(loan, "Someone received it a moment ago.");
    }
    report(told, back, rig -> new About(rig, loan, null, About.ToldAt.LOAN, time.now()));
    return Outcome.done(
        loan, "Someone received it a moment ago. What you told of it is kept: lay it aside.");
  }

  /** What was damaged is told in words: somebody else has taken the thing itself back. */
  private Typed damageInWords(LoanId loan, Typed typed) {
    String words = Telling.Fields.PLAIN.words();
    Typed told = typed;
    for (LoanLine line : lines.of(loan)) {
      String damage = typed.value(LineBack.damageField(line));
      if (!damage.isEmpty()) {
        told =
            told.with(
                words, (told.value(words) + " " + line.code() + " damaged: " + damage).strip());
      }
    }
    return told;
  }

  /** Of each bow that came back; where none did, of what came back without one. */
  private void report(Telling told, List<PartChoice> back, Function<RigId, About> about) {
    Set<RigId> rigs =
        told.part() != null
            ? Set.of()
            : back.stream()
                .map(PartChoice::rig)
                .filter(rig -> rig != null && (told.rig() == null || rig.equals(told.rig())))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    for (RigId rig : rigs) {
      tellReport.tell(told, about.apply(rig));
    }
    if (rigs.isEmpty()) {
      List<PartChoice> parts = told.part() != null ? List.of(told.part()) : back;
      for (PartChoice part : parts) {
        tellReport.tell(
            new Telling(told.signs(), told.words(), part, part.rig()), about.apply(part.rig()));
      }
    }
  }

  private long receipt(LoanId loan, ReceiptDetails details) {
    return rows.add(
        NewRow.of("receipt")
            .with("loan_id", loan)
            .with("happened_at", details.happened())
            .with("recorded_at", time.now())
            .with("received_by", actor.id())
            .with("dry_loose_or_fall", details.told().tellsOfShock())
            .with("came_back_strung", details.told().tellsOfStrung())
            .with("words", details.told().words()));
  }

  private void settleDeposit(LoanId loan, ReceiptDetails details, boolean closed) {
    if (closed) {
      rows.change(
          """
          UPDATE loan SET deposit_back_minor = deposit_minor - ?2, deposit_kept_why = ?3, version = version + 1
           WHERE id = ?1\
          """,
          loan,
          details.depositKept().minor(),
          details.depositKept().minor() == 0 ? null : details.depositKeptWhy());
    }
  }

  private String sentence(
      LoanId loan,
      ReceiptDetails details,
      boolean closed,
      List<LineBack> here,
      Map<Long, LoanLine> out) {
    List<String> said = new ArrayList<>();
    int missing = out.size() - here.size();
    said.add("Received from loan " + loan.value());
    List<String> counted =
        here.stream()
            .map(back -> TakeLineBack.countedShort(out.get(back.line()), back))
            .filter(one -> !one.isEmpty())
            .toList();
    int arrows =
        here.stream()
            .map(back -> out.get(back.line()).shortBy(back.count()))
            .filter(Objects::nonNull)
            .mapToInt(n -> n)
            .sum();
    said.add(
        closed
            ? Missing.allBackBut(arrows)
            : missing + (missing == 1 ? " thing" : " things") + " still out");
    said.addAll(counted);
    if (details.stranger() != null) {
      said.add(details.stranger().found());
    }
    if (details.told().tellsOfShock()) {
      said.add("a dry loose or a fall was told");
    }
    if (details.told().tellsOfStrung()) {
      said.add("came back strung");
    }
    if (details.depositKept().compareTo(Money.ZERO) > 0 && closed) {
      said.add(details.depositKept().format(currency) + " of the deposit kept");
    }
    details.lines().stream()
        .filter(line -> line.damage() != null)
        // Its words stand with its withdrawal, where they go with whoever is named in them.
        .forEach(line -> said.add("damaged: " + out.get(line.line()).code()));
    return String.join("; ", said) + ".";
  }
}
