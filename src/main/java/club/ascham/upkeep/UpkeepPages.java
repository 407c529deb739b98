package club.ascham.upkeep;

import club.ascham.form.Option;
import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What must be done, in which order. */
@Path("/upkeep")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class UpkeepPages {
  /** One part of the plan. */
  public record Section(String title, String aside, List<DueRow> rows) {}

  @CheckedTemplate(basePath = "upkeep", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record UpkeepPage(
      List<Section> sections,
      List<DueRow> later,
      LaterPages laterPages,
      Typed typed,
      List<Option> kinds,
      List<Option> works,
      boolean narrowed,
      List<LimbsToWeigh.Due> toWeigh)
      implements TemplateInstance {}

  /** Where in the later work this page is. */
  public record LaterPages(int total, int from, int to, String earlier, String next) {
    static LaterPages of(DueFilter filter, int total) {
      int from = filter.skipped() + 1;
      int to = Math.min(total, filter.skipped() + filter.size());
      return new LaterPages(
          total,
          from,
          to,
          filter.page() > 1 ? filter.address(filter.page() - 1) : null,
          to < total ? filter.address(filter.page() + 1) : null);
    }

    public boolean opened() {
      return from > 1;
    }
  }

  private final DueWork dueWork;
  private final LimbsToWeigh limbsToWeigh;
  private final ClubTime time;

  UpkeepPages(DueWork dueWork, LimbsToWeigh limbsToWeigh, ClubTime time) {
    this.dueWork = dueWork;
    this.limbsToWeigh = limbsToWeigh;
    this.time = time;
  }

  @GET
  public TemplateInstance upkeep(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    DueFilter filter = DueFilter.parse(typed);
    LocalDate today = time.today();
    Map<Turn, List<DueRow>> turns =
        dueWork.month(filter).stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.due().turn(today),
                    () -> new EnumMap<>(Turn.class),
                    Collectors.toList()));
    List<Section> sections =
        Arrays.stream(Turn.values())
            .filter(turns::containsKey)
            .map(turn -> section(turn, turns.get(turn)))
            .toList();
    return new UpkeepPage(
        sections,
        dueWork.later(filter),
        LaterPages.of(filter, dueWork.countLater(filter)),
        typed,
        KINDS,
        WORKS,
        filter.narrows(),
        filter.narrows() ? List.of() : limbsToWeigh.on(today));
  }

  private static Section section(Turn turn, List<DueRow> rows) {
    return switch (turn) {
      case SAFETY ->
          new Section("Overdue, for safety", "Each of these stays in until it is done.", rows);
      case OVERDUE -> new Section("Overdue", "These may still go out.", rows);
      case THIS_WEEK -> new Section("This week", null, rows);
      case THIS_MONTH, LATER -> new Section("This month", null, rows);
    };
  }

  static final List<Option> KINDS =
      List.of(
          new Option("riser", "risers"),
          new Option("limbs", "limbs"),
          new Option("bow", "one-piece bows"),
          new Option("string", "strings"),
          new Option("stringer", "stringers"),
          new Option("arrows", "arrows"));
  static final List<Option> WORKS =
      Arrays.stream(Work.values()).map(work -> new Option(work.word(), work.said())).toList();
}
