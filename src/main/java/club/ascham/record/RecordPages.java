package club.ascham.record;

import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.story.Seal;
import club.ascham.story.VerifyRecord;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
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
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** What was changed, by whom, and is the record whole? */
@Path("/record")
@RolesAllowed(Role.OFFICERS)
class RecordPages {
  private static final int A_PAGE = 40;
  private static final int MOST_ROWS_SHOWN = 500;

  /**
   * @param verified null: not asked
   * @param seal what was found of the seal typed; null: none was
   * @param older where the list goes on; null: it ends here
   * @param clockWorry what is wrong with the server's clock; null: nothing
   */
  @CheckedTemplate(basePath = "record", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RecordPage(
      List<Entries.Entry> entries,
      Entries.Entry newest,
      VerifyRecord.Verified verified,
      String seal,
      Typed typed,
      Long older,
      String clockWorry)
      implements TemplateInstance {}

  /** One entry and what it changed. */
  @CheckedTemplate(basePath = "record", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record EntryPage(Entries.Entry entry, List<Entries.RowChange> changes)
      implements TemplateInstance {}

  private final Entries entries;
  private final RecordFile file;
  private final VerifyRecord verifyRecord;
  private final ClockCheck clock;

  RecordPages(Entries entries, RecordFile file, VerifyRecord verifyRecord, ClockCheck clock) {
    this.entries = entries;
    this.file = file;
    this.verifyRecord = verifyRecord;
    this.clock = clock;
  }

  @GET
  public TemplateInstance record(@RestQuery String before) {
    long from =
        before != null && before.matches("\\d{1,12}") ? Long.parseLong(before) : Long.MAX_VALUE;
    return page(from, null, null, Typed.nothing());
  }

  @GET
  @Path("/{id}")
  public TemplateInstance entry(@RestPath long id) {
    Entries.Entry entry =
        entries
            .numbered(id)
            .orElseThrow(() -> new NoSuchThing("There is no such entry in the record."));
    return new EntryPage(entry, entries.changes(entry.id(), MOST_ROWS_SHOWN));
  }

  /** Changes nothing; a post because it may take a while. */
  @POST
  @Path("/verify")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public TemplateInstance verify(MultivaluedMap<String, String> form) {
    return page(Long.MAX_VALUE, verifyRecord.verify(), null, Typed.nothing());
  }

  @GET
  @Path("/export")
  @Produces("application/jsonl")
  public Response export() {
    return file.download();
  }

  @GET
  @Path("/seal")
  public Response seal(@RestQuery String seal) {
    Typed typed = Typed.nothing().with("seal", seal == null ? "" : seal);
    Optional<String> digits = Seal.typed(typed.value("seal"));
    if (digits.isEmpty()) {
      typed.fault(
          "seal", "A seal has digits and the letters a to f: give its first eight or more.");
      return Go.again(page(Long.MAX_VALUE, null, null, typed));
    }
    return Go.shown(page(Long.MAX_VALUE, null, said(verifyRecord.seen(digits.get())), typed));
  }

  private static String said(VerifyRecord.SealSeen seen) {
    if (seen instanceof VerifyRecord.SealSeen.Known known) {
      return "That is the seal of entry %d. %s since."
          .formatted(
              known.entry(),
              known.since() == 0 ? "Nothing was told" : known.since() + " entries were told");
    }
    return "No entry has that seal: it was misread, or the record was shortened or changed since it was printed.";
  }

  private TemplateInstance page(
      long before, VerifyRecord.Verified verified, String seal, Typed typed) {
    List<Entries.Entry> listed = entries.before(before, A_PAGE + 1);
    boolean goesOn = listed.size() > A_PAGE;
    List<Entries.Entry> shown = goesOn ? listed.subList(0, A_PAGE) : listed;
    return new RecordPage(
        shown,
        before == Long.MAX_VALUE
            ? shown.stream().findFirst().orElse(null)
            : entries.before(Long.MAX_VALUE, 1).get(0),
        verified,
        seal,
        typed,
        goesOn ? shown.get(A_PAGE - 1).id() : null,
        clock.worry().orElse(null));
  }
}
