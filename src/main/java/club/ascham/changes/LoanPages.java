package club.ascham.changes;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.askback.DoNotShoot;
import club.ascham.concern.Against;
import club.ascham.concern.Beside;
import club.ascham.concern.Concerns;
import club.ascham.form.Option;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.LoanId;
import club.ascham.loan.DueChoice;
import club.ascham.loan.Lending;
import club.ascham.loan.LendingTerms;
import club.ascham.loan.LentAdvice;
import club.ascham.loan.LoanFilter;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.loan.LoanRow;
import club.ascham.loan.LoanSheet;
import club.ascham.loan.Loans;
import club.ascham.loan.OpenLoanCounts;
import club.ascham.loan.Paging;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.time.ClubTime;
import club.ascham.undo.MayBeUndone;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import club.ascham.web.Forms;
import club.ascham.web.Presses;
import club.ascham.web.Sought;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** What is out, with whom, until when; the committee sees it without names. */
@Path("/loans")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class LoanPages {
  /**
   * @param heaviest what weighs most against what is out with each; no entry: nothing
   * @param askedBack of which something is to be asked for at once
   * @param names whether this person sees who borrowed
   */
  @CheckedTemplate(basePath = "changes", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LoansPage(
      List<LoanRow> loans,
      Map<LoanId, Beside> heaviest,
      Set<LoanId> askedBack,
      Typed typed,
      OpenLoanCounts counts,
      String showing,
      boolean names,
      LocalDate today,
      Paging paging)
      implements TemplateInstance {}

  /**
   * The one form of several that was sent, with what is wrong in it.
   *
   * @param form {@code extend}, {@code items}, {@code lost}; empty: none was sent
   */
  record Sent(String form, Typed typed) {
    /** What was typed into a form, for that form alone. */
    public Typed into(String other) {
      return form.equals(other) ? typed : Typed.nothing();
    }

    public boolean is(String other) {
      return form.equals(other);
    }

    /** What is wrong with the form as a whole; null: nothing was sent. */
    public String said() {
      if (form.isEmpty()) {
        return null;
      }
      for (String whole : List.of("form", "version", "lines")) {
        if (typed.messageAt(whole) != null) {
          return typed.messageAt(whole);
        }
      }
      return "Nothing has been changed yet; what you typed is still here.";
    }
  }

  /**
   * @param askBack what of it must not be shot; null: nothing
   * @param accidents after which what was in hand is kept as it is
   * @param arrowsMissing that did not come back with the rest
   * @param arrowsOut whether arrows could be handed back here
   * @param told what was told of what went out with it
   * @param against what is out, today
   * @param advice that speaks against a bow that is out, for whoever has it
   * @param besides what goes beside the bow and may be exchanged here
   * @param stood against what went out, as it went out
   * @param typedIn the day on which a loan of an earlier day was typed in; null: on its own
   */
  @CheckedTemplate(basePath = "changes", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LoanPage(
      LoanSheet loan,
      Asked askBack,
      List<OpenAccidents.OpenAccident> accidents,
      List<LoanLine> out,
      List<LoanLine> back,
      int arrowsMissing,
      boolean arrowsOut,
      List<Report> told,
      Against against,
      List<String> advice,
      Against stood,
      LocalDate typedIn,
      List<Option> besides,
      boolean names,
      boolean late,
      String draw,
      String experience,
      String deposit,
      String depositBack,
      String unit,
      List<DueChoice> longer,
      String usualWeeks,
      MayBeUndone.OfLoan undo,
      Sent sent)
      implements TemplateInstance {}

  private final Loans loans;
  private final LoanLines lines;
  private final Reports reports;
  private final AskBack askBack;
  private final OpenAccidents accidents;
  private final ExtendLoan extendLoan;
  private final ChangeKit changeKit;
  private final ReportLost reportLost;
  private final Lending lending;
  private final Concerns concerns;
  private final LentAdvice lentAdvice;
  private final MayBeUndone mayBeUndone;
  private final ClubTime time;
  private final Actor actor;
  private final Sought sought;
  private final Presses presses;

  LoanPages(
      Loans loans,
      LoanLines lines,
      Reports reports,
      AskBack askBack,
      OpenAccidents accidents,
      ExtendLoan extendLoan,
      ChangeKit changeKit,
      ReportLost reportLost,
      Lending lending,
      Concerns concerns,
      LentAdvice lentAdvice,
      MayBeUndone mayBeUndone,
      ClubTime time,
      Actor actor,
      Sought sought,
      Presses presses) {
    this.loans = loans;
    this.lines = lines;
    this.reports = reports;
    this.askBack = askBack;
    this.accidents = accidents;
    this.extendLoan = extendLoan;
    this.changeKit = changeKit;
    this.reportLost = reportLost;
    this.lending = lending;
    this.concerns = concerns;
    this.lentAdvice = lentAdvice;
    this.mayBeUndone = mayBeUndone;
    this.time = time;
    this.actor = actor;
    this.sought = sought;
    this.presses = presses;
  }

  @GET
  public TemplateInstance list(UriInfo uri) {
    MultivaluedMap<String, String> query = new MultivaluedHashMap<>(uri.getQueryParameters());
    query.remove("q");
    Typed typed = Forms.typed(query);
    if (typed.ticked(LoanFilter.NAMED)) {
      typed.with("q", sought.words());
    }
    LoanFilter asked = LoanFilter.parse(typed);
    LoanFilter filter = actor.seesNames() ? asked : asked.withoutText();
    LocalDate today = lending.terms().today();
    int total = loans.count(filter, today);
    List<LoanRow> found = loans.list(filter, today);
    Map<LoanId, Against> against =
        concerns.ofLoans(found.stream().filter(LoanRow::isOpen).map(LoanRow::id).toList(), today);
    return new LoansPage(
        found,
        Concerns.beside(against),
        against.entrySet().stream()
            .filter(one -> DoNotShoot.says(one.getValue()))
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet()),
        typed,
        loans.openCounts(today),
        Words.of(filter.show()),
        actor.seesNames(),
        today,
        Paging.of(filter.page(), filter.size(), total, filter::address));
  }

  /** Changes nothing; a post because a name is no matter for an address. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response look(MultivaluedMap<String, String> form) {
    LoanFilter filter = LoanFilter.parse(Forms.typed(form));
    return sought.on(filter.address(1), filter.text() == null ? "" : filter.text());
  }

  @GET
  @Path("/{loan}")
  public TemplateInstance loan(@RestPath LoanId loan) {
    return page(loans.known(loan), Typed.nothing(), "");
  }

  @POST
  @Path("/{loan}/extend")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response extend(@RestPath LoanId loan, MultivaluedMap<String, String> form) {
    LoanSheet sheet = loans.known(loan);
    Typed typed = Forms.typed(form);
    return answer(
        sheet,
        typed,
        "extend",
        () ->
            ExtendCommand.parse(sheet.id(), sheet.dueOn(), sheet.isJunior(), typed, lending.terms())
                .map(command -> extendLoan.extend(command, actor.id())));
  }

  @POST
  @Path("/{loan}/items")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath LoanId loan, MultivaluedMap<String, String> form) {
    LoanSheet sheet = loans.known(loan);
    Typed typed = Forms.typed(form);
    return answer(
        sheet,
        typed,
        "items",
        () ->
            ChangeKitCommand.parse(sheet.id(), typed)
                .map(command -> changeKit.change(command, actor.id())));
  }

  @POST
  @Path("/{loan}/lost")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response lost(@RestPath LoanId loan, MultivaluedMap<String, String> form) {
    LoanSheet sheet = loans.known(loan);
    Typed typed = Forms.typed(form);
    return answer(
        sheet,
        typed,
        "lost",
        () ->
            LostCommand.parse(sheet.id(), typed, lending.terms())
                .map(command -> reportLost.report(command, actor.id())));
  }

  /** Does it, if it could be read; what refuses stands at its field. */
  private Response answer(
      LoanSheet sheet, Typed typed, String form, Supplier<Optional<Outcome<LoanId>>> work) {
    return presses
        .form(typed, LoanId::new, Loans::page)
        .whole("form")
        .page(() -> work.get().orElseGet(Outcome::unread), () -> page(sheet, typed, form));
  }

  private LoanPage page(LoanSheet sheet, Typed typed, String sent) {
    LendingTerms terms = lending.terms();
    List<LoanLine> all = lines.of(sheet.id());
    List<LoanLine> out = all.stream().filter(LoanLine::isOut).toList();
    return new LoanPage(
        sheet,
        askBack.of(sheet.id()).orElse(null),
        accidents.with(sheet.id()),
        out,
        all.stream().filter(line -> !line.isOut()).toList(),
        all.stream().map(LoanLine::missing).filter(Objects::nonNull).mapToInt(n -> n).sum(),
        out.stream().anyMatch(LoanLine::isArrows),
        reports.of(sheet.id()),
        concerns.of(sheet.id()),
        lentAdvice.of(sheet, out),
        concerns.whenLent(sheet.id()),
        typedIn(sheet),
        out.stream()
            .filter(line -> line.rig() == null)
            .map(line -> new Option(Long.toString(line.id()), line.label()))
            .toList(),
        actor.seesNames(),
        !out.isEmpty() && sheet.dueOn().isBefore(terms.today()),
        sheet.drawLength() == null
            ? null
            : LengthText.both(sheet.drawLength()) + (sheet.drawEstimated() ? ", estimated" : ""),
        Words.said(sheet.experience()),
        money(sheet.depositMinor()),
        sheet.depositBackMinor() == null ? null : money(sheet.depositBackMinor()),
        terms.unit() == LengthUnit.INCH ? "in" : "mm",
        terms.longer(sheet.dueOn()),
        terms.usualWeeks(),
        mayBeUndone.of(sheet.id()),
        new Sent(sent, typed));
  }

  private LocalDate typedIn(LoanSheet sheet) {
    LocalDate recorded = time.dayOf(sheet.recordedAt());
    return recorded.isAfter(time.dayOf(sheet.issuedAt())) ? recorded : null;
  }

  private String money(long minor) {
    return new Money(minor).format(lending.currency());
  }
}
