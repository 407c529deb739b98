package club.ascham.story;

import club.ascham.store.SmallFile;
import club.ascham.store.SqliteFile;
import club.ascham.store.Stored;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far the record of the club's file had come, kept beside it in a few lines of text.
 *
 * @param end null: nothing was told yet
 * @param settledBackup the newest backup that is known to hold what the file does not: it was
 *     passed over by a restore, or its loss was noticed; null: there is none
 * @param unread losses that no officer has read yet
 */
public record HighWaterMark(RecordEnd end, String settledBackup, List<Loss> unread) {
  private static final String TITLE = "How far the record of ascham.db had come. Leave it here.";
  private static final String NOTHING = "-";

  static final HighWaterMark NONE = new HighWaterMark(null, null, List.of());

  HighWaterMark reached(RecordEnd newest) {
    return new HighWaterMark(newest, settledBackup, unread);
  }

  HighWaterMark allRead() {
    return new HighWaterMark(end, settledBackup, List.of());
  }

  /**
   * The mark after another file was put in place on purpose: what it lacks is no news.
   *
   * @param file the one put in place
   * @param newestBackup of those there are; null: there is none
   */
  public static HighWaterMark restored(Path file, String newestBackup) throws SQLException {
    try (Connection connection = SqliteFile.open(file)) {
      return new HighWaterMark(RecordEnd.in(connection).orElse(null), newestBackup, List.of());
    }
  }

  public void write(Path file) throws IOException {
    List<String> lines = new ArrayList<>(List.of(TITLE, "end " + text(end)));
    lines.add("settled " + (settledBackup == null ? NOTHING : settledBackup));
    unread.forEach(
        loss ->
            lines.add(
                "lost %s %s %s %s"
                    .formatted(
                        Stored.moment(loss.noticed()),
                        loss.backup() == null ? NOTHING : loss.backup(),
                        text(loss.known()),
                        text(loss.found()))));
    SmallFile.write(file, String.join("\n", lines) + "\n");
  }

  private static String text(RecordEnd end) {
    return end == null
        ? "- - -"
        : end.entry() + " " + end.seal() + " " + Stored.moment(end.recorded());
  }

  /**
   * Empty: there is none.
   *
   * @throws IOException it is there and can't be read, or says nothing that we write
   */
  static Optional<HighWaterMark> read(Path file) throws IOException {
    try {
      List<String> lines = Files.readAllLines(file);
      String[] end = lines.get(1).split(" ");
      String settled = lines.get(2).split(" ")[1];
      return Optional.of(
          new HighWaterMark(
              end(end, 1),
              settled.equals(NOTHING) ? null : settled,
              losses(lines.stream().skip(3))));
    } catch (NoSuchFileException none) {
      return Optional.empty();
    } catch (IndexOutOfBoundsException | DateTimeException | NumberFormatException other) {
      throw new IOException("no high-water mark", other);
    }
  }

  private static List<Loss> losses(Stream<String> lines) {
    return lines
        .map(line -> line.split(" "))
        .map(
            word ->
                new Loss(
                    Stored.moment(word[1]),
                    word[2].equals(NOTHING) ? null : word[2],
                    end(word, 3),
                    end(word, 6)))
        .toList();
  }

  private static RecordEnd end(String[] words, int at) {
    return words[at].equals(NOTHING)
        ? null
        : new RecordEnd(Long.parseLong(words[at]), words[at + 1], Stored.moment(words[at + 2]));
  }
}
