package club.ascham.record;

import club.ascham.story.SealedEntries;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The whole record as a file, one JSON line an entry: its seal, and the entry just as the seal
 * covers it, so that any program can reckon the chain again.
 */
@ApplicationScoped
class RecordFile {
  private final SealedEntries sealed;

  RecordFile(SealedEntries sealed) {
    this.sealed = sealed;
  }

  /** Written piece by piece, however long the record is. */
  Response download() {
    StreamingOutput lines =
        out -> {
          List<SealedEntries.Entry> some;
          long last = SealedEntries.BEFORE_ALL;
          while (!(some = sealed.after(last)).isEmpty()) {
            for (SealedEntries.Entry entry : some) {
              out.write(
                  "{\"seal\":\"%s\",\"entry\":%s}\n"
                      .formatted(entry.seal(), entry.entry())
                      .getBytes(StandardCharsets.UTF_8));
              last = entry.id();
            }
          }
        };
    return Response.ok(lines, "application/jsonl")
        .header("Content-Disposition", "attachment; filename=\"record.jsonl\"")
        .build();
  }
}
