package club.ascham.server;

import club.ascham.form.Words;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** What is wrong with the server, as JSON. */
@Path("/api/server")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Role.OFFICERS)
@Tag(name = "Server", description = "What is wrong with the server and not with a bow")
class ServerApi {
  /**
   * @param about file, record, backups, copies, erasing, night, disk, clock or clock-behind
   * @param said what is wrong, and what to do
   * @param readable whether it ends by being read, and not by being put right
   */
  public record WorryJson(String about, String said, boolean readable) {}

  public record All(List<WorryJson> items) {}

  private final Worries worries;
  private final ReadWorry readWorry;
  private final Actor actor;

  ServerApi(Worries worries, ReadWorry readWorry, Actor actor) {
    this.worries = worries;
    this.readWorry = readWorry;
    this.actor = actor;
  }

  @GET
  @Operation(summary = "What is wrong with the server; nothing: all is well")
  public All all() {
    return new All(
        worries.now().stream()
            .map(
                worry ->
                    new WorryJson(Words.of(worry.about()), worry.said(), worry.press() != null))
            .toList());
  }

  @POST
  @Path("/read/{about}")
  @Operation(summary = "Say that it was read, which the record then tells")
  public All read(@RestPath String about) {
    Worries.About worry = ServerPages.named(about);
    readWorry.tell(worry, actor.id());
    readWorry.end(worry);
    return all();
  }
}
