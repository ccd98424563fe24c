package rillwright.cli.report.page.html;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import rillwright.cli.report.page.Paper;

/**
 * The style of all pages.
 *
 * @param text as it stands in the page
 * @param hash by which a page's rules name it (CSP level 3, {@code sha256-...})
 */
record PageStyle(String text, String hash) {
  private static final String NAME = "page.css";
  private static final String CARD = "card.css";

  static PageStyle read(Paper paper) {
    try {
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      add(NAME, text);
      if (paper == Paper.CARD) {
        add(CARD, text);
      }
      byte[] bytes = text.toByteArray();
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return new PageStyle(
          new String(bytes, StandardCharsets.UTF_8),
          "sha256-" + Base64.getEncoder().encodeToString(digest));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("this Java lacks SHA-256, which every Java must have", e);
    }
  }

  private static void add(String name, OutputStream text) throws IOException {
    try (InputStream file = PageStyle.class.getResourceAsStream(name)) {
      file.transferTo(text);
    }
  }
}
