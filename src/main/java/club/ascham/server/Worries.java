package club.ascham.server;

import club.ascham.backup.Backups;
import club.ascham.backup.NightlyScheduler;
import club.ascham.backup.SecondFolder;
import club.ascham.form.Words;
import club.ascham.record.ClockCheck;
import club.ascham.store.FileTrouble;
import club.ascham.store.SameFile;
import club.ascham.store.Scrubbing;
import club.ascham.story.HighWater;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What is wrong with the server and not with a bow: an officer sees it without asking. */
@ApplicationScoped
public class Worries {
  private final List<Kind> kinds;

  Worries(
      Backups backups,
      SecondFolder copies,
      NightlyScheduler night,
      Scrubbing scrubbing,
      ClockCheck clock,
      ClockWatch clockWatch,
      DiskRoom disk,
      HighWater highWater,
      SameFile sameFile) {
    this.kinds =
        List.of(
            new Kind(About.FILE, () -> gone(sameFile)),
            new Kind(About.RECORD, () -> lost(highWater)),
            new Kind(About.BACKUPS, backups::worry),
            new Kind(About.COPIES, copies::worry),
            new Kind(About.ERASING, scrubbing::worry),
            new Kind(About.NIGHT, night::worry),
            new Kind(About.DISK, disk::worry),
            new Kind(About.CLOCK, clockWatch::worry),
            new Kind(About.CLOCK_BEHIND, clock::worry));
  }

  /** What a worry is about, the page that says more, and whether reading it is the answer. */
  public enum About {
    FILE(null, null, false),
    RECORD("/record", "Record", true),
    BACKUPS("/backups", "Backups", false),
    COPIES("/backups", "Backups", false),
    ERASING("/backups", "Backups", false),
    NIGHT(null, null, false),
    DISK(null, null, false),
    CLOCK(null, null, true),
    CLOCK_BEHIND("/record", "Record", false);

    private final String href;
    private final String word;
    private final boolean readable;

    About(String href, String word, boolean readable) {
      this.href = href;
      this.word = word;
      this.readable = readable;
    }
  }

  private record Kind(About about, Supplier<Optional<String>> said) {}

  /** What is wrong, and what to do. */
  @TemplateData
  public record Worry(About about, String said) {
    /** Null: no page says more. */
    public String href() {
      return about.href;
    }

    public String word() {
      return about.word;
    }

    /** Where it is said that it was read; null: it ends by being put right. */
    public String press() {
      return about.readable ? "/server/read/" + Words.of(about) : null;
    }
  }

  public List<Worry> now() {
    return kinds.stream()
        .flatMap(kind -> kind.said().get().map(said -> new Worry(kind.about(), said)).stream())
        .toList();
  }

  /** What readiness says too: nothing else matters as long as it is so. */
  private static Optional<String> gone(SameFile sameFile) {
    return sameFile.trouble().map(FileTrouble::getMessage);
  }

  private static Optional<String> lost(HighWater highWater) {
    List<String> said = highWater.unread().stream().map(highWater::said).toList();
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
  }
}
