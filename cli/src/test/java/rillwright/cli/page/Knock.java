package rillwright.cli.page;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A request as bytes, so that every header can be forged.
 *
 * @param method of HTTP
 * @param path with the secret
 * @param headers by their names
 * @param body of a form
 */
record Knock(String method, String path, Map<String, String> headers, String body) {
  private static final String HOST = "127.0.0.1:";
  private static final byte[] LOOPBACK = {127, 0, 0, 1};

  /** What comes back. */
  record Answer(int status, String head, String body) {}

  /** To look at a piece of a page. */
  static Knock look(URI page, String piece) {
    return new Knock("GET", page.getPath() + piece, Map.of("Host", HOST + page.getPort()), "");
  }

  /** To have something done, as the page itself asks for it. */
  static Knock post(URI page, String piece, String form) {
    return new Knock(
        "POST",
        page.getPath() + piece,
        Map.of(
            "Host",
            HOST + page.getPort(),
            "Origin",
            "http://" + HOST + page.getPort(),
            "Sec-Fetch-Site",
            "same-origin",
            "Content-Type",
            "application/x-www-form-urlencoded"),
        form);
  }

  /** The same with another header; without it if that is empty. */
  Knock with(String header, String value) {
    Map<String, String> all = new LinkedHashMap<>(headers);
    all.put(header, value);
    if (value.isEmpty()) {
      all.remove(header);
    }
    return new Knock(method, path, all, body);
  }

  /** The same at another path. */
  Knock at(String other) {
    return new Knock(method, other, headers, body);
  }

  /** The same by another method. */
  Knock by(String other) {
    return new Knock(other, path, headers, body);
  }

  Answer send(int port) throws IOException {
    byte[] form = body.getBytes(StandardCharsets.UTF_8);
    StringBuilder head = new StringBuilder(method + " " + path + " HTTP/1.1\r\n");
    headers.forEach((name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
    head.append("Connection: close\r\nContent-Length: ").append(form.length).append("\r\n\r\n");
    try (Socket socket = new Socket(InetAddress.getByAddress(LOOPBACK), port)) {
      socket.getOutputStream().write(head.toString().getBytes(StandardCharsets.UTF_8));
      socket.getOutputStream().write(form);
      socket.getOutputStream().flush();
      String all = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      int end = all.indexOf("\r\n\r\n");
      return new Answer(
          Integer.parseInt(all.substring(9, 12)), all.substring(0, end), all.substring(end + 4));
    }
  }
}
