package club.ascham.rig;

import club.ascham.askback.DoNotShoot;
import club.ascham.bow.Gauge;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpSheet;
import club.ascham.bow.SetUpStep;
import club.ascham.concern.Against;
import club.ascham.concern.Beside;
import club.ascham.concern.Concerns;
import club.ascham.drawing.DrawForce;
import club.ascham.drawing.RigDrawing;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.RigRecords.Checked;
import club.ascham.rules.Club;
import club.ascham.standing.State;
import club.ascham.story.Story;
import club.ascham.undo.MayBeUndone;
import club.ascham.undo.Move;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.verdict.Reading;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The list of rigs, and what one of them is. */
@Path("/rigs")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
public class RigPages {
  private static final int ROWS_A_PAGE = 50;
  private static final int RECENT = 6;
  private static final int STORY_LINES = 12;

  /** One rig in the list. */
  record Line(
      String page,
      String name,
      String what,
      String limbs,
      String string,
      String length,
      String weight,
      String hand,
      State state,
      Beside beside,
      boolean askedBack,
      RigRow row) {}

  /** How many rigs stand in a state, with the address of exactly those. */
  record Count(State state, long rigs, String address) {}

  /** A column's head that sorts by it. */
  record Column(String word, String address, boolean sorted, boolean figures) {}

