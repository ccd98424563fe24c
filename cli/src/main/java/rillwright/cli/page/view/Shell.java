package rillwright.cli.page.view;

import rillwright.cli.page.html.Html;

/** The page around what is seen. */
public final class Shell {
  private static final String BEFORE =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <meta name="color-scheme" content="light dark">
      <meta name="format-detection" content="telephone=no">
      <link rel="icon" href="data:,">
      """;

  private Shell() {}

  /**
   * The whole page.
   *
   * @param title of it
   * @param pieces what is seen first
   */
  public static String of(String title, String pieces) {
    Html html = new Html();
    html.made(BEFORE).leaf("title", title + ", rillwright");
    html.empty("link", "rel", "stylesheet", "href", "page.css");
    html.leaf("script", "", "src", "page.js", "defer", "");
    html.made("</head>\n");
    html.open("body").open("main", "id", "page").made(pieces).close();
    html.leaf("div", "", "id", "said", "role", "status", "aria-live", "polite");
    html.close();
    return html.made("</html>\n").done();
  }
}
