package club.ascham.backup;

import club.ascham.store.Rows;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The backups there are, each held against the record by the seal in its name. */
@ApplicationScoped
class BackupList {
  private final Backups backups;
  private final Rows rows;
  private final ObjectMapper json;

  BackupList(Backups backups, Rows rows, ObjectMapper json) {
    this.backups = backups;
    this.rows = rows;
    this.json = json;
  }

  /**
   * @param before the migration it was made before; null: none
   * @param entry of the record whose seal it bears; null: the record has no such seal
   */
  @TemplateData
  public record Line(
      String file, Instant made, String size, long bytes, String seal, String before, Long entry) {}

  private record Known(String seal, long entry) {}

  /** Newest first. */
  List<Line> lines() {
    List<Backups.Backup> all = backups.all();
    Map<String, Long> entries =
        rows
            .list(
                Known.class,
                """
                SELECT seal, max(entry) AS entry FROM (
                  SELECT asked.value AS seal, s.id AS entry FROM json_each(?1) asked JOIN story s ON substr(s.hash, 1, 12) = asked.value
                  UNION ALL
                  SELECT asked.value, c.row_id FROM json_each(?1) asked
                    JOIN change c ON c.table_name = 'story' AND substr(c.what ->> '$.seal[0]', 1, 12) = asked.value) borne
                 GROUP BY seal""",
                asked(all))
            .stream()
            .collect(Collectors.toMap(Known::seal, Known::entry));
    return all.stream()
        .map(
            backup ->
                new Line(
                    backup.name().fileName(),
                    backup.name().moment(),
                    backup.size(),
                    backup.bytes(),
                    backup.name().shownSeal(),
                    backup.name().before(),
                    entries.get(backup.name().seal())))
        .toList();
  }

  private String asked(List<Backups.Backup> all) {
    try {
      return json.writeValueAsString(all.stream().map(b -> b.name().seal()).distinct().toList());
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
