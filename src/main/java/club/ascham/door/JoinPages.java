package club.ascham.door;

import club.ascham.form.Typed;
import club.ascham.people.ChangeAccounts;
import club.ascham.people.PasswordLinks;
import club.ascham.people.PasswordRules;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.WhoseClub;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestPath;

/**
 * Where a one-time link leads: choosing a password. Looking at it does not use it up. The form has
 * no key: nobody is signed in, it carries a password, and the link works once.
 */
@Path("/join")
class JoinPages {
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record JoinPage(String secret, String name, boolean joined, Typed typed)
      implements TemplateInstance {}

  /**
   * @param link null: none that was made here
   */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SpentLinkPage(PasswordLinks.Link link) implements TemplateInstance {}

  private final PasswordLinks links;
  private final ChangeAccounts changeAccounts;
  private final WhoseClub club;
  private final ClubTime time;

  JoinPages(PasswordLinks links, ChangeAccounts changeAccounts, WhoseClub club, ClubTime time) {
    this.links = links;
    this.changeAccounts = changeAccounts;
    this.club = club;
    this.time = time;
  }

  @GET
  @Path("/{secret}")
  @PermitAll
  public Response join(@RestPath String secret) {
    Optional<PasswordLinks.Link> link = links.find(secret);
    return link.isPresent() && link.get().isOpen(time.now())
        ? html(200, page(secret, link.get(), Typed.nothing()))
        : spent(link);
  }

  @POST
  @Path("/{secret}")
  @PermitAll
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response choose(@RestPath String secret, MultivaluedMap<String, String> form) {
    Optional<PasswordLinks.Link> link = links.find(secret);
    if (link.isEmpty() || !link.get().isOpen(time.now())) {
      return spent(link);
    }
    Typed typed = Typed.nothing();
    String password = Forms.exactly(form, "password");
    PasswordRules.fault(password, List.of(link.get().name(), club.name()))
        .ifPresent(fault -> typed.fault("password", fault));
    if (!typed.sound()) {
      return Go.again(page(secret, link.get(), typed));
    }
    return changeAccounts.choosePassword(secret, changeAccounts.hash(password))
        ? Go.to("/sign-in", "The password is chosen. Sign in as " + link.get().name() + " with it.")
        : spent(links.find(secret));
  }

  private static TemplateInstance page(String secret, PasswordLinks.Link link, Typed typed) {
    return new JoinPage(secret, link.name(), link.joined(), typed);
  }

  private static Response spent(Optional<PasswordLinks.Link> link) {
    return html(link.isPresent() ? 410 : 404, new SpentLinkPage(link.orElse(null)));
  }

  private static Response html(int status, TemplateInstance page) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(page)
        .build();
  }
}
