package rillwright.cli.page.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a browser asks for, once it has passed the gate.
 *
 * @param method whether it may change anything
 * @param path after the secret, without a slash at its beginning: {@code page.css}
 * @param fields of the address or of the form, each once; copied
 */
public record Asked(Method method, String path, Map<String, String> fields) {
  public Asked {
    fields = Map.copyOf(fields);
  }

  /** How it is asked. */
  public enum Method {
    /** To look: nothing is changed. */
    GET,
    /** To change something, or to send much. */
    POST
  }

  /** A field; empty if it was not sent. */
  public Optional<String> find(String field) {
    return Optional.ofNullable(fields.get(field));
  }

  /** A field, empty text if it was not sent. */
  public String text(String field) {
    return fields.getOrDefault(field, "");
  }

  /**
   * The fields of a form as browsers write it.
   *
   * @throws IllegalArgumentException if it is not written so
   */
  static Map<String, String> fieldsOf(String form) {
    Map<String, String> fields = new LinkedHashMap<>();
    for (String pair : form.split("&", -1)) {
      if (!pair.isEmpty()) {
        int equals = pair.indexOf('=');
        String name = equals < 0 ? pair : pair.substring(0, equals);
        fields.put(decoded(name), equals < 0 ? "" : decoded(pair.substring(equals + 1)));
      }
    }
    return fields;
  }

  private static String decoded(String text) {
    return URLDecoder.decode(text, StandardCharsets.UTF_8);
  }
}
