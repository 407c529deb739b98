package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;

/**
 * A program that calls the JSON API for someone. An {@link IOException} means that no answer came:
 * nobody knows whether the call was heeded.
 */
public final class ApiCaller {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final HttpClient client;
  private final URI address;
  private final String credentials;

  ApiCaller(HttpClient client, URI address, String name, String password) {
    this.client = client;
    this.address = address;
    this.credentials =
        "Basic "
            + Base64.getEncoder()
                .encodeToString((name + ":" + password).getBytes(StandardCharsets.UTF_8));
  }

  /** What came back, read to its end. */
  public record Answer(int status, JsonNode body, HttpHeaders headers) {
    public long id() {
      return body.path("id").asLong();
    }
  }

  public Answer get(String path) throws IOException, InterruptedException {
    return send(request(path).GET());
  }

  public Answer post(String path, Object body) throws IOException, InterruptedException {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofByteArray(JSON.writeValueAsBytes(body))));
  }

  /** Every sentence is still sealed, and every row is what was last recorded of it. */
  public void findsTheRecordWhole() throws IOException, InterruptedException {
    Answer verified = get("/api/record/verification");
    assertEquals(200, verified.status(), () -> verified.body().toString());
    assertEquals("[]", verified.body().path("faults").toString());
    assertTrue(verified.body().path("entries").asLong() > 0, () -> verified.body().toString());
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(address.resolve(path))
        .header("Authorization", credentials)
        .timeout(PATIENCE);
  }

  private Answer send(HttpRequest.Builder request) throws IOException, InterruptedException {
    HttpResponse<byte[]> answer =
        client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
    return new Answer(answer.statusCode(), JSON.readTree(answer.body()), answer.headers());
  }
}
