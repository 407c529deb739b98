package club.ascham.web;

import static club.ascham.web.Program.as;
import static club.ascham.web.Program.sending;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
class LimitsTest {
  private static final String OFFICER =
      "Basic "
          + Base64.getEncoder()
              .encodeToString("officer:demo-fleet".getBytes(StandardCharsets.UTF_8));

  @TestHTTPResource("/")
  URI home;

  @Test
  void aFormOfMoreThanSixtyFourKilobytes_isRefused_oneOfSixtyIsRead() {
    Visitor visitor = Visitor.unknown();
    visitor.get("/sign-in");
    visitor
        .post("/sign-in", Map.of("name", "x".repeat((int) Limits.FORM_BYTES), "password", "y"))
        .then()
        .statusCode(413);
    visitor
        .post("/sign-in", Map.of("name", "x", "password", "y".repeat(1800)))
        .then()
        .statusCode(422);
  }

  @Test
  void jsonOfMoreThanAMegabyte_isRefusedAsProblemDetails() {
    sending("officer")
        .body("{\"words\": \"" + "x".repeat((int) Limits.JSON_BYTES) + "\"}")
        .post("/api/risers")
        .then()
        .statusCode(413)
        .contentType("application/problem+json")
        .body("status", equalTo(413));
  }

  @Test
  void aFileOfMoreThanEightMegabytes_isToldItsSize() {
    as("officer")
        .contentType("text/csv")
        .body(new byte[(int) Limits.FILE_BYTES + 1])
        .post("/api/import/risers")
        .then()
        .statusCode(413)
        .contentType("application/problem+json")
        .body("detail", equalTo("That is 8388609 bytes; at most 8388608 are taken here."));
  }

  @Test
  void aBodyThatDoesNotSayItsLength_isCutOffOrRefused() throws Exception {
    assertEquals(
        413,
        streamed("/sign-in", "application/x-www-form-urlencoded", (int) Limits.FORM_BYTES * 2));
    assertEquals(411, streamed("/api/risers", "application/json", 100));
  }

  @Test
  void anAddressOrAHeaderThatNeverEnds_isRefused() throws Exception {
    HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    HttpRequest longAddress =
        HttpRequest.newBuilder(home.resolve("/find?q=" + "x".repeat(8000))).build();
    assertEquals(
        414, client.send(longAddress, HttpResponse.BodyHandlers.discarding()).statusCode());
    HttpRequest longHeader =
        HttpRequest.newBuilder(home.resolve("/sign-in"))
            .header("X-Long", "x".repeat(20_000))
            .build();
    assertEquals(431, client.send(longHeader, HttpResponse.BodyHandlers.discarding()).statusCode());
  }

  /** A byte now and then: nothing of the platform's own ends that. */
  @Test
  void aBodyThatTrickles_isEnded_whateverItIs() {
    List<CompletableFuture<String>> answers =
        Map.of(
                "/sign-in", "application/x-www-form-urlencoded",
                "/api/risers", "application/json",
                "/api/import", "text/csv")
            .entrySet()
            .stream()
            .map(one -> CompletableFuture.supplyAsync(() -> trickle(one.getKey(), one.getValue())))
            .toList();
    for (CompletableFuture<String> answer : answers) {
      assertTrue(answer.join().startsWith("HTTP/1.1 408"), answer.join());
      assertTrue(answer.join().contains("Content-Security-Policy"), answer.join());
    }
  }

  /** Sends a byte four times a second until the server ends it, and answers what it said. */
  @ParameterizedTest
  @ValueSource(strings = {"/api/borrowers application/json", "/api/import text/csv"})
  void whoHangsUpInTheMiddle_isOneLineInTheLog_withoutATrace(String pathAndKind) throws Exception {
    String[] to = pathAndKind.split(" ");
    BlockingQueue<LogRecord> told = new LinkedBlockingQueue<>();
    Handler listening =
        new Handler() {
          @Override
          public void publish(LogRecord line) {
            if (String.valueOf(line.getLoggerName()).equals(Failures.class.getName())) {
              told.add(line);
            }
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Logger log = Logger.getLogger(Failures.class.getName());
    log.addHandler(listening);
    try {
      try (Socket socket = new Socket(home.getHost(), home.getPort())) {
        socket
            .getOutputStream()
            .write(
                ("POST %s HTTP/1.1\r\nHost: localhost\r\nContent-Type: %s\r\n"
                        + "Authorization: %s\r\nContent-Length: 1000\r\n\r\n{\"name")
                    .formatted(to[0], to[1], OFFICER)
                    .getBytes(StandardCharsets.US_ASCII));
        socket.getOutputStream().flush();
        Thread.sleep(500);
      }
      LogRecord line = told.poll(10, TimeUnit.SECONDS);
      assertNotNull(line, "nothing was told");
      assertEquals(Level.INFO.intValue(), line.getLevel().intValue());
      assertNull(line.getThrown());
      assertTrue(told.isEmpty());
    } finally {
      log.removeHandler(listening);
    }
  }

  private String trickle(String path, String type) {
    try (Socket socket = new Socket(home.getHost(), home.getPort())) {
      socket.setSoTimeout(30_000);
      OutputStream out = socket.getOutputStream();
      out.write(
          ("POST %s HTTP/1.1\r\nHost: localhost\r\nContent-Type: %s\r\n"
                  + "Authorization: %s\r\nContent-Length: 1000\r\n\r\nname=")
              .formatted(path, type, OFFICER)
              .getBytes(StandardCharsets.US_ASCII));
      InputStream in = socket.getInputStream();
      while (in.available() == 0) {
        out.write('x');
        out.flush();
        Thread.sleep(250);
      }
      return new String(in.readNBytes(in.available()), StandardCharsets.ISO_8859_1);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  private int streamed(String path, String type, int bytes)
      throws IOException, InterruptedException {
    String begun = type.equals("application/json") ? "{\"notes\": \"" : "name=";
    byte[] body = (begun + "x".repeat(bytes)).getBytes(StandardCharsets.US_ASCII);
    HttpRequest request =
        HttpRequest.newBuilder(home.resolve(path))
            .header("Content-Type", type)
            .header("Authorization", OFFICER)
            .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(body)))
            .build();
    return HttpClient.newBuilder()
        .version(HttpClient.Version.HTTP_1_1)
        .build()
        .send(request, HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }
}
