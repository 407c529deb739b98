package club.ascham.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a paper names in backticks, looked for in the project. */
final class NamedInText {
  private static final Pattern QUOTED = Pattern.compile("`([^`\\n]+)`");

  /**
   * {@code Watched}, {@code story.Watched}, {@code story.Watched.PERSONAL}; a member may be cut.
   */
  private static final Pattern CLASS =
      Pattern.compile("(?:([a-z]+)\\.)?([A-Z][a-z]\\w+)(?:\\.(\\w+)(…)?)?");

  private static final Pattern PATH = Pattern.compile("[\\w.*-]+(?:/[\\w.*-]+)+");
  private static final Pattern ANY_PATH =
      Pattern.compile("(?:src|migrations|demo-data)/[\\w./*-]+");
  private static final Pattern FILE =
      Pattern.compile("[\\w-]+\\.(?:md|xml|html|js|css|properties)");
  private static final Pattern RUN = Pattern.compile("-D(?:it\\.)?test=([A-Z]\\w+)");
  private static final Path MAIN = Path.of("src/main/java/club/ascham");
  private static final Path TESTS = Path.of("src/test/java/club/ascham");
  private static final Path ASSETS = Path.of("src/main/resources/META-INF/resources");

  private final Map<String, List<Path>> sources;

  private NamedInText(Map<String, List<Path>> sources) {
    this.sources = sources;
  }

  static NamedInText ofTheProject() throws IOException {
    try (Stream<Path> main = Files.walk(MAIN);
        Stream<Path> tests = Files.walk(TESTS)) {
      return new NamedInText(
          Stream.concat(main, tests)
              .filter(file -> file.toString().endsWith(".java"))
              .collect(Collectors.groupingBy(NamedInText::name)));
    }
  }

  private static String name(Path source) {
    return source.getFileName().toString().replace(".java", "");
  }

  static List<String> quoted(String text) {
    return QUOTED.matcher(text).results().map(found -> found.group(1)).toList();
  }

  /** What is quoted and is a class of ours, a path, or a test to run, and does not exist. */
  List<String> missing(String text) {
    List<String> missing = new ArrayList<>();
    for (String quoted : quoted(text)) {
      Matcher named = CLASS.matcher(quoted);
      if (named.matches()) {
        if (!exists(named)) {
          missing.add(quoted);
        }
      } else if (quoted.contains(" ")) {
        missing.addAll(missingInCommand(quoted));
      } else if (isPath(quoted) && !isThere(quoted)) {
        missing.add(quoted);
      }
    }
    return missing;
  }

  /** Whether this is in the sources: {@code SignInTest.signingOut_…} where a method begins so. */
  boolean exists(String named) {
    Matcher parts = CLASS.matcher(named);
    return parts.matches() && exists(parts);
  }

  private boolean exists(Matcher named) {
    String room = named.group(1);
    String member = named.group(3);
    return sources.getOrDefault(named.group(2), List.of()).stream()
        .filter(source -> room == null || source.getParent().endsWith(room))
        .anyMatch(source -> member == null || declares(source, member, named.group(4) != null));
  }

  /** By the word alone: a constant, a field, or a method's name before its bracket. */
  private static boolean declares(Path source, String member, boolean cut) {
    String name = "\\b" + Pattern.quote(member) + (cut ? "\\w*" : "");
    boolean test = name(source).endsWith("Test") || name(source).endsWith("IT");
    return Pattern.compile((test ? "\\bvoid " : "") + name + (test ? "\\s*\\(" : "\\b"))
        .matcher(read(source))
        .find();
  }

  private List<String> missingInCommand(String command) {
    return Stream.concat(
            RUN.matcher(command)
                .results()
                .map(found -> found.group(1))
                .filter(test -> !sources.containsKey(test)),
            ANY_PATH
                .matcher(command)
                .results()
                .map(found -> found.group())
                .filter(path -> !isThere(path)))
        .toList();
  }

  /** What a build makes is not there before it. */
  private static boolean isPath(String quoted) {
    return !quoted.startsWith("target/")
        && (PATH.matcher(quoted).matches() || FILE.matcher(quoted).matches());
  }

  private static boolean isThere(String path) {
    int star = path.indexOf('*');
    if (star < 0) {
      return Files.exists(Path.of(path)) || Files.exists(ASSETS.resolve(path));
    }
    Path pattern = Path.of(path);
    try (DirectoryStream<Path> found =
        Files.newDirectoryStream(pattern.getParent(), pattern.getFileName().toString())) {
      return found.iterator().hasNext();
    } catch (IOException noSuchFolder) {
      return false;
    }
  }

  /** The rooms of the house: each package right under ours. */
  static List<String> rooms() throws IOException {
    try (Stream<Path> folders = Files.list(MAIN)) {
      return folders
          .filter(Files::isDirectory)
          .map(folder -> folder.getFileName().toString())
          .sorted()
          .toList();
    }
  }

  Optional<Path> test(String name) {
    return sources.getOrDefault(name, List.of()).stream()
        .filter(source -> source.startsWith(TESTS))
        .findFirst();
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }
}
