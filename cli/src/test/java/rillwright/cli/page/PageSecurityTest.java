package rillwright.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.page.web.Asked;

/** Who is let in to the page, and what somebody who is not cannot do. */
class PageSecurityTest {
  private static final int REFUSED = 403;
  private static final String SET = "do=set&at=title&value=Changed&seen=0";

  @TempDir private Path folder;
  private OpenPage page;
  private URI address;

  @BeforeEach
  void open() throws IOException {
    page = OpenPage.ofExample("twin-falls/falls.yaml", folder);
    address = page.address();
  }

  @AfterEach
  void close() {
    page.close();
  }

  private Knock.Answer send(Knock knock) throws IOException {
    return knock.send(address.getPort());
  }

  private void refused(Knock knock) throws IOException {
    assertEquals(REFUSED, send(knock).status(), knock.toString());
  }

  @Test
  void theOneWithTheAddressIsLetIn() throws IOException {
    assertEquals(200, send(Knock.look(address, "")).status());
    Knock.Answer done = send(Knock.post(address, "do", SET));
    assertEquals(200, done.status());
    assertTrue(done.body().contains("<h1>Changed</h1>"), done.body());
  }

  @Test
  void theAddressIsThatOfThisMachineAndNewAtEachStart() throws IOException {
    assertEquals("127.0.0.1", address.getHost());
    String secret = address.getPath().replace("/", "");
    assertTrue(secret.length() >= 16, secret);
    try (OpenPage other = OpenPage.of(page.file())) {
      assertNotEquals(address.getPath(), other.address().getPath());
    }
  }

  @Test
  void listensAtLoopbackOnly() throws IOException {
    List<InetAddress> others =
        NetworkInterface.networkInterfaces()
            .flatMap(NetworkInterface::inetAddresses)
            .filter(it -> !it.isLoopbackAddress())
            .toList();
    for (InetAddress other : others) {
      assertFalse(answers(other), other.toString());
    }
    assertTrue(answers(InetAddress.getLoopbackAddress()));
  }

  private boolean answers(InetAddress at) {
    try (Socket socket = new Socket(at, address.getPort())) {
      return socket.isConnected();
    } catch (IOException refused) {
      return false;
    }
  }

  @Test
  void withoutTheSecretNothingIsShown() throws IOException {
    Knock look = Knock.look(address, "");
    refused(look.at("/"));
    refused(look.at("/page.css"));
    refused(look.at(address.getPath().replaceFirst(".$", "")));
    refused(look.at("/" + "A".repeat(24) + "/"));
    refused(Knock.post(address, "do", SET).at("/do"));
  }

  @Test
  void anotherNameForThisMachineIsRefused() throws IOException {
    refused(Knock.look(address, "").with("Host", "elsewhere.example:" + address.getPort()));
    refused(Knock.look(address, "").with("Host", "localhost:" + address.getPort()));
    refused(Knock.look(address, "").with("Host", "127.0.0.1"));
    refused(Knock.post(address, "do", SET).with("Host", "elsewhere.example"));
  }

  @Test
  void anotherSitesFormIsRefused() throws IOException {
    Knock post = Knock.post(address, "do", SET);
    refused(post.with("Origin", "http://elsewhere.example"));
    refused(post.with("Origin", "null"));
    refused(post.with("Origin", ""));
    refused(post.with("Sec-Fetch-Site", "cross-site"));
    refused(post.with("Content-Type", "text/plain"));
    refused(post.with("Content-Type", "multipart/form-data; boundary=x"));
    refused(Knock.look(address, "").with("Origin", "http://elsewhere.example"));
    refused(Knock.look(address, "pieces").with("Sec-Fetch-Site", "cross-site"));
    assertFalse(send(Knock.look(address, "")).body().contains("<h1>Changed</h1>"));
  }

  @Test
  void otherMethodsAndPiecesAreRefused() throws IOException {
    refused(Knock.look(address, "").by("PUT"));
    refused(Knock.look(address, "").by("DELETE"));
    refused(Knock.look(address, "").by("OPTIONS"));
    refused(Knock.look(address, "do?" + SET));
    refused(Knock.look(address, "../../etc/passwd"));
    refused(Knock.look(address, "%2e%2e/falls.yaml"));
    refused(Knock.look(address, "falls.yaml"));
    refused(Knock.post(address, "falls.yaml", ""));
  }

