package rillwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The live page from the packed jar: its address, its first page, its end. */
class PageIT {
  private static final long PATIENCE_S = 30;

  @TempDir private Path folder;

  private Process start(String... arguments) throws IOException {
    String[] command = new String[arguments.length + 4];
    command[0] = ProcessHandle.current().info().command().orElseThrow();
    command[1] = "-jar";
    command[2] = PackedJar.FILE.toAbsolutePath().toString();
    command[3] = "page";
    System.arraycopy(arguments, 0, command, 4, arguments.length);
    return new ProcessBuilder(command)
        .directory(folder.toFile())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private static int get(String address) throws IOException, InterruptedException {
    HttpResponse<String> page =
        HttpClient.newHttpClient()
            .send(HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString());
    return page.statusCode();
  }

  @Test
  void printsItsAddressAnswersThereAndEndsWithASignal() throws Exception {
    Path file =
        Files.copy(Path.of("../examples/header-pond/troughs.yaml"), folder.resolve("a.yaml"));
    Process page = start(file.getFileName().toString(), "--print-address");
    try (BufferedReader out = page.inputReader()) {
      String address = out.readLine();
      assertTrue(address.matches("http://127\\.0\\.0\\.1:\\d+/[A-Za-z0-9_-]{16,}/"), address);
      assertEquals(200, get(address));
      assertEquals(403, get(address.replaceFirst("/[^/]+/$", "/another-secret-12345/")));
    } finally {
      page.destroy();
    }
    assertTrue(page.waitFor(PATIENCE_S, TimeUnit.SECONDS));
    assertNotEquals(0, page.exitValue());
  }

  @Test
  void aFileThatIsWrongIsReportedAsByOtherCommands() throws Exception {
    Files.writeString(folder.resolve("b.yaml"), "rillwright: 1\n");
    Process page = start("b.yaml", "--print-address");
    assertTrue(page.waitFor(PATIENCE_S, TimeUnit.SECONDS));
    assertEquals(2, page.exitValue());
    assertEquals("", new String(page.getInputStream().readAllBytes(), UTF_8));
  }
}
