package club.ascham.check;

import club.ascham.bow.Who;
import club.ascham.store.Rows;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Keeps what checks decided, line by line as data, and reads it: of many checks at once. */
@ApplicationScoped
public class Verdicts {
  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  private final Rows rows;

  Verdicts(Rows rows) {
    this.rows = rows;
  }

  private enum Topic {
    REASON,
    STEP,
    EXPECTED,
    WORK,
    NOTE,
    BASIS
  }

  private record SaidLine(
      long place,
      Topic kind,
      String saying,
      String saidOf,
      BenchStep.Key step,
      Who who,
      Integer thousandths) {
    Remark remark() {
      return read(saying, saidOf);
    }
  }

  private record KeptLine(long check, Verdict.Kind verdict, SaidLine line) {}

  public void keep(long check, Given given) {
    List<List<Object>> lines = new ArrayList<>();
    given.reasons().forEach(said -> add(lines, check, Topic.REASON, said, null));
    given.steps().forEach(step -> add(lines, check, Topic.STEP, step.says(), step));
    given.expected().forEach(said -> add(lines, check, Topic.EXPECTED, said, null));
    given.work().forEach(said -> add(lines, check, Topic.WORK, said, null));
    given.notes().forEach(said -> add(lines, check, Topic.NOTE, said, null));
    given.basis().forEach(said -> add(lines, check, Topic.BASIS, said, null));
    rows.add(
        "verdict_line (check_id, place, kind, saying, said_of, step, by_whom, thousandths)", lines);
  }

  private static void add(
      List<List<Object>> lines, long check, Topic kind, Remark said, BenchStep step) {
    lines.add(
        Arrays.asList(
            check,
            lines.size() + 1,
            kind,
            said.saying(),
            json(said.kept()),
            step == null ? null : step.key(),
            step == null ? null : step.who(),
            step == null ? null : step.thousandths()));
  }

  Given of(long check) {
    return of(List.of(check)).get(check);
  }

  /** Each of these checks with its verdict, by one statement however many. */
  public Map<Long, Given> of(Collection<Long> checks) {
    Map<Long, Given> given = new LinkedHashMap<>();
    rows
        .list(
            KeptLine.class,
            """
            SELECT c.id AS check_id, c.verdict, v.place, v.kind, v.saying, v.said_of, v.step, v.by_whom AS who, v.thousandths
              FROM bow_check c LEFT JOIN verdict_line v ON v.check_id = c.id
             WHERE c.id IN (SELECT value FROM json_each(?1)) ORDER BY c.id, v.place""",
            json(checks))
        .stream()
        .collect(Collectors.groupingBy(KeptLine::check))
        .forEach((check, lines) -> given.put(check, given(lines)));
    return given;
  }

  private static Given given(List<KeptLine> kept) {
    List<SaidLine> lines = kept.stream().map(KeptLine::line).filter(line -> line != null).toList();
    return new Given(
        kept.get(0).verdict(),
        said(lines, Topic.REASON),
        lines.stream()
            .filter(line -> line.kind() == Topic.STEP)
            .map(line -> new BenchStep(line.step(), line.who(), line.thousandths(), line.remark()))
            .toList(),
        said(lines, Topic.EXPECTED),
        said(lines, Topic.WORK),
        said(lines, Topic.NOTE),
        said(lines, Topic.BASIS));
  }

  private static List<Remark> said(List<SaidLine> lines, Topic kind) {
    return lines.stream().filter(line -> line.kind() == kind).map(SaidLine::remark).toList();
  }

  /**
   * A remark as it is kept.
   *
   * @throws IllegalArgumentException for what is none
   */
  public static Remark read(String saying, String saidOf) {
    return Remark.read(saying, list(saidOf));
  }

  /**
   * The words in what is kept of a remark, before they are put on one line.
   *
   * @throws IllegalArgumentException for what is no list
   */
  public static Stream<String> texts(String saidOf) {
    return texts(list(saidOf));
  }

  private static Stream<String> texts(Object kept) {
    return kept instanceof List<?> some
        ? some.stream().flatMap(Verdicts::texts)
        : Stream.of(kept).filter(String.class::isInstance).map(String.class::cast);
  }

  private static List<Object> list(String saidOf) {
    try {
      return JSON.readValue(saidOf, new TypeReference<List<Object>>() {});
    } catch (JsonProcessingException unreadable) {
      throw new IllegalArgumentException(saidOf + " is no list", unreadable);
    }
  }

  private static String json(Collection<?> values) {
    try {
      return JSON.writeValueAsString(values);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