  @Test
  void largeFormsAreRefused() throws IOException {
    refused(Knock.post(address, "do", "value=" + "x".repeat(2_000_001)));
  }

  @Test
  void viewingWritesNothing() throws IOException {
    Map<Path, String> before = files();
    for (String piece :
        List.of(
            "",
            "page.css",
            "page.js",
            "pieces?width=500&units=metric",
            "state?seen=0",
            "sheet?for=crew",
            "materials.csv",
            "readings.yaml")) {
      assertEquals(200, send(Knock.look(address, piece)).status(), piece);
    }
    String trial = "at=lines.supply.pipe.size&value=3+in";
    assertEquals(200, send(Knock.post(address, "try", trial)).status());
    assertEquals(200, send(Knock.post(address, "ask", "panel=solve")).status());
    assertEquals(before, files());
  }

  private Map<Path, String> files() throws IOException {
    Map<Path, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(file, Files.readString(file));
      }
    }
    return files;
  }

  @Test
  void filesOutsideTheProjectsFolderAreNotRead() throws IOException {
    Path outside = Files.writeString(folder.resolveSibling("outside.csv"), "secret,words\n");
    try {
      String set = "do=set&at=pumps.P-400&value=..%2Foutside.csv&seen=0";
      Knock.Answer answer = send(Knock.post(address, "do", set));
      assertFalse(answer.body().contains("secret"), answer.body());
      assertTrue(answer.body().contains("class=\"fault\""), answer.body());
    } finally {
      Files.delete(outside);
    }
  }

  @Test
  void nothingIsWrittenOutsideTheProjectsFolder() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path job = Files.createDirectory(folder.resolve("job"));
    Files.createSymbolicLink(job.resolve("pumps"), elsewhere);
    Files.copy(Path.of("../examples/header-pond/troughs.yaml"), job.resolve("a.yaml"));
    String sheet = "&sheet%3AD-1=flow+%5Bgph%5D%2Chead+%5Bft%5D";
    try (OpenPage linked = OpenPage.of(job.resolve("a.yaml"))) {
      for (String name : List.of("D-1", "..%2FD-1", "%2Ftmp%2FD-1")) {
        String take = "do=take-sheet&at=title%3Dx&value=" + name + sheet.replace("D-1", name);
        Knock.Answer answer =
            Knock.post(linked.address(), "do", take + "&seen=0").send(linked.address().getPort());
        assertTrue(answer.body().contains("class=\"fault\""), answer.body());
      }
      assertEquals(List.of(), linked.defects());
    }
    List<RuntimeException> defects = new ArrayList<>();
    Pages answers = Pages.of(Optional.empty(), job, defects::add);
    for (String name : List.of("../b.yaml", "/tmp/b.yaml", "b.txt", ".b.yaml")) {
      Asked begin = new Asked(Asked.Method.POST, "begin", Map.of("file name", name));
      assertTrue(answers.apply(begin).text().contains("class=\"fault\""), name);
    }
    assertEquals(List.of(), defects);
    try (Stream<Path> all = Files.walk(elsewhere)) {
      assertEquals(List.of(elsewhere), all.toList());
    }
    try (Stream<Path> all = Files.list(job)) {
      assertEquals(2, all.count());
    }
  }

  @Test
  void hostileNamesAreInert() throws IOException {
    String hostile = "%3Cscript%3Ealert(1)%3C%2Fscript%3E%22%20onload%3D%22x";
    send(Knock.post(address, "do", "do=set&at=title&seen=0&value=" + hostile));
    send(Knock.post(address, "do", "do=rename&at=points.split&seen=1&name=" + hostile));
    String body = send(Knock.look(address, "")).body();
    assertTrue(body.contains("&lt;script&gt;alert(1)"), body);
    assertFalse(body.contains("<script>alert"), body);
    assertFalse(body.contains("\" onload=\""), body);
    assertEquals(List.of(), page.defects());
  }

  @Test
  void itsRulesAllowItsOwnFilesOnly() throws IOException {
    String head = send(Knock.look(address, "")).head();
    assertTrue(
        head.contains(
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors"
                + " 'none'"),
        head);
    assertTrue(head.contains("nosniff"), head);
    String body = send(Knock.look(address, "")).body();
    assertFalse(body.contains(" style=\""), "a style in the page itself");
  }
}
