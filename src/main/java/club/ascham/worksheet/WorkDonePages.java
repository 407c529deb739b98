package club.ascham.worksheet;

import club.ascham.people.Role;
import club.ascham.upkeep.DueRow;
import club.ascham.upkeep.DueWork;
import club.ascham.web.NoSuchThing;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** What was done, and what comes next. */
@Path("/upkeep/records")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class WorkDonePages {
  private static final int NEXT_THINGS = 3;

  @CheckedTemplate(basePath = "worksheet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RecordPage(WorkRecords.Done done, LocalDate nextDue, List<DueRow> nextThings)
      implements TemplateInstance {}

  private final WorkRecords records;
  private final DueWork dueWork;

  WorkDonePages(WorkRecords records, DueWork dueWork) {
    this.records = records;
    this.dueWork = dueWork;
  }

  @GET
  @Path("/{id}")
  public TemplateInstance one(@RestPath long id) {
    WorkRecords.Done done =
        records
            .record(id)
            .orElseThrow(() -> new NoSuchThing("There is no upkeep record " + id + "."));
    return new RecordPage(
        done,
        done.result() == Result.PASSED
            ? records.nextDue(done.item(), done.work()).orElse(null)
            : null,
        dueWork.keepingIn(NEXT_THINGS));
  }
}
