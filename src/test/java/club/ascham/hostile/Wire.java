package club.ascham.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Sends bytes as they are and reads what comes back: a proper client would refuse to send most of
 * them.
 */
final class Wire {
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final URI server;

  Wire(URI server) {
    this.server = server;
  }

  /**
   * What came back.
   *
   * @param status 0: the connection was closed without an answer; -1: none came in time
   */
  record Answer(int status, List<String> headers, String body, Duration took) {
    static final int CLOSED = 0;
    static final int TOO_LATE = -1;

    String header(String name) {
      String wanted = name.toLowerCase(Locale.ROOT) + ":";
      return headers.stream()
          .filter(line -> line.toLowerCase(Locale.ROOT).startsWith(wanted))
          .map(line -> line.substring(wanted.length()).strip())
          .findFirst()
          .orElse("");
    }

    List<String> cookies() {
      return headers.stream()
          .filter(line -> line.toLowerCase(Locale.ROOT).startsWith("set-cookie:"))
          .map(line -> line.substring("set-cookie:".length()).strip().split(";")[0])
          .toList();
    }

    boolean isPage() {
      return header("Content-Type").startsWith("text/html");
    }
  }

  Answer send(byte[] request) throws IOException {
    long start = System.nanoTime();
    byte[] bytes;
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(server.getHost(), server.getPort()), 5_000);
      socket.setSoTimeout((int) PATIENCE.toMillis());
      ByteArrayOutputStream read = new ByteArrayOutputStream();
      try {
        socket.getOutputStream().write(request);
        socket.getOutputStream().flush();
        InputStream in = socket.getInputStream();
        byte[] some = new byte[16_384];
        for (int n = in.read(some); n >= 0; n = in.read(some)) {
          read.write(some, 0, n);
        }
      } catch (SocketTimeoutException late) {
        if (read.size() == 0) {
          return new Answer(Answer.TOO_LATE, List.of(), "", since(start));
        }
      } catch (IOException closedMeanwhile) {
        // Refused before all was sent: what was answered until then counts.
      }
      bytes = read.toByteArray();
    }
    return parsed(new String(bytes, StandardCharsets.ISO_8859_1), since(start));
  }

  private static Duration since(long start) {
    return Duration.ofNanos(System.nanoTime() - start);
  }

  private static Answer parsed(String text, Duration took) {
    int end = text.indexOf("\r\n\r\n");
    if (end < 0 || !text.startsWith("HTTP/1.")) {
      return new Answer(Answer.CLOSED, List.of(), text, took);
    }
    List<String> head = new ArrayList<>(List.of(text.substring(0, end).split("\r\n")));
    int status = Integer.parseInt(head.remove(0).split(" ")[1]);
    String body = text.substring(end + 4);
    boolean chunked =
        head.stream()
            .anyMatch(line -> line.toLowerCase(Locale.ROOT).equals("transfer-encoding: chunked"));
    String whole = chunked ? joined(body) : body;
    return new Answer(
        status,
        head,
        new String(whole.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8),
        took);
  }

  private static String joined(String chunks) {
    StringBuilder whole = new StringBuilder();
    int at = 0;
    while (true) {
      int line = chunks.indexOf("\r\n", at);
      if (line < 0) {
        return whole.toString();
      }
      int size = Integer.parseInt(chunks.substring(at, line).split(";")[0].strip(), 16);
      int from = line + 2;
      if (size == 0 || from + size > chunks.length()) {
        return whole.append(chunks, from, Math.min(chunks.length(), from + size)).toString();
      }
      whole.append(chunks, from, from + size);
      at = from + size + 2;
    }
  }
}
