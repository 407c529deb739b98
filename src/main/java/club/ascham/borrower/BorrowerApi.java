package club.ascham.borrower;

import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.people.Role;
import club.ascham.story.FreeTexts;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Borrowers as JSON. */
@Path("/api/borrowers")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Borrowers", description = "Names, for those who hand out and take back")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class BorrowerApi {
  private static final String EXAMPLE =
      "{\"name\": \"Nell Harker\", \"contact\": \"07700 900417\", \"ageBand\": \"from-13-to-14\","
          + " \"guardian\": \"Tom Harker, 07700 900418\"}";

  /** One page of borrowers, by name. */
  record Page(List<BorrowerLine> items, int page, int size, long total) {}

  /** What is kept of a borrower. */
  record BorrowerLine(
      long id,
      String name,
      String contact,
      String memberNo,
      String ageBand,
      String guardian,
      int openLoans,
      int version) {
    static BorrowerLine of(Borrowers.Row row) {
      return new BorrowerLine(
          row.id().value(),
          row.name(),
          row.contact(),
          row.memberNo(),
          Words.of(row.ageBand()),
          row.guardian(),
          row.openLoans(),
          row.version());
    }
  }

  /**
   * A borrower to be kept; {@code version} with a correction, to notice that someone saved first.
   */
  record BorrowerBody(
      String name,
      String contact,
      String memberNo,
      String ageBand,
      String guardian,
      Integer version,
      String onceKey) {}

  /** What names a borrower in texts, as the page lists it before the press. */
  record Naming(List<FreeTexts.Hit> items) {}

  /**
   * @param stays the texts that named them, or may, and are there still; null: it was more than
   *     thirty days ago, and nothing tells any more
   */
  record Erased(BorrowerLine borrower, List<FreeTexts.Hit> stays) {}

  private final Borrowers borrowers;
  private final KeepBorrower keepBorrower;
  private final BorrowerData borrowerData;
  private final EraseBorrower eraseBorrower;
  private final Presses presses;

  BorrowerApi(
      Borrowers borrowers,
      KeepBorrower keepBorrower,
      BorrowerData borrowerData,
      EraseBorrower eraseBorrower,
      Presses presses) {
    this.borrowers = borrowers;
    this.keepBorrower = keepBorrower;
    this.borrowerData = borrowerData;
    this.eraseBorrower = eraseBorrower;
    this.presses = presses;
  }

  @GET
  @Operation(summary = "Borrowers by name; q is part of a name, or a member number")
  public Page list(
      @RestQuery String q,
      @RestQuery @DefaultValue("1") int page,
      @RestQuery @DefaultValue("40") int size) {
    PageAsked asked = PageAsked.nearest(page, size);
    return new Page(
        borrowers.named(q, asked.skipped(), asked.size()).stream().map(BorrowerLine::of).toList(),
        asked.page(),
        asked.size(),
        borrowers.countNamed(q));
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One borrower")
  public BorrowerLine one(@RestPath BorrowerId id) {
    return BorrowerLine.of(row(id));
  }

  @POST
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Enter a borrower; the very same name and contact lead to the one kept already")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "a junior", value = EXAMPLE)))
  public Response enter(BorrowerBody body) {
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, BorrowerId::new)
        .at(borrower -> "/api/borrowers/" + borrower.value())
        .json(
            201,
            () -> BorrowerDetails.parse(typed).map(keepBorrower::enter).orElseGet(Outcome::unread),
            borrower -> one(borrower));
  }

  @PUT
  @Path("/{id}")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Correct what is kept of a borrower")
  @RequestBody(content = @Content(examples = @ExampleObject(name = "a junior", value = EXAMPLE)))
  public Response correct(@RestPath BorrowerId id, BorrowerBody body) {
    row(id);
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, BorrowerId::new)
        .json(
            200,
            () ->
                BorrowerDetails.parse(typed)
                    .map(to -> keepBorrower.correct(id, to, typed.version()))
                    .orElseGet(Outcome::unread),
            borrower -> one(borrower));
  }

  @GET
  @Path("/{id}/data")
  @RolesAllowed(Role.OFFICERS)
  @Operation(summary = "Everything kept of one borrower, to be handed to them")
  public BorrowerData.Everything data(@RestPath BorrowerId id) {
    return borrowerData.of(row(id));
  }

  @GET
  @Path("/{id}/erasure")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "The free texts that name a borrower, or may, before they are made a number",
      description =
          "What is erasable and sure goes with the erasing; what is erasable and not sure, a family name alone, goes where its key is sent with it; the rest stays, since a seal covers it as it is.")
  public Naming naming(@RestPath BorrowerId id) {
    Borrowers.Row row = row(id);
    return new Naming(
        row.erasedOn() == null ? eraseBorrower.naming(row.id(), row.details()) : List.of());
  }

  @POST
  @Path("/{id}/erasure")
  @RolesAllowed(Role.OFFICERS)
  @Operation(
      summary = "Make a borrower a number; refused while they have anything of the club's",
      description =
          "No body. Loans and the equipment's history stay; backups made before keep the name until their turn is over. Each text is the key of one that GET lists as erasable and not sure; the answer lists what stays, and lists it again for thirty days. What is another person’s stays too.")
  public Response erase(@RestPath BorrowerId id, @RestQuery List<String> text) {
    Set<String> chosen = Set.copyOf(text);
    row(id);
    return presses
        .body(null, Typed.nothing(), BorrowerId::new)
        .json(
            200,
            () -> eraseBorrower.onRequest(id, chosen),
            erased -> new Erased(one(id), eraseBorrower.stays(erased)));
  }

  private Borrowers.Row row(BorrowerId id) {
    return borrowers
        .row(id)
        .orElseThrow(() -> new NoSuchThing("There is no borrower " + id.value() + "."));
  }
}
