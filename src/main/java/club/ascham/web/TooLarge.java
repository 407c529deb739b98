package club.ascham.web;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Says in words that a file is too large, where the server itself would answer with nothing. */
class TooLarge {
  /** Before the server's own look at the size. */
  private static final int EARLY = 1000;

  /** A browser shows the answer only once its file was taken; up to here we take and drop it. */
  private static final long DROPPED = 64L << 20;

  private static final String SAID =
      "At most %d MB at once are taken. Split the file, or bring fewer of them. Nothing was"
          + " changed.";

  private static final String PAGE =
      """
<!DOCTYPE html>
<html lang="en">
<head><meta charset="UTF-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Too large</title><link rel="stylesheet" href="/ascham.css"></head>
<body><main><h1>Too large</h1><p>%s</p><p><a class="button" href="/exchange">Choose again</a></p></main></body>
</html>
""";

  void listen(
      @Observes Filters filters,
      @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize most) {
    filters.register(routing -> look(routing, most.asLongValue()), EARLY);
  }

  private static void look(RoutingContext routing, long most) {
    long size = size(routing.request());
    if (size <= most) {
      routing.next();
    } else if (size <= DROPPED) {
      routing.request().handler(dropped -> {}).endHandler(all -> answer(routing, most)).resume();
    } else {
      routing.response().putHeader("Connection", "close");
      answer(routing, most);
    }
  }

  private static long size(HttpServerRequest request) {
    String length = request.getHeader("Content-Length");
    try {
      return length == null ? 0 : Long.parseLong(length);
    } catch (NumberFormatException unreadable) {
      return 0;
    }
  }

  private static void answer(RoutingContext routing, long most) {
    String said = SAID.formatted(most >> 20);
    boolean api = routing.normalizedPath().startsWith("/api/");
    routing
        .response()
        .setStatusCode(413)
        .putHeader("Content-Type", api ? Problem.MEDIA_TYPE : "text/html;charset=UTF-8")
        .putHeader(
            "Content-Security-Policy",
            "default-src 'none'; style-src 'self'; frame-ancestors 'none'")
        .end(
            api
                ? "{\"type\":\"about:blank\",\"title\":\"Too large\",\"status\":413,\"detail\":\"%s\"}"
                    .formatted(said)
                : PAGE.formatted(said));
  }
}
