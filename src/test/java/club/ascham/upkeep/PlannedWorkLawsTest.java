package club.ascham.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.Schema;
import club.ascham.store.Stored;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Lending, receiving, inspecting (also entered late), buying, retiring and changing of rules, in
 * any order, done to a real file: what the file plans must be what a model counts by hand.
 */
class PlannedWorkLawsTest {
  private static final List<String> KINDS = List.of("STRINGER", "ARROWS", "STRING", "LIMBS");
  private static final List<String> WORKS =
      List.of("STRINGER_INSPECTION", "ARROW_INSPECTION", "STRING_REPLACEMENT", "LIMB_INSPECTION");

  /** A day behind and a day ahead of UTC, at a quarter of an hour, and with clocks that change. */
  private static final List<ZoneId> ZONES =
      Stream.of("UTC", "Europe/London", "Pacific/Auckland", "America/Los_Angeles", "Asia/Kathmandu")
          .map(ZoneId::of)
          .toList();

  private static final Instant BEGINNING = Instant.parse("2025-03-01T18:00:00Z");

  private static Connection file;

  private PlanModel model;
  private ZoneId zone;
  private Random chance;
  private Instant now;

  @BeforeContainer
  static void open() throws Exception {
    Path folder = Files.createTempDirectory("plan");
    String url = "jdbc:sqlite:" + folder.resolve("plan.db") + "?foreign_keys=true";
    Schema.of(url).load().migrate();
    file = DriverManager.getConnection(url);
    file.setAutoCommit(false);
  }

  @AfterContainer
  static void close() throws SQLException {
    file.close();
  }

  @Property(tries = 100)
  @Label("what the file plans is what a model counts by hand, after every deed")
  void thePlanIsTrueAtEveryMoment(@ForAll long seed) throws SQLException {
    chance = new Random(seed);
    zone = some(ZONES);
    model = new PlanModel(zone);
    now = BEGINNING;
    try {
      begin();
      for (int deed = 0; deed < 60; deed++) {
        now = now.plus(Duration.ofHours(1 + chance.nextInt(200)));
        String done = doSomething();
        assertEquals(model.planned(), planned("work_due"), done);
        assertEquals(planned("upkeep_reckoned"), planned("work_due"), "kept against reckoned");
      }
    } finally {
      file.rollback();
    }
  }

  private void begin() throws SQLException {
    run("INSERT INTO account (id, name, password_hash, role) VALUES (1, 'a', 'x', 'OFFICER')");
    run("DELETE FROM upkeep_rule");
    for (ClubsDays.Offset one : ClubsDays.of(zone)) {
      run(
          "INSERT INTO clock_offset (from_at, from_local, ahead_s) VALUES (?, ?, ?)",
          one.fromAt(),
          one.fromLocal(),
          one.aheadSeconds());
    }
    run(
        """
        INSERT INTO loan (id, kind, leader, issued_at, due_on, issued_by, recorded_at)
        VALUES (1, 'SESSION', 'l', ?, '2025-03-01', 1, ?)""",
        now,
        now);
    for (int i = 0; i < 6; i++) {
      register();
    }
    for (int i = 0; i < 4; i++) {
      addRule();
    }
  }

  private String doSomething() throws SQLException {
    return switch (chance.nextInt(12)) {
      case 0 -> register();
      case 1 -> addRule();
      case 2 -> changeRule();
      case 3 -> chance.nextInt(4) == 0 ? removeRule() : "nothing";
      case 4 -> retireOrFindAgain();
      case 5 -> date();
      case 6, 7 -> lend();
      case 8, 9 -> receive();
      default -> inspect();
    };
  }

  private String register() throws SQLException {
    long id = model.items.size() + 1;
    String kind = KINDS.get(chance.nextInt(KINDS.size()));
    LocalDate on = LocalDate.ofInstant(now, zone).minusDays(chance.nextInt(300));
    run(
        "INSERT INTO item (id, code, kind, registered_on) VALUES (?, ?, ?, ?)",
        id,
        String.format("X%04d0", id),
        kind,
        on);
    if (kind.equals("STRING")) {
      run("INSERT INTO bowstring (id, for_bow_in, material) VALUES (?, 68, 'POLYESTER')", id);
    }
    if (kind.equals("LIMBS")) {
      run(
          "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (?, 'ADJUSTABLE', 'LONG', 20, 'ILF')",
          id);
    }
    model.items.put(id, new PlanModel.Item(kind, on));
    return "registered " + id;
  }

  private String addRule() throws SQLException {
    int which = chance.nextInt(KINDS.size());
    PlanModel.Rule rule = someRule(KINDS.get(which), WORKS.get(which));
    run(
        """
        INSERT INTO upkeep_rule (item_kind, work, every_days, every_loans, every_shots, blocks, source)
        VALUES (?, ?, ?, ?, ?, 0, 's')""",
        rule.kind(),
        rule.work(),
        rule.days(),
        rule.loans(),
        rule.shots());
    model.rules.put(number("SELECT max(id) FROM upkeep_rule"), rule);
    return "added " + rule;
  }

  private PlanModel.Rule someRule(String kind, String work) {
    Integer days = chance.nextBoolean() ? 1 + chance.nextInt(400) : null;
    Integer loans = chance.nextBoolean() ? 1 + chance.nextInt(4) : null;
    Integer shots =
        days == null && loans == null || chance.nextBoolean() ? 1 + chance.nextInt(200) : null;
    return new PlanModel.Rule(kind, work, days, loans, shots);
  }

