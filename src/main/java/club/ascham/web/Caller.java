package club.ascham.web;

import io.vertx.core.net.SocketAddress;
import io.vertx.ext.web.RoutingContext;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * The network address that a request came from, as far as limits tell addresses apart.
 *
 * @param here whether it is this very machine, which stands for everyone behind a proxy that we
 *     were not told of, and so is never counted as one address
 */
public record Caller(String address, boolean here) {
  private static final int IPV6_NETWORK_BYTES = 8;

  public static Caller of(RoutingContext request) {
    SocketAddress remote = request.request().remoteAddress();
    String literal = remote == null ? null : remote.hostAddress();
    return literal == null ? new Caller("unknown", false) : of(literal);
  }

  /** An IPv6 caller is its network: one household holds billions of addresses. */
  static Caller of(String literal) {
    try {
      InetAddress address = InetAddress.getByName(literal);
      boolean here = address.isLoopbackAddress();
      return address instanceof Inet6Address
          ? new Caller(
              HexFormat.of().formatHex(Arrays.copyOf(address.getAddress(), IPV6_NETWORK_BYTES)),
              here)
          : new Caller(address.getHostAddress(), here);
    } catch (UnknownHostException notAnAddress) {
      return new Caller("unknown", false);
    }
  }
}
