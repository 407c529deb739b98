package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The packaged server as a process of its own, started as a club starts it, on a port that the
 * machine chose and a data folder that outlives it. {@link #close} kills what still runs.
 */
public final class PackagedServer implements AutoCloseable {
  static final Path JAR = Path.of("target", "quarkus-app", "quarkus-run.jar");
  private static final Pattern LISTENING = Pattern.compile("Listening on: (http://[^\\s/]+:\\d+)");
  private static final Duration STARTS_WITHIN = Duration.ofMinutes(2);
  private static final Duration ENDS_WITHIN = Duration.ofSeconds(60);
  private static final int SIGKILL = 9;
  private static final int SIGTERM = 15;

  private final Process process;
  private final List<String> log = Collections.synchronizedList(new ArrayList<>());
  private final CompletableFuture<URI> listening = new CompletableFuture<>();
  private final HttpClient client =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .connectTimeout(Duration.ofSeconds(10))
          .build();

  private PackagedServer(Process process) {
    this.process = process;
    Runtime.getRuntime().addShutdownHook(new Thread(this::close));
    Thread reader = new Thread(this::readLog, "log of " + process.pid());
    reader.setDaemon(true);
    reader.start();
  }

  /** It ended before it listened; the message is its log. */
  public static final class DidNotStart extends IOException {
    private static final long serialVersionUID = 1L;

    private DidNotStart(String log) {
      super(log);
    }
  }

  /**
   * Starts the demo club on a data folder, and answers when it listens.
   *
   * @param settings as on Java's command line, such as {@code -Dascham.zone=UTC}
   */
  public static PackagedServer demo(Path dataFolder, String... settings)
      throws IOException, InterruptedException {
    if (Files.notExists(dataFolder)) {
      PreparedClub.copyTo(dataFolder);
    }
    return start(dataFolder, true, PreparedClub.classes(), settings);
  }

  /** Starts a club's own server on a data folder, and answers when it listens. */
  public static PackagedServer club(Path dataFolder, String... settings)
      throws IOException, InterruptedException {
    return start(dataFolder, false, PreparedClub.classes(), settings);
  }

  /** Starts the demo club on an empty folder and stops it: so that others find both done. */
  static void prepare(Path dataFolder, String classes) throws IOException, InterruptedException {
    try (PackagedServer first = start(dataFolder, true, classes)) {
      first.stop();
    }
  }

  /** How Java is started for what lives for seconds. */
  static List<String> quickJava(String classes) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        // The second compiler and the parallel collector would cost more than they could give back.
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-Xshare:auto",
        classes);
  }

  private static PackagedServer start(
      Path dataFolder, boolean demo, String classes, String... settings)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(quickJava(classes));
    command.add("-Dquarkus.http.port=0");
    command.add("-Dquarkus.http.host=127.0.0.1");
    command.addAll(Arrays.asList(settings));
    command.addAll(List.of("-jar", JAR.toString()));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("ASCHAM_DATA_DIR", dataFolder.toString());
    builder.environment().put("ASCHAM_DEMO", Boolean.toString(demo));
    builder.environment().remove("QUARKUS_HTTP_PORT");
    PackagedServer server = new PackagedServer(builder.start());
    try {
      server.listening.get(STARTS_WITHIN.toSeconds(), TimeUnit.SECONDS);
      return server;
    } catch (ExecutionException ended) {
      server.close();
      throw new DidNotStart(server.log());
    } catch (TimeoutException tooLong) {
      server.close();
      throw new IOException("not listening after " + STARTS_WITHIN + "\n" + server.log());
    }
  }

  private void readLog() {
    try (BufferedReader lines = process.inputReader()) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        log.add(line);
        Matcher found = LISTENING.matcher(line);
        if (found.find()) {
          listening.complete(URI.create(found.group(1)));
        }
      }
    } catch (IOException closed) {
      log.add("(the log ended: " + closed.getMessage() + ")");
    }
    listening.completeExceptionally(new IOException("ended before it listened"));
  }

  /** Where it answers, without a path. */
  public URI address() {
    return listening.join();
  }

  /** Someone of the demo club, calling the JSON API. */
  public ApiCaller as(String account) {
    return new ApiCaller(client, address(), account, "demo-fleet");
  }

  /** Everything it has logged so far. */
  public String log() {
    synchronized (log) {
      return String.join("\n", log);
    }
  }

  /** Waits, and tells whether it ended by itself meanwhile. */
  public boolean endsWithin(Duration wait) throws InterruptedException {
    return process.waitFor(wait.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** {@code kill -9}: it gets no chance to tidy up. */
  public void kill() throws InterruptedException {
    process.destroyForcibly();
    assertEquals(128 + SIGKILL, exit(), "it had ended by itself:\n" + log());
  }

  /** Asks it to end, as a service manager does, and waits until it has. */
  public void stop() throws InterruptedException {
    process.destroy();
    assertEquals(128 + SIGTERM, exit(), log());
  }

  private int exit() throws InterruptedException {
    if (!endsWithin(ENDS_WITHIN)) {
      throw new IllegalStateException("it still runs after " + ENDS_WITHIN + "\n" + log());
    }
    return process.exitValue();
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