  private String changeRule() throws SQLException {
    if (model.rules.isEmpty()) {
      return "nothing";
    }
    long id = some(List.copyOf(model.rules.keySet()));
    int which = chance.nextInt(KINDS.size());
    PlanModel.Rule to = someRule(KINDS.get(which), WORKS.get(which));
    run(
        """
        UPDATE upkeep_rule SET item_kind = ?, work = ?, every_days = ?, every_loans = ?, every_shots = ?
         WHERE id = ?""",
        to.kind(),
        to.work(),
        to.days(),
        to.loans(),
        to.shots(),
        id);
    model.rules.put(id, to);
    return "changed a rule to " + to;
  }

  private String removeRule() throws SQLException {
    if (model.rules.isEmpty()) {
      return "nothing";
    }
    long id = some(List.copyOf(model.rules.keySet()));
    run("DELETE FROM upkeep_rule WHERE id = ?", id);
    model.rules.remove(id);
    return "removed a rule";
  }

  private String retireOrFindAgain() throws SQLException {
    long id = someItem();
    PlanModel.Item item = model.items.get(id);
    if (item.lines.stream().anyMatch(line -> line.back == null)) {
      return "nothing";
    }
    item.retired = !item.retired;
    run(
        "UPDATE item SET retired_on = ?, retired_why = ? WHERE id = ?",
        item.retired ? "2025-06-01" : null,
        item.retired ? "LOST" : null,
        id);
    return "retired or found again " + id;
  }

  private String date() throws SQLException {
    long id = someItem();
    PlanModel.Item item = model.items.get(id);
    LocalDate day = LocalDate.of(2025, 1, 1).plusDays(chance.nextInt(200));
    if (item.kind.equals("STRING") && chance.nextBoolean()) {
      item.firstUsed = day;
      run("UPDATE bowstring SET first_used = ? WHERE id = ?", day, id);
    } else {
      item.boughtOn = day;
      run("UPDATE item SET bought_on = ? WHERE id = ?", day, id);
    }
    return "dated " + id + " to " + day;
  }

  private String lend() throws SQLException {
    long id = someItem();
    PlanModel.Item item = model.items.get(id);
    if (item.retired
        || item.lines.stream().anyMatch(line -> line.back == null)
        || number("SELECT count(*) FROM inspection_failed WHERE item_id = " + id) > 0) {
      return "nothing";
    }
    item.lines.add(new PlanModel.Line(now));
    run("INSERT INTO loan_line (loan_id, item_id, out_at) VALUES (1, ?, ?)", id, now);
    return "lent " + id;
  }

  private String receive() throws SQLException {
    List<Long> out = new ArrayList<>();
    model.items.forEach(
        (id, item) -> {
          if (item.lines.stream().anyMatch(line -> line.back == null)) {
            out.add(id);
          }
        });
    if (out.isEmpty()) {
      return "nothing";
    }
    long id = some(out);
    Integer shots = chance.nextInt(4) == 0 ? null : chance.nextInt(120);
    for (PlanModel.Line line : model.items.get(id).lines) {
      if (line.back == null) {
        line.back = now;
        line.shots = shots;
      }
    }
    run(
        "UPDATE loan_line SET back_at = ?, outcome = 'BACK', shots = ? WHERE item_id = ? AND back_at IS NULL",
        now,
        shots,
        id);
    return "received " + id;
  }

  private String inspect() throws SQLException {
    long id = someItem();
    String work = WORKS.get(KINDS.indexOf(model.items.get(id).kind));
    // A third of the papers is typed in late.
    Instant happened =
        chance.nextInt(3) == 0 ? now.minus(Duration.ofHours(chance.nextInt(1500))) : now;
    boolean passed = chance.nextInt(4) > 0;
    run(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
        VALUES (?, ?, ?, ?, 1, ?)""",
        id,
        work,
        happened,
        now,
        passed ? "PASSED" : "FAILED");
    if (passed) {
      model.items.get(id).passed.computeIfAbsent(work, any -> new ArrayList<>()).add(happened);
    }
    return (passed ? "passed " : "failed ") + id + " at " + happened;
  }

  private long someItem() {
    return 1 + chance.nextInt(model.items.size());
  }

  private <T> T some(List<T> of) {
    return of.get(chance.nextInt(of.size()));
  }

  private Set<String> planned(String view) throws SQLException {
    Set<String> planned = new TreeSet<>();
    try (PreparedStatement statement =
            file.prepareStatement("SELECT item_id, rule_id, due_on FROM " + view);
        ResultSet row = statement.executeQuery()) {
      while (row.next()) {
        planned.add(row.getLong(1) + "/" + row.getLong(2) + "/" + row.getString(3));
      }
    }
    return planned;
  }

  private long number(String sql) throws SQLException {
    try (PreparedStatement statement = file.prepareStatement(sql);
        ResultSet row = statement.executeQuery()) {
      return row.getLong(1);
    }
  }

  private void run(String sql, Object... parameters) throws SQLException {
    try (PreparedStatement statement = file.prepareStatement(sql)) {
      for (int i = 0; i < parameters.length; i++) {
        Object p = parameters[i];
        statement.setObject(
            i + 1,
            p instanceof Instant moment
                ? Stored.moment(moment)
                : p instanceof LocalDate day ? Stored.day(day) : p);
      }
      statement.executeUpdate();
    }
  }
}
