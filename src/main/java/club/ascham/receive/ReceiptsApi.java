package club.ascham.receive;

import club.ascham.form.Outcome;
import club.ascham.form.PageAsked;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.ReceiptId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.people.Role;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Receipts as JSON. */
@Path("/api/receipts")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Receipts", description = "Taking lent things back; checking comes later")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class ReceiptsApi {

  /** One page of receipts, newest first. */
  record Page(List<ReceiptLine> items, int page, int size, long total) {}

  /** A receipt and the codes of what came back with it; of one that was undone, nothing did. */
  record ReceiptLine(
      long id,
      long loanId,
      Instant happenedAt,
      String receivedBy,
      boolean dryLooseOrFall,
      boolean cameBackStrung,
      String words,
      List<String> back,
      Instant undoneAt) {
    static ReceiptLine of(Receipts.Row row) {
      return new ReceiptLine(
          row.id(),
          row.loanId().value(),
          row.happenedAt(),
          row.receivedBy(),
          row.dryLooseOrFall(),
          row.cameBackStrung(),
          row.words(),
          row.back(),
          row.undoneAt());
    }
  }

  /**
   * A receipt; without {@code lines} all of the loan is back.
   *
   * @param signs what was told of the bow: crack, fell, loosed-without-arrow and the like
   * @param part the code of the part it was told of, or not-known
   * @param notSo true: no sign belongs to what the words sound like
   * @param dryLooseOrFall one tick for two signs
   * @param stranger a code that is on the bow and not on its list
   * @param strangerAnswer put-right, withdraw-both, correct-record or exchanged
   */
  record ReceiptBody(
      Long loanId,
      List<LineBody> lines,
      List<String> signs,
      String part,
      Boolean notSo,
      Boolean dryLooseOrFall,
      Boolean cameBackStrung,
      String depositKept,
      String depositKeptWhy,
      String on,
      String words,
      String stranger,
      String strangerAnswer,
      String onceKey) {}

  private final Receipts receipts;
  private final ReceiveLoan receiveLoan;
  private final LoanLines lines;
  private final Presses presses;

  ReceiptsApi(Receipts receipts, ReceiveLoan receiveLoan, LoanLines lines, Presses presses) {
    this.receipts = receipts;
    this.receiveLoan = receiveLoan;
    this.lines = lines;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Receipts, newest first")
  public Page list(
      @RestQuery @DefaultValue("1") int page, @RestQuery @DefaultValue("40") int size) {
    PageAsked asked = PageAsked.nearest(page, size);
    return new Page(
        receipts.page(asked.page(), asked.size()).stream().map(ReceiptLine::of).toList(),
        asked.page(),
        asked.size(),
        receipts.count());
  }

  @GET
  @Path("/{id}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "One receipt")
  public ReceiptLine one(@RestPath long id) {
    return receipts
        .row(id)
        .map(ReceiptLine::of)
        .orElseThrow(() -> new NoSuchThing("There is no receipt " + id + "."));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Receive what is back of a loan; what is missing keeps it open")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "all back, strung",
                    value = "{\"loanId\": 31, \"cameBackStrung\": true}"),
                @ExampleObject(
                    name = "all back, and a noise was heard",
                    value =
                        "{\"loanId\": 31, \"signs\": [\"creak\"], \"words\": \"At full draw.\","
                            + " \"part\": \"not-known\"}")
              }))
  public Response receive(ReceiptBody body) {
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, ReceiptId::new)
        .at(receipt -> "/api/receipts/" + receipt.value())
        .json(201, () -> received(body, typed), receipt -> one(receipt.value()));
  }

  private Outcome<ReceiptId> received(ReceiptBody body, Typed typed) {
    Integer loan = typed.whole("loanId", 1, Integer.MAX_VALUE);
    Optional<Receipts.Head> head =
        loan == null ? Optional.empty() : receipts.loan(new LoanId(loan));
    if (head.isEmpty()) {
      typed.fault("loanId", "There is no such loan.");
      return Outcome.unread();
    }
    List<LoanLine> out = lines.of(head.get().id()).stream().filter(LoanLine::isOut).toList();
    nameLines(typed, body, out);
    return receiveLoan.receive(head.get(), out, typed);
  }

  /** Turns lines named by code into the fields of the form. */
  private static void nameLines(Typed typed, ReceiptBody body, List<LoanLine> out) {
    if (body.lines() == null) {
      typed.with("allBack", "yes");
      return;
    }
    List<LineAsked> asked = out.stream().map(line -> new LineAsked(line, typed)).toList();
    LineBody.into(typed, body.lines(), asked, "That is not out with this loan.")
        .forEach(line -> typed.with("back-" + line, "yes"));
  }
}
