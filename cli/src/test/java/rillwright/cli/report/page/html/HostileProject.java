package rillwright.cli.report.page.html;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A project each of whose names and titles would be markup, a way out of it, or turn text round.
 */
record HostileProject(Path folder) {
  static final String TITLE = "</title></style><script>alert(1)</script> &amp; \"q\" 'q' \u202eend";

  private static final String SHEET = "flow [gph],head [ft],power [W]\n0,20,150\n3000,0,190\n";

  private static final String PROJECT =
      """
      title: "</title></style><script>alert(1)</script> &amp; \\"q\\" 'q' \\u202eend"
      job:
        firm: "<script>alert(7)</script>"
        customer: '" onload=alert(8) \u202e'
        address: "\u200f</dd></dl><img src=x>"
      points:
        "<b>pond</b>": {kind: basin, level: 0 ft, area: 100 ft2, note: "<script>alert(9)</script>"}
        "<img src=x onerror=alert(2)>": {kind: fall, crest: 3 ft, width: 12 in, target: 900 gph}
        "]]><!--": {kind: fall, crest: 4 ft, width: 9 in, target: 600 gph}
        "{{7*7}}${x}": {kind: tee, elevation: 1 ft}
      lines:
        "'><svg onload=alert(3)>":
          from: "<b>pond</b>"
          to: "{{7*7}}${x}"
          pipe: {inside: 2 in, roughness: 0.01 mm}
          note: ["</li></ul><iframe src=//x>", "--> \u2066"]
          parts:
            - pump: "</td></tr></table><iframe src=//x>"
            - gauge: {name: "&#60;i&#62;", elevation: 1 ft}
            - run: 20 ft ± 2 ft
        one:
          from: "{{7*7}}${x}"
          to: "<img src=x onerror=alert(2)>"
          pipe: {inside: 2 in, roughness: 0.01 mm}
          parts: [run: 10 ft, valve: {type: ball, open: 100 %, adjustable: yes}]
        "javascript:alert(4)":
          from: "{{7*7}}${x}"
          to: "]]><!--"
          pipe: {inside: 2 in, roughness: 0.01 mm}
          parts: [run: 10 ft, valve: {type: ball, open: 100 %, adjustable: yes}]
      pumps: {"</td></tr></table><iframe src=//x>": pump.csv}
      conditions:
        "<a href=javascript:alert(5)>\\u2066": {points: {"<b>pond</b>": {level: -1 in}}}
      readings:
        - {at: "<img src=x onerror=alert(2)>", bucket: 5 gal, time: 30 s}
        - {gauge: "&#60;i&#62;", pressure: 4.3 psi}
      """;

  /** Written into a folder. */
  static HostileProject in(Path folder) throws IOException {
    Files.writeString(folder.resolve("pond.yaml"), PROJECT);
    Files.writeString(folder.resolve("pump.csv"), SHEET);
    Path supplier = Files.createDirectory(folder.resolve("supplier"));
    Files.writeString(supplier.resolve("<img src=x onerror=alert(6)>.csv"), SHEET);
    return new HostileProject(folder);
  }

  String file() {
    return folder.resolve("pond.yaml").toString();
  }

  String sheets() {
    return folder.resolve("supplier").toString();
  }
}
