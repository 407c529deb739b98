package club.ascham.home;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.units.CodeParse;
import club.ascham.units.ItemCode;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.Sought;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;

/** What the code box was given: straight on, a short list, or why there is nothing. */
@Path("/find")
class FindPages {
  private static final int LONGEST = 120;

  private final CodeBox box;
  private final ClubTime time;
  private final Actor actor;
  private final Sought sought;

  FindPages(CodeBox box, ClubTime time, Actor actor, Sought sought) {
    this.box = box;
    this.time = time;
    this.actor = actor;
    this.sought = sought;
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

  /** Straight on where there is one thing; else to the page that lists, without the words. */
  @POST
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response look(MultivaluedMap<String, String> form) {
    String typed = Forms.exactly(form, "q");
    String words = typed.substring(0, Math.min(typed.length(), LONGEST));
    return find(words) instanceof Found.One one
        ? Go.to(one.next().path())
        : sought.on("/find", words);
  }

  /**
   * @param q a code, where a link or a label's own leads here; other words are no matter for an
   *     address
   */
  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public Object found(@RestQuery String q) {
    if (q != null && ItemCode.parse(q) instanceof CodeParse.NotACode) {
      return Go.to("/find");
    }
    String typed = q == null ? sought.words() : q;
    Found found = find(typed);
    if (found instanceof Found.One one) {
      return Go.to(one.next().path());
    }
    if (found instanceof Found.Several several) {
      return new FindPage(typed, null, several.people(), several.items(), several.more());
    }
    return new FindPage(typed, ((Found.Nothing) found).why(), List.of(), List.of(), false);
  }

  private Found find(String typed) {
    return box.find(typed, actor.role() != Role.COMMITTEE, time.today());
  }
}
