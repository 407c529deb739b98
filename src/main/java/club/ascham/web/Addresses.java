package club.ascham.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/**
 * Sends a page's address on to its plain spelling before anyone is asked to sign in: the platform
 * keeps the address in a cookie meanwhile, and where a cookie can't hold one of its characters the
 * request would never be answered. Programs are never asked.
 */
class Addresses {
  /** Before the platform asks who it is. */
  private static final int FIRST = 1_000;

  private static final String NOT_IN_A_COOKIE = "\",;\\";
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  void register(@Observes Filters filters) {
    filters.register(Addresses::plainOnly, FIRST);
  }

  private static void plainOnly(RoutingContext routing) {
    HttpServerRequest request = routing.request();
    if (!isPlain(String.valueOf(request.getHeader("Host")))) {
      routing.response().setStatusCode(400).end();
      return;
    }
    String address = request.uri();
    if (isPlain(address) || address.startsWith("/api/")) {
      routing.next();
      return;
    }
    boolean asks = request.method() == HttpMethod.GET || request.method() == HttpMethod.HEAD;
    if (asks && address.startsWith("/") && !address.startsWith("//")) {
      routing.response().setStatusCode(308).putHeader("Location", plain(address)).end();
    } else {
      routing.response().setStatusCode(400).end();
    }
  }

  static boolean isPlain(String address) {
    return address.chars().allMatch(Addresses::isPlain);
  }

  /** The same address with what a cookie can't hold escaped (RFC 3986, RFC 6265). */
  static String plain(String address) {
    StringBuilder plain = new StringBuilder();
    for (byte octet : address.getBytes(StandardCharsets.UTF_8)) {
      if (isPlain(octet & 0xFF)) {
        plain.append((char) octet);
      } else {
        plain.append('%').append(HEX.toHexDigits(octet));
      }
    }
    return plain.toString();
  }

  private static boolean isPlain(int character) {
    return character > ' ' && character < 0x7F && NOT_IN_A_COOKIE.indexOf(character) < 0;
  }
}
