package rillwright.cli.page.web;

import com.sun.net.httpserver.Headers;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * Lets in who was given the address, and nobody else: a name that somebody else's page made lead to
 * this machine is refused by its Host, another site's form by its Origin, another user of the
 * machine for want of the secret.
 *
 * @param host name and port under which the page is asked for: {@code 127.0.0.1:40123}
 * @param secret first part of each path
 */
record Gate(String host, String secret) {
  private static final int SECRET_BYTES = 18;
  private static final String FORM = "application/x-www-form-urlencoded";

  /** A gate with a new secret, 24 letters that an address can hold. */
  static Gate at(String host) {
    byte[] random = new byte[SECRET_BYTES];
    new SecureRandom().nextBytes(random);
    return new Gate(host, Base64.getUrlEncoder().withoutPadding().encodeToString(random));
  }

  /** Where to knock. */
  String address() {
    return origin() + "/" + secret + "/";
  }

  private String origin() {
    return "http://" + host;
  }

  /** The path behind the secret; empty if another stands there. */
  Optional<String> behind(String path) {
    int end = path.indexOf('/', 1);
    if (end < 0) {
      return Optional.empty();
    }
    byte[] given = path.substring(1, end).getBytes(StandardCharsets.UTF_8);
    boolean same = MessageDigest.isEqual(given, secret.getBytes(StandardCharsets.UTF_8));
    return same ? Optional.of(path.substring(end + 1)) : Optional.empty();
  }

  /** Why it is refused; empty if it may pass. */
  Optional<String> refusal(String method, Headers headers) {
    if (!headers.getOrDefault("Host", List.of()).equals(List.of(host))) {
      return Optional.of("this page answers at its own address only");
    }
    if (!method.equals("GET") && !method.equals("POST")) {
      return Optional.of("this page takes GET and POST");
    }
    boolean posts = method.equals("POST");
    List<String> origins = headers.getOrDefault("Origin", List.of());
    boolean ours = origins.equals(List.of(origin()));
    if (posts ? !ours : !origins.isEmpty() && !ours) {
      return Optional.of("this was sent by another page");
    }
    String site = headers.getOrDefault("Sec-Fetch-Site", List.of("none")).get(0);
    if (!site.equals("none") && !site.equals("same-origin")) {
      return Optional.of("this was sent by another page");
    }
    String type = headers.getOrDefault("Content-Type", List.of("")).get(0);
    return posts && !type.startsWith(FORM)
        ? Optional.of("this page takes forms only")
        : Optional.empty();
  }
}
