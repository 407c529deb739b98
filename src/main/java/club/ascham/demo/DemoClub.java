package club.ascham.demo;

import club.ascham.exchange.Import;
import club.ascham.exchange.Import.CsvFile;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Wherrybridge Archers: two years of an invented club, ending today, and its string book of five.
 */
@ApplicationScoped
public class DemoClub {
  private static final String FOLDER = "demo-data/";

  private final Import door;
  private final ClubTime time;

  DemoClub(Import door, ClubTime time) {
    this.door = door;
    this.time = time;
  }

  /**
   * Loads the club into a database that holds only its name and accounts.
   *
   * <p>Every date moves by the same whole number of days, from the day on which the files end to
   * today. Whole weeks would keep the club's evening a Tuesday, but leave the data up to six days
   * old: what is due today would be late, and what came back last evening would be last week's. The
   * evening moves instead, to whatever day yesterday was.
   */
  public void load() {
    LocalDate anchor = LocalDate.parse(lines("anchor.csv").get(1));
    List<CsvFile> files = new ArrayList<>();
    for (String list : Import.lists()) {
      String name = list + ".csv";
      byte[] bytes = bytes(name);
      if (bytes != null) {
        files.add(new CsvFile(name, bytes));
      }
    }
    door.fill(files, ChronoUnit.DAYS.between(anchor, time.today()));
  }

  private static List<String> lines(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8).lines().toList();
  }

  /** Null where the demo has no such file. */
  private static byte[] bytes(String name) {
    try (InputStream file =
        Thread.currentThread().getContextClassLoader().getResourceAsStream(FOLDER + name)) {
      return file == null ? null : file.readAllBytes();
    } catch (IOException failure) {
      throw new UncheckedIOException("can't read " + FOLDER + name, failure);
    }
  }
}
