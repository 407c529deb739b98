package club.ascham.home;

import club.ascham.backup.Backups;
import club.ascham.record.ClockCheck;
import club.ascham.store.Scrubbing;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is wrong with the server and not with a bow: an officer sees it without asking. */
@ApplicationScoped
class Worries {
  private final Backups backups;
  private final Scrubbing scrubbing;
  private final ClockCheck clock;

  Worries(Backups backups, Scrubbing scrubbing, ClockCheck clock) {
    this.backups = backups;
    this.scrubbing = scrubbing;
    this.clock = clock;
  }

  /** One sentence or two, and the page that says more. */
  @TemplateData
  public record Worry(String said, String href, String word) {}

  List<Worry> now() {
    return Stream.of(
            backups.worry().map(said -> new Worry(said, "/backups", "Backups")),
            scrubbing.worry().map(said -> new Worry(said, "/backups", "Backups")),
            clock.worry().map(said -> new Worry(said, "/record", "Record")))
        .flatMap(Optional::stream)
        .toList();
  }
}