  @CheckedTemplate(basePath = "rig", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RigsPage(
      List<Count> counts,
      List<Column> columns,
      List<Line> lines,
      int total,
      int from,
      String earlier,
      String later,
      RigFilter filter,
      Typed typed,
      boolean none)
      implements TemplateInstance {}

  /** A part as the rig's page lists it. */
  record Fitted(Part part, String facts) {
    /** The name of its small drawing. */
    public String kind() {
      return part.kind().mark();
    }

    public String place() {
      return Words.of(part.place());
    }

    public String page() {
      return itemPage(part.code());
    }
  }

  @CheckedTemplate(basePath = "rig", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RigPage(
      RigRow row,
      String path,
      String facts,
      RigDrawing drawing,
      String drawn,
      List<MeasuredRow> readings,
      RigRecords.Finished finished,
      RigRecords.OpenSetUp open,
      List<Fitted> parts,
      List<RigRecords.Kept> kept,
      List<Check> checks,
      Trends.Shown trend,
      List<String> learnt,
      DrawForce force,
      List<RigRecords.Weighed> weighings,
      List<RigRecords.Lent> loans,
      List<RigRecords.Accident> accidents,
      boolean newSlip,
      Against against,
      List<Move> undo,
      List<Story.Line> story)
      implements TemplateInstance {}

  /** A check as a line: its figures in words. */
  record Check(Checked check, String sign, String word, String brace, String tiller) {}

  @CheckedTemplate(basePath = "rig", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FormerRigPage(
      RigRecords.Head head, List<RigRecords.Fitting> fittings, List<Story.Line> story)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "rig", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SheetPage(
      RigCard card,
      String facts,
      RigDrawing drawing,
      List<MeasuredRow> readings,
      List<Fitted> parts,
      List<SetUpStep> steps,
      RigRecords.Finished finished,
      Against against,
      String clubName)
      implements TemplateInstance {}

  private final RigRecords records;
  private final OwnRecords ownRecords;
  private final Trends trends;
  private final Concerns concerns;
  private final MayBeUndone mayBeUndone;
  private final Story story;
  private final Club club;

  RigPages(
      RigRecords records,
      OwnRecords ownRecords,
      Trends trends,
      Concerns concerns,
      MayBeUndone mayBeUndone,
      Story story,
      Club club) {
    this.records = records;
    this.ownRecords = ownRecords;
    this.trends = trends;
    this.concerns = concerns;
    this.mayBeUndone = mayBeUndone;
    this.story = story;
    this.club = club;
  }

  /** The address of a rig's page. */
  public static String page(RigId rig) {
    return "/rigs/" + rig.value();
  }

  @GET
  public TemplateInstance rigs(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    RigFilter filter = RigFilter.parse(typed);
    Integer page = typed.whole("page", 1, 1000);
    List<RigRow> all = records.all();
    List<RigRow> meant = filter.of(all);
    int from = Math.min((page == null ? 0 : page - 1) * ROWS_A_PAGE, meant.size());
    int to = Math.min(from + ROWS_A_PAGE, meant.size());
    int at = from / ROWS_A_PAGE + 1;
    List<RigRow> shown = meant.subList(from, to);
    Map<RigId, Against> against =
        concerns.ofRigs(shown.stream().map(row -> row.card().id()).toList());
    return new RigsPage(
        counts(all),
        columns(filter),
        shown.stream().map(row -> line(row, against.get(row.card().id()))).toList(),
        meant.size(),
        from,
        from > 0 ? filter.address(filter.sort(), at - 1) : null,
        to < meant.size() ? filter.address(filter.sort(), at + 1) : null,
        filter,
        typed,
        all.isEmpty());
  }

  private static List<Count> counts(List<RigRow> all) {
    Map<State, Long> byState = RigRecords.byState(all);
    List<Count> counts = new ArrayList<>();
    for (State state :
        List.of(
            State.READY,
            State.ON_LOAN,
            State.TO_BE_CHECKED,
            State.IN_THE_WORKSHOP,
            State.WITHDRAWN)) {
      counts.add(new Count(state, byState.getOrDefault(state, 0L), "/rigs?state=" + state.word()));
    }
    return counts;
  }

  private static List<Column> columns(RigFilter filter) {
    return List.of(
        column("Rig", RigFilter.Sort.CODE, filter, false),
        column("Bow length", RigFilter.Sort.BOW_LENGTH, filter, true),
        column("Marked", RigFilter.Sort.WEIGHT, filter, true),
        column("State", RigFilter.Sort.STATE, filter, false));
  }

  private static Column column(String word, RigFilter.Sort by, RigFilter filter, boolean figures) {
    return new Column(word, filter.address(by, 1), filter.sort() == by, figures);
  }

  private static Line line(RigRow row, Against against) {
    RigCard card = row.card();
    return new Line(
        page(card.id()),
        card.name(),
        card.body() == null ? "" : card.body().name(),
        card.limbs() == null ? "" : card.limbs().code(),
        card.string() == null ? "" : card.string().code(),
        row.bowLengthIn().isPresent() ? row.bowLengthIn().getAsInt() + " in" : "",
        row.markedLb() == 0 ? "" : PartWords.pounds(row.markedLb()),
        row.hand() == null ? "either" : Words.said(row.hand()),
        row.state(),
        against.beside(row.state()),
        row.loanId() != null && DoNotShoot.says(against),
        row);
  }

  @GET
  @Path("/{id:\\d+}")
  public TemplateInstance rig(@PathParam("id") long id) {
    RigId rig = new RigId(id);
    Optional<RigRow> row = records.one(rig);
    return row.isPresent() ? assembled(row.get()) : former(rig);
  }

  private TemplateInstance former(RigId rig) {
    RigRecords.Head head =
        records
            .head(rig)
            .orElseThrow(() -> new NoSuchThing("There is no rig " + rig.value() + "."));
    return new FormerRigPage(head, records.fittings(rig), story.ofRig(rig, STORY_LINES));
  }

  private TemplateInstance assembled(RigRow row) {
    RigCard card = row.card();
    RigId rig = card.id();
    Optional<RigSpec> spec = card.spec();
    List<Checked> checks = records.checks(rig, RECENT);
    RigRecords.Finished finished =
        card.setUpId() == null ? null : records.finished(card.setUpId()).orElse(null);
    Checked last =
        finished == null
            ? null
            : checks.stream()
                .filter(Checked::isMeasured)
                .filter(check -> check.happenedAt().isAfter(finished.finishedAt()))
                .findFirst()
                .orElse(null);
    List<RigRecords.Lent> loans = records.loans(rig, RECENT);
    return new RigPage(
        row,
        page(rig),
        spec.map(PartWords::rig).orElse("not whole: " + missing(card)),
        spec.map(s -> drawing(card, s, last)).orElse(null),
        last != null ? "check" : card.setUp() != null ? "set-up" : "nothing",
        MeasuredRow.of(card, last),
        finished,
        records.openSetUp(rig).orElse(null),
        fitted(card),
        records.kept(rig),
        checks.stream().map(RigPages::check).toList(),
        trends.of(card),
        ownRecords.words(card),
        spec.map(s -> DrawForce.of(s, card.setUp())).orElse(null),
        records.weighings(card),
        loans,
        records.accidents(rig),
        newSlip(loans, finished),
        concerns.of(rig),
        mayBeUndone.of(rig),
        story.ofRig(rig, STORY_LINES));
  }

  /** Whether it was measured anew since a borrower has it, so that their slip says what was. */
  private static boolean newSlip(List<RigRecords.Lent> loans, RigRecords.Finished finished) {
    return finished != null
        && loans.stream()
            .anyMatch(
                loan ->
                    loan.backAt() == null
                        && !loan.isSession()
                        && finished.finishedAt().isAfter(loan.outAt()));
  }

  private static String missing(RigCard card) {
    return card.body() == null
        ? "it has no riser"
        : card.spec().isEmpty() ? "it has no limbs" : "it has no string";
  }

  private static RigDrawing drawing(RigCard card, RigSpec spec, Checked last) {
    Reading shown = last == null ? Reading.of(card.setUp()) : last.reading();
    Length nocking = card.setUp() == null ? null : card.setUp().nocking();
    return RigDrawing.of(spec, card.targets(), shown, nocking, card.setUp());
  }

  private static List<Fitted> fitted(RigCard card) {
    return card.parts().stream().map(part -> new Fitted(part, PartWords.facts(part))).toList();
  }

  static String itemPage(String code) {
    return "/items/" + code;
  }

  private static Check check(Checked check) {
    return new Check(
        check,
        switch (check.verdict()) {
          case "FIT" -> "fine";
          case "ADJUST" -> "note";
          default -> "stop";
        },
        switch (check.verdict()) {
          case "FIT" -> "fit";
          case "ADJUST" -> "adjust";
          default -> "withdraw";
        },
        check.isMeasured() ? LengthText.both(check.reading().brace()) : check.unmeasured(),
        check.isMeasured() ? Gauge.signed(check.reading().tiller()) : "");
  }

  @GET
  @Path("/{id:\\d+}/sheet")
  public TemplateInstance sheet(@PathParam("id") long id) {
    RigId rig = new RigId(id);
    RigCard card = records.known(rig).card();
    RigSpec spec =
        card.spec()
            .orElseThrow(
                () -> new NoSuchThing("This rig is not whole yet: it has no set-up sheet."));
    return new SheetPage(
        card,
        PartWords.rig(spec),
        drawing(card, spec, null),
        MeasuredRow.of(card, null),
        fitted(card),
        SetUpSheet.steps(spec, card.targets(), card.level()),
        card.setUpId() == null ? null : records.finished(card.setUpId()).orElse(null),
        concerns.of(rig),
        club.rules().name());
  }
}
