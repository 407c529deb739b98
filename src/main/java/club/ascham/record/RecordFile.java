package club.ascham.record;

import club.ascham.story.SealedEntries;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * The whole record as a file, one JSON line an entry: its seal, and the entry just as the seal
 * covers it, so that any program can reckon the chain again.
 */
@ApplicationScoped
public class RecordFile {
  /** No seal is like it: the end is the end. */
  private static final String WHOLE = "";

  private final SealedEntries sealed;

  RecordFile(SealedEntries sealed) {
    this.sealed = sealed;
  }

  Response download() {
    StreamingOutput lines = out -> write(out, WHOLE);
    return Response.ok(lines, "application/jsonl")
        .header("Content-Disposition", "attachment; filename=\"record.jsonl\"")
        .build();
  }

  /**
   * Writes it piece by piece, however long it is.
   *
   * @param newest the seal of the last entry to be written
   */
  public void writeUpTo(String newest, OutputStream out) throws IOException {
    write(out, newest);
  }

  private void write(OutputStream out, String newest) throws IOException {
    for (SealedEntries.Entry entry : sealed.after(SealedEntries.BEFORE_ALL)) {
      out.write(
          "{\"seal\":\"%s\",\"entry\":%s}\n"
              .formatted(entry.seal(), entry.entry())
              .getBytes(StandardCharsets.UTF_8));
      if (newest.equals(entry.seal())) {
        return;
      }
    }
  }
}
