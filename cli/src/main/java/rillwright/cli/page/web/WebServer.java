package rillwright.cli.page.web;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;

/** Answers browsers on this machine, at its loopback address and nowhere else. */
public final class WebServer implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";
  private static final byte[] LOOPBACK_BYTES = {127, 0, 0, 1};

  /** The longest form that is read, bytes: some data sheets. */
  private static final int MOST_BYTES = 2_000_000;

  /** A request that is not whole after so many seconds is given up. */
  private static final String MOST_SECONDS = "20";

  private static final int THREADS = 6;
  private static final int BACKLOG = 32;
  private static final int DEFECT = 500;

  private final HttpServer server;
  private final ExecutorService threads;
  private final Gate gate;
  private final Function<Asked, Reply> answers;
  private final Consumer<RuntimeException> defects;

  private WebServer(
      HttpServer server, Function<Asked, Reply> answers, Consumer<RuntimeException> defects) {
    this.server = server;
    this.gate = Gate.at(LOOPBACK + ":" + server.getAddress().getPort());
    this.answers = answers;
    this.defects = defects;
    this.threads =
        Executors.newFixedThreadPool(
            THREADS,
            work -> {
              Thread thread = new Thread(work, "page");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * A server at a free port, with a new secret.
   *
   * @param answers to what passes the gate
   * @param defects receives what should never happen
   * @throws IOException if the machine gives no port
   */
  public static WebServer open(Function<Asked, Reply> answers, Consumer<RuntimeException> defects)
      throws IOException {
    System.setProperty("sun.net.httpserver.maxReqTime", MOST_SECONDS);
    System.setProperty("sun.net.httpserver.nodelay", "true");
    InetSocketAddress here = new InetSocketAddress(InetAddress.getByAddress(LOOPBACK_BYTES), 0);
    WebServer web = new WebServer(HttpServer.create(here, BACKLOG), answers, defects);
    web.server.setExecutor(web.threads);
    web.server.createContext("/", web::exchange);
    web.server.start();
    return web;
  }

  /** Where it answers: {@code http://127.0.0.1:PORT/SECRET/}. */
  public String address() {
    return gate.address();
  }

  private void exchange(HttpExchange exchange) throws IOException {
    try (exchange) {
      send(exchange, reply(exchange));
    }
  }

  private Reply reply(HttpExchange exchange) throws IOException {
    String method = exchange.getRequestMethod();
    Optional<String> refusal = gate.refusal(method, exchange.getRequestHeaders());
    Optional<String> path = gate.behind(exchange.getRequestURI().getPath());
    if (refusal.isPresent() || path.isEmpty()) {
      return Reply.refused(refusal.orElse("the address is not that of this page"));
    }
    byte[] form = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
    if (form.length > MOST_BYTES) {
      return Reply.refused("this is more than 2 MB");
    }
    boolean posts = method.equals("POST");
    String query = Optional.ofNullable(exchange.getRequestURI().getRawQuery()).orElse("");
    String fields = posts ? new String(form, StandardCharsets.UTF_8) : query;
    try {
      Asked.Method asked = posts ? Asked.Method.POST : Asked.Method.GET;
      return answers.apply(new Asked(asked, path.get(), Asked.fieldsOf(fields)));
    } catch (RuntimeException e) {
      defects.accept(e);
      return new Reply(
          DEFECT,
          "text/plain; charset=utf-8",
          "default-src 'none'",
          new Reply.Body(
              "a defect in the program; its terminal shows the details"
                  .getBytes(StandardCharsets.UTF_8)));
    }
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set("Content-Type", reply.type());
    headers.set("Content-Security-Policy", reply.rules());
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
    byte[] bytes = reply.body().bytes();
    exchange.sendResponseHeaders(reply.status(), bytes.length == 0 ? -1 : bytes.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(bytes);
    }
  }

  /** Answers no more. */
  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
