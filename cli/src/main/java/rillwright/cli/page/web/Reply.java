package rillwright.cli.page.web;

import java.nio.charset.StandardCharsets;

/**
 * What a browser gets.
 *
 * @param status of HTTP
 * @param type of its content
 * @param rules what the content may fetch and run (Content Security Policy)
 * @param body its content
 */
public record Reply(int status, String type, String rules, Body body) {
  private static final int DONE = 200;
  private static final int REFUSED = 403;
  private static final String HTML = "text/html; charset=utf-8";

  /** All comes from this server; no style or script stands in the page itself. */
  private static final String LIVE =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  /** A document that carries its style and rules of its own, and fetches and runs nothing. */
  private static final String STILL =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; form-action 'none';"
          + " base-uri 'none'; frame-ancestors 'none'";

  /** Content as bytes. */
  public static final class Body {
    private final byte[] bytes;

    Body(byte[] bytes) {
      this.bytes = bytes.clone();
    }

    byte[] bytes() {
      return bytes.clone();
    }
  }

  /** Its content as text. */
  public String text() {
    return new String(body.bytes(), StandardCharsets.UTF_8);
  }

  /** A page, or pieces of it. */
  public static Reply html(String html) {
    return of(DONE, HTML, LIVE, html);
  }

  /** A document to print. */
  public static Reply document(String html) {
    return of(DONE, HTML, STILL, html);
  }

  /** A file of the program or of the job. */
  public static Reply file(String type, String text) {
    return of(DONE, type + "; charset=utf-8", STILL, text);
  }

  /** What is refused, and why. */
  public static Reply refused(String why) {
    return of(REFUSED, "text/plain; charset=utf-8", STILL, why + "\n");
  }

  private static Reply of(int status, String type, String rules, String text) {
    return new Reply(status, type, rules, new Body(text.getBytes(StandardCharsets.UTF_8)));
  }
}
