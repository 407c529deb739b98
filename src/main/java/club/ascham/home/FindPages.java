package club.ascham.home;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.web.Go;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;

/** What the code box was given: straight on, a short list, or why there is nothing. */
@Path("/find")
class FindPages {
  private static final int LONGEST = 120;

  private final CodeBox box;
  private final ClubTime time;
  private final Actor actor;

  FindPages(CodeBox box, ClubTime time, Actor actor) {
    this.box = box;
    this.time = time;
    this.actor = actor;
  }

  /**
   * @param why null where something was found
   */
  @CheckedTemplate(basePath = "home", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FindPage(
      String typed,
      String why,
      List<Found.Hit<FoundPerson>> people,
      List<Found.Hit<FoundItem>> items,
      boolean more)
      implements TemplateInstance {}

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public Object find(@RestQuery String q) {
    String typed = q == null ? "" : q.substring(0, Math.min(q.length(), LONGEST));
    boolean hand = actor.role() != Role.COMMITTEE;
    Found found = box.find(typed, hand, time.today());
    if (found instanceof Found.One one) {
      return Go.to(one.next().path());
    }
    if (found instanceof Found.Several several) {
      return new FindPage(typed, null, several.people(), several.items(), several.more());
    }
    return new FindPage(typed, ((Found.Nothing) found).why(), List.of(), List.of(), false);
  }
}
