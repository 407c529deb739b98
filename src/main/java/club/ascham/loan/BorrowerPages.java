package club.ascham.loan;

import club.ascham.borrower.BorrowerData;
import club.ascham.borrower.BorrowerDetails;
import club.ascham.borrower.BorrowerId;
import club.ascham.borrower.Borrowers;
import club.ascham.borrower.EraseBorrower;
import club.ascham.borrower.KeepBorrower;
import club.ascham.concern.Beside;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.LoanId;
import club.ascham.people.Role;
import club.ascham.store.OlderBackups;
import club.ascham.story.FreeTexts;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import club.ascham.web.Sought;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;

/** Who borrows: for those who hand out and take back, not for the committee. */
@Path("/borrowers")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class BorrowerPages {
  private static final int LONGEST = 120;
  private static final String NAMED = "named";
  private static final String NARROWED = "/borrowers?" + NAMED + "=on";

  @CheckedTemplate(basePath = "loan", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record BorrowersPage(List<Borrowers.Row> borrowers, String lookedFor, Paging paging)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "loan", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record BorrowerPage(
      Borrowers.Row borrower,
      String age,
      List<LoanRow> open,
      Map<LoanId, Beside> heaviest,
      List<LoanRow> past,
      LocalDate today,
      Typed typed,
      boolean sent)
      implements TemplateInstance {}

  /**
   * @param refusal why they can't be erased yet; null: nothing is in the way
   */
  @CheckedTemplate(basePath = "loan", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ErasePage(
      Borrowers.Row borrower, List<FreeTexts.Hit> hits, OlderBackups.Older older, String refusal)
      implements TemplateInstance {}

  private final Borrowers borrowers;
  private final Loans loans;
  private final KeepBorrower keepBorrower;
  private final BorrowerData borrowerData;
  private final EraseBorrower eraseBorrower;
  private final OlderBackups backups;
  private final Lending lending;
  private final Concerns concerns;
  private final Sought sought;
  private final Presses presses;

  BorrowerPages(
      Borrowers borrowers,
      Loans loans,
      KeepBorrower keepBorrower,
      BorrowerData borrowerData,
      EraseBorrower eraseBorrower,
      OlderBackups backups,
      Lending lending,
      Concerns concerns,
      Sought sought,
      Presses presses) {
    this.borrowers = borrowers;
    this.loans = loans;
    this.keepBorrower = keepBorrower;
    this.borrowerData = borrowerData;
    this.eraseBorrower = eraseBorrower;
    this.backups = backups;
    this.lending = lending;
    this.concerns = concerns;
    this.sought = sought;
    this.presses = presses;
  }

  @GET
  public TemplateInstance list(UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    String lookedFor = typed.ticked(NAMED) ? sought.words() : "";
    Integer asked = typed.whole("page", 1, 100_000);
    int page = asked == null ? 1 : asked;
    int skipped = (page - 1) * PageAsked.USUAL;
    int total = borrowers.countNamed(lookedFor);
    String address = lookedFor.isEmpty() ? "/borrowers?page=" : NARROWED + "&page=";
    return new BorrowersPage(
        borrowers.named(lookedFor, skipped, PageAsked.USUAL),
        lookedFor,
        Paging.of(page, PageAsked.USUAL, total, other -> address + other));
  }

  /** Changes nothing; a post because a name is no matter for an address. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response look(MultivaluedMap<String, String> form) {
    String words = Forms.typed(form).value("q");
    return words.isEmpty()
        ? sought.on("/borrowers", "")
        : sought.on(NARROWED, words.substring(0, Math.min(words.length(), LONGEST)));
  }

  @GET
  @Path("/{borrower}")
  public TemplateInstance borrower(@RestPath BorrowerId borrower) {
    Borrowers.Row row = row(borrower);
    Typed kept =
        Typed.nothing()
            .with("name", row.name())
            .with("contact", row.contact())
            .with("memberNo", row.memberNo())
            .with("ageBand", Words.of(row.ageBand()))
            .with("guardian", row.guardian());
    return page(row, kept, false);
  }

  @POST
  @Path("/{borrower}")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response correct(@RestPath BorrowerId borrower, MultivaluedMap<String, String> form) {
    Borrowers.Row row = row(borrower);
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, BorrowerId::new, id -> "/borrowers/" + id.value())
        .whole("version")
        .page(
            () ->
                Outcome.of(
                    BorrowerDetails.parse(typed),
                    to -> keepBorrower.correct(row.id(), to, typed.version())),
            () -> page(row, typed, true));
  }

  /** Everything kept of them, as a file to hand to them. */
  @GET
  @Path("/{borrower}/data")
  @RolesAllowed(Role.OFFICERS)
  @Produces(MediaType.APPLICATION_JSON)
  public Response data(@RestPath BorrowerId borrower) {
    return Response.ok(borrowerData.of(row(borrower)))
        .header(
            "Content-Disposition",
            "attachment; filename=\"borrower-" + borrower.value() + ".json\"")
        .build();
  }

  @GET
  @Path("/{borrower}/erase")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance askToErase(@RestPath BorrowerId borrower) {
    return erasePage(row(borrower), null);
  }

  @POST
  @Path("/{borrower}/erase")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response erase(@RestPath BorrowerId borrower, MultivaluedMap<String, String> form) {
    Borrowers.Row row = row(borrower);
    Typed typed = Forms.typed(form, FreeTexts.TICKED);
    return presses
        .form(typed, BorrowerId::new, id -> "/borrowers/" + id.value())
        .whole("form")
        .page(
            () -> eraseBorrower.onRequest(row.id(), FreeTexts.ticked(typed)),
            () -> erasePage(row, typed.messageAt("form")));
  }

  private ErasePage erasePage(Borrowers.Row row, String refusal) {
    if (row.erasedOn() != null) {
      throw new NoSuchThing("That borrower is a number already.");
    }
    return new ErasePage(
        row, eraseBorrower.naming(row.id(), row.details()), backups.older(), refusal);
  }

  private Borrowers.Row row(BorrowerId borrower) {
    return borrowers
        .row(borrower)
        .orElseThrow(() -> new NoSuchThing("There is no borrower " + borrower.value() + "."));
  }

  private BorrowerPage page(Borrowers.Row row, Typed typed, boolean sent) {
    LocalDate today = lending.terms().today();
    List<LoanRow> open = loans.list(LoanFilter.of(row.id(), LoanShow.OPEN), today);
    return new BorrowerPage(
        row,
        AgeWords.said(row.ageBand()),
        open,
        concerns.besideLoans(open.stream().map(LoanRow::id).toList()),
        loans.list(LoanFilter.of(row.id(), LoanShow.CLOSED), today),
        today,
        typed,
        sent);
  }
}
