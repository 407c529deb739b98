package club.ascham.home;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.Authenticated;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;

/** What is on tonight. */
@Path("/")
@Authenticated
class HomePages {
  @CheckedTemplate(basePath = "home", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record HomePage() implements TemplateInstance {}

  @GET
  public TemplateInstance home() {
    return new HomePage();
  }
}
