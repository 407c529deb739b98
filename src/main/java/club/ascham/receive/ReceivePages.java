package club.ascham.receive;

import club.ascham.Settings;
import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.check.StrangerAsked;
import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.Made;
import club.ascham.id.ReceiptId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.loan.LoanRow;
import club.ascham.loan.Loans;
import club.ascham.people.Role;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.report.SignList;
import club.ascham.report.Telling;
import club.ascham.time.ClubTime;
import club.ascham.undo.MayBeUndone;
import club.ascham.undo.Move;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Is it all here? Volunteers with a queue in front of them. */
@Path("/receive")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class ReceivePages {
  private static final int QUEUE_AT_MOST = 200;

  @CheckedTemplate(basePath = "receive", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record QueuePage(
      List<Asked> askBack,
      List<LoanRow> out,
      LocalDate today,
      Receipts.Done done,
      List<Receipts.Waiting> waiting,
      List<LaidAside> laidAside,
      List<Report> told,
      List<Move> undo,
      Currency currency)
      implements TemplateInstance {}

  /** A bow that came back with a danger against it that stood before it did. */
  record LaidAside(String code, String said) {}

  /**
   * @param against what stands against what is out, beside what is asked back
   * @param stranger null: not one bow is out, so that nothing can be on it
   */
  @CheckedTemplate(basePath = "receive", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReceivePage(
      Receipts.Head loan,
      Asked askBack,
      Against against,
      List<LineAsked> out,
      StrangerAsked stranger,
      SignList signs,
      LocalDate today,
      Typed typed,
      Currency currency)
      implements TemplateInstance {}

  private final Receipts receipts;
  private final Reports reports;
  private final ReceiveLoan receiveLoan;
  private final Loans loans;
  private final LoanLines lines;
  private final BowInHand bowInHand;
  private final AskBack askBack;
  private final Concerns concerns;
  private final MayBeUndone mayBeUndone;
  private final ClubTime time;
  private final Currency currency;
  private final Presses presses;

  ReceivePages(
      Receipts receipts,
      Reports reports,
      ReceiveLoan receiveLoan,
      Loans loans,
      LoanLines lines,
      BowInHand bowInHand,
      AskBack askBack,
      Concerns concerns,
      MayBeUndone mayBeUndone,
      ClubTime time,
      Settings settings,
      Presses presses) {
    this.receipts = receipts;
    this.reports = reports;
    this.receiveLoan = receiveLoan;
    this.loans = loans;
    this.lines = lines;
    this.bowInHand = bowInHand;
    this.askBack = askBack;
    this.concerns = concerns;
    this.mayBeUndone = mayBeUndone;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
    this.presses = presses;
  }

  @GET
  public TemplateInstance queue(@RestQuery Long done) {
    Receipts.Done saved = done == null ? null : receipts.done(done).orElse(null);
    List<Receipts.Waiting> waiting = saved == null ? List.of() : receipts.rigsOf(saved.id());
    List<Report> told = saved == null ? List.of() : reports.ofReceipt(saved.id());
    return new QueuePage(
        askBack.now(),
        loans.dueBy(LocalDate.of(9999, 1, 1), QUEUE_AT_MOST),
        time.today(),
        saved,
        waiting,
        laidAside(waiting, told),
        told,
        saved == null ? List.of() : mayBeUndone.ofReceipt(saved.id()),
        currency);
  }

  private List<LaidAside> laidAside(List<Receipts.Waiting> back, List<Report> told) {
    Map<RigId, Against> against =
        concerns.ofRigs(back.stream().map(Receipts.Waiting::rig).toList());
    Set<Long> toldNow = told.stream().map(Report::id).collect(Collectors.toSet());
    List<LaidAside> aside = new ArrayList<>();
    for (Receipts.Waiting rig : back) {
      against.get(rig.rig()).dangers().stream()
          .filter(one -> one.matter() != Matter.REPORTED || !toldNow.contains(one.source()))
          .map(Concern::said)
          .forEach(said -> aside.add(new LaidAside(rig.code(), said)));
    }
    return aside;
  }

  @GET
  @Path("/{loan}")
  public Response loan(@RestPath LoanId loan) {
    Receipts.Head head = head(loan);
    return head.isSession()
        ? Go.to("/sessions/" + loan.value())
        : Response.ok(page(head, Typed.nothing())).build();
  }

  @POST
  @Path("/{loan}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response receive(@RestPath LoanId loan, MultivaluedMap<String, String> form) {
    Receipts.Head head = head(loan);
    Typed typed = Forms.typed(form, "signs");
    return presses
        .<Made>formOf(
            typed,
            (kind, id) -> kind.equals("receipt") ? new ReceiptId(id) : new LoanId(id),
            made ->
                made instanceof ReceiptId
                    ? "/receive?done=" + made.value()
                    : "/loans/" + loan.value())
        .whole("lines")
        .page(() -> received(head, typed), () -> page(head, typed));
  }

  private Outcome<Made> received(Receipts.Head head, Typed typed) {
    List<LoanLine> out = out(head.id());
    return out.isEmpty()
        ? Outcome.of(receiveLoan.tellAfter(head.id(), typed))
        : Outcome.of(receiveLoan.receive(head, out, typed));
  }

  private ReceivePage page(Receipts.Head head, Typed typed) {
    List<LoanLine> out = out(head.id());
    Asked asked = askBack.of(head.id()).orElse(null);
    Against against = concerns.of(head.id());
    return new ReceivePage(
        head,
        asked,
        asked == null ? against : against.beyond(asked.against()),
        out.stream().map(line -> new LineAsked(line, typed)).toList(),
        bowInHand.asked(typed, out),
        SignList.of(Telling.Fields.PLAIN, ReceiptDetails.choices(out), typed),
        time.today(),
        typed,
        currency);
  }

  private List<LoanLine> out(LoanId loan) {
    return lines.of(loan).stream().filter(LoanLine::isOut).toList();
  }

  private Receipts.Head head(LoanId loan) {
    return receipts
        .loan(loan)
        .orElseThrow(() -> new NoSuchThing("There is no loan " + loan.value() + "."));
  }
}
