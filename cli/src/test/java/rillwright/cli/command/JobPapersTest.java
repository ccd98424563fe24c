package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** For whom a job is, notes and photographs: where they are read, and what is refused. */
class JobPapersTest {
  /** One white point (PNG, third edition). */
  private static final byte[] PICTURE =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVO"
                  + "RK5CYII=");

  private static final byte[] JPEG_BEGINS = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0};

  private static final String PROJECT =
      """
      job: JOB
      points:
        pond: {kind: basin, level: 3 ft, area: 100 ft2, note: [first, second]}
        fall: {kind: fall, crest: 1 ft, width: 12 in, photo: PHOTO}
      lines:
        feed:
          from: pond
          to: fall
          pipe: {material: PVC schedule 40, size: 2 in}
          parts: [run: 20 ft]
      """;

  @TempDir private Path folder;

  @BeforeEach
  void pictures() throws IOException {
    Files.createDirectories(folder.resolve("job/photos"));
    Files.write(folder.resolve("job/photos/fall.png"), PICTURE);
    Files.write(folder.resolve("outside.png"), PICTURE);
    Files.writeString(folder.resolve("job/notes.jpg"), "not a picture");
    Files.write(folder.resolve("job/large.jpg"), Arrays.copyOf(JPEG_BEGINS, 6_000_001));
    Files.createSymbolicLink(folder.resolve("job/link.png"), Path.of("../outside.png"));
  }

  private String project(String job, String photo) throws IOException {
    return Files.writeString(
            folder.resolve("job/pond.yaml"), PROJECT.replace("JOB", job).replace("PHOTO", photo))
        .toString();
  }

  @Test
  void theyStandWhereTheyBelong() throws IOException {
    String file = project("{firm: Firm A, date: 2026-05-14}", "photos/fall.png");
    Run run = Run.of("sheet", file, "--format", "html");
    assertEquals(0, run.status(), run::err);
    Document page = Jsoup.parse(run.out());

    assertEquals(
        "data:image/png;base64," + Base64.getEncoder().encodeToString(PICTURE),
        page.select("figure.photograph img").attr("src"));
    assertTrue(page.select("meta[content*=img-src data:]").size() == 1);
    assertEquals("Firm A", page.select("dd").first().text());
    assertTrue(page.text().contains("14 May 2026"), page.text());
    assertTrue(page.text().contains("\"pond\": second"), page.text());
    String check = Run.of("check", file).flat();
    Run.assertReported(
        check, "note \"first\", note \"second\"", "photograph \"photos/fall.png\" (PNG, 1 kB)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "../outside.png | lies outside the project's folder",
        "link.png | lies outside the project's folder",
        "/etc/hostname | lies outside the project's folder",
        "photos/none.png | there is no such file",
        "photos | this is not a file",
        "notes.jpg | neither a JPEG nor a PNG",
        "large.jpg | larger than 6 MB",
        "[photos/fall.png, {a: b}] | expected a text"
      })
  void aPhotographThatMayNotBeReadIsRefusedAtItsPlace(String photo, String why) throws IOException {
    for (String command : new String[] {"check", "sheet"}) {
      Run.of(command, project("{firm: Firm A}", photo)).assertRefused("pond.yaml:4:", "photo", why);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{date: 5/14/2026} | year, month and day, for example \"2026-05-14\"",
        "{date: 2026-02-30} | is not a date",
        "{firma: A} | there is no field \"firma\""
      })
  void whatIsWrongInAJobIsSaid(String job, String why) throws IOException {
    Run.of("check", project(job, "photos/fall.png")).assertRefused("pond.yaml:1:", why);
  }

  @Test
  void aSheetIsNotWrittenOverAPhotograph() throws IOException {
    String file = project("{firm: Firm A}", "photos/fall.png");
    String picture = folder.resolve("job/photos/fall.png").toString();

    Run.of("sheet", file, "--to", picture).assertRefused("a photograph of the project");
    assertEquals(PICTURE.length, Files.size(Path.of(picture)));
  }
}
