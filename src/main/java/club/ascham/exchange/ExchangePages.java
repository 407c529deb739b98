package club.ascham.exchange;

import club.ascham.exchange.Import.CsvFile;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.ClubId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** What goes out as files, and what comes in from them. Names and prices are the officer's. */
@Path("/exchange")
@RolesAllowed(Role.OFFICERS)
class ExchangePages {
  private static final String HERE = "/exchange";

  @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ExchangePage(List<Group> groups, String mostLines, String error)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "exchange", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record TriedPage(Tried tried) implements TemplateInstance {}

  /** Lists that belong together on the page. */
  @TemplateData
  record Group(String title, List<Named> lists) {}

  /**
   * @param forSpreadsheets whether a club is likely to fill it in a spreadsheet
   */
  @TemplateData
  record Named(String name, String title, boolean forSpreadsheets) {}

  /**
   * What a dry run found.
   *
   * @param key of the files, for the press that imports them
   */
  @TemplateData
  record Tried(ImportReport report, String key) {
    public boolean sound() {
      return report.sound();
    }

    public int rows() {
      return report.rows();
    }

    public List<ImportReport.PerList> lists() {
      return report.lists();
    }

    public List<BadCell> bad() {
      return report.bad();
    }

    public int badInAll() {
      return report.badInAll();
    }

    public int notShown() {
      return report.badInAll() - report.bad().size();
    }
  }

  private final Export export;
  private final Everything everything;
  private final Import door;
  private final TriedFiles triedFiles;
  private final Actor actor;
  private final Presses presses;

  ExchangePages(
      Export export,
      Everything everything,
      Import door,
      TriedFiles triedFiles,
      Actor actor,
      Presses presses) {
    this.export = export;
    this.everything = everything;
    this.door = door;
    this.triedFiles = triedFiles;
    this.actor = actor;
    this.presses = presses;
  }

  @GET
  public TemplateInstance page() {
    return page(null);
  }

  @GET
  @Path("/everything.zip")
  @Produces(Everything.MEDIA_TYPE)
  public Response everything() {
    return everything.download();
  }

  @GET
  @Path("/{file}")
  public Response file(@RestPath String file) {
    return CsvAnswer.of(export, file)
        .orElseThrow(() -> new NoSuchThing("There is no list that is called " + file + "."));
  }

  @GET
  @Path("/columns/{file}")
  public Response columns(@RestPath String file) {
    return CsvAnswer.ofColumns(file)
        .orElseThrow(() -> new NoSuchThing("There is no list that is called " + file + "."));
  }

  @POST
  @Path("/try")
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response tryOut(@RestForm("files") List<FileUpload> uploads) {
    List<CsvFile> files = files(uploads);
    if (files.isEmpty()) {
      return Go.again(page("Choose at least one file."));
    }
    ImportReport report = door.tryOut(door.read(files));
    if (!report.sound()) {
      return Go.again(new TriedPage(new Tried(report, "")));
    }
    return Response.ok(new TriedPage(new Tried(report, triedFiles.keep(files)))).build();
  }

  @POST
  @Path("/import")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response take(@RestForm(Presses.OF_A_FORM) String typedKey) {
    // The form's key is the key of the files as well: they are imported once.
    String key = typedKey == null ? "" : typedKey;
    Typed typed = Typed.nothing().with(Presses.OF_A_FORM, key);
    Optional<Sheets> kept = triedFiles.kept(key).map(door::read);
    AtomicReference<ImportReport> unsound = new AtomicReference<>();
    return presses
        .form(typed, ClubId::new, club -> HERE)
        .page(
            () -> kept.map(files -> taken(files, unsound)).orElseGet(Outcome::unread),
            done -> {
              triedFiles.forget(key);
              return Go.to(HERE, done.said());
            },
            // Someone saved between the dry run and the press; or the files were kept too long ago.
            () ->
                unsound.get() != null
                    ? new TriedPage(new Tried(unsound.get(), ""))
                    : page("Those files are no longer kept here: choose them again."));
  }

  private Outcome<ClubId> taken(Sheets files, AtomicReference<ImportReport> unsound) {
    ImportReport report = door.take(files, actor.id());
    if (!report.sound()) {
      unsound.set(report);
      return Outcome.unread();
    }
    int rows = report.rows();
    return Outcome.done(ClubId.ONE, rows == 1 ? "One row is in." : rows + " rows are in.");
  }

  private static List<CsvFile> files(List<FileUpload> uploads) {
    List<CsvFile> files = new ArrayList<>();
    try {
      for (FileUpload upload : uploads == null ? List.<FileUpload>of() : uploads) {
        // A browser sends a nameless part where nothing was chosen.
        if (upload.fileName() != null && !upload.fileName().isBlank()) {
          files.add(new CsvFile(upload.fileName(), Files.readAllBytes(upload.uploadedFile())));
        }
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("can't read what was sent", failure);
    }
    return files;
  }

  private static ExchangePage page(String error) {
    return new ExchangePage(groups(), "%,d".formatted(CsvText.MOST_LINES), error);
  }

  private static List<Group> groups() {
    return List.of(
        group("What the club owns", ItemLists.all()),
        group("Rigs", RecordLists.ofRigs()),
        group("Lending", RecordLists.ofLending()),
        group("Checking", RecordLists.ofChecking()),
        group("Upkeep", UpkeepLists.records()),
        group("Rules", List.of(UpkeepLists.rules(), UpkeepLists.braceBands())),
        group("The story", UpkeepLists.stories()));
  }

  private static Group group(String title, List<CsvList> lists) {
    return new Group(
        title,
        lists.stream()
            .map(l -> new Named(l.name(), l.title(), l.isItems() || l.name().equals("borrowers")))
            .toList());
  }
}
