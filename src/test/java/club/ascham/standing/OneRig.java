package club.ascham.standing;

import club.ascham.concern.Against;
import club.ascham.concern.ConcernsOf;
import club.ascham.id.RigId;
import club.ascham.store.Stored;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** One rig in the file, what is done to it, and a model that knows only what was done. */
final class OneRig implements AutoCloseable {
  private static final long RISER = 1;
  private static final long LIMBS = 2;
  private static final long STRING = 3;

  /** A row of a view: its facts and its own state. */
  record Seen(Standing facts, State state) {}

  private final Connection connection;
  private Instant now = Instant.parse("2026-01-10T18:00:00Z");

  // The model: what was done, in the plainest terms.
  private boolean limbsFitted;
  private boolean stringFitted;
  private Instant lastFitting;
  private Instant setUpBegun;
  private Instant setUpInForceBegun;
  private Instant lastEvent = Instant.MIN;
  private Instant cleared = Instant.MIN;
  private boolean onLoan;
  private boolean limbsWithdrawn;
  private boolean stringWithdrawn;
  private LocalDate boltsInspected = LocalDate.of(2026, 1, 1);
  private LocalDate limbsInspected = LocalDate.of(2026, 1, 1);
  private boolean limbInspectionAsked;
  private boolean limbInspectionFailed;
  private boolean dangerousReport;

  /** A string that was registered with the club, two years and a quarter more. */
  private final LocalDate stringBeyond = LocalDate.of(2026, 1, 1).plusDays(912);

  private int loansSinceBoltInspection;

  OneRig(Connection connection) throws SQLException {
    this.connection = connection;
    run("INSERT INTO account (id, name, password_hash, role) VALUES (1, 'a', 'x', 'OFFICER')");
    run("INSERT INTO borrower (id, name, contact, age_band) VALUES (1, 'b', 'c', 'ADULT')");
    item(RISER, "R0101E", "RISER");
    run(
        "INSERT INTO riser (id, build, hand, length_in, limb_fitting) VALUES (1, 'ADJUSTABLE', 'RIGHT', 25, 'ILF')");
    item(LIMBS, "L0101L", "LIMBS");
    run(
        "INSERT INTO limbs (id, build, size, marked_lb, limb_fitting) VALUES (2, 'ADJUSTABLE', 'MEDIUM', 24, 'ILF')");
    item(STRING, "S0201B", "STRING");
    run("INSERT INTO bowstring (id, for_bow_in, material) VALUES (3, 68, 'POLYESTER')");
    // Only the two inspections of the model block in this file.
    run(
        "UPDATE upkeep_rule SET blocks = 0 WHERE work NOT IN ('BOLT_INSPECTION',"
            + " 'LIMB_INSPECTION')");
    run(
        "INSERT INTO rig (id, style, level, assembled_at) VALUES (1, 'SPLIT_FINGER', 'BEGINNER',"
            + " ?)",
        now);
    fit(RISER, "BODY");
  }

  private void item(long id, String code, String kind) throws SQLException {
    run(
        "INSERT INTO item (id, code, kind, registered_on) VALUES (" + id + ", ?, ?, '2026-01-01')",
        code,
        kind);
  }

  LocalDate today() {
    return LocalDate.ofInstant(now, ZoneOffset.UTC);
  }

  /** Does it if the file lets us; whether it did. */
  boolean tryTo(Deed deed) throws SQLException {
    now = now.plus(Duration.ofMinutes(7));
    Savepoint before = connection.setSavepoint();
    try {
      return doIt(deed);
    } catch (SQLException refused) {
      connection.rollback(before);
      if (!String.valueOf(refused.getMessage()).contains("CONSTRAINT")) {
        throw refused;
      }
      return false;
    }
  }

  private boolean doIt(Deed deed) throws SQLException {
    switch (deed) {
      case FIT_STRING -> {
        fit(STRING, "STRING");
        stringFitted = true;
      }
      case TAKE_STRING_OFF -> {
        if (onLoan || run(TAKE_OFF, now, STRING) == 0) {
          return false;
        }
        stringFitted = false;
      }
      case FIT_LIMBS -> {
        fit(LIMBS, "LIMBS");
        limbsFitted = true;
      }
      case TAKE_LIMBS_OFF -> {
        if (onLoan || run(TAKE_OFF, now, LIMBS) == 0) {
          return false;
        }
        limbsFitted = false;
      }
      case BEGIN_SET_UP -> {
        run("INSERT INTO set_up (rig_id, begun_at, begun_by) VALUES (1, ?, 1)", now);
        setUpBegun = now;
      }
      case FINISH_SET_UP -> {
        if (setUpBegun == null) {
          return false;
        }
        run(
            """
            UPDATE set_up SET finished_at = ?, finished_by = 1, brace = 22000000, brace_from = 'GRIP_THROAT',
                   tiller_upper = 18000000, tiller_lower = 17700000, nocking = 400000, screws_seen = 1
             WHERE finished_at IS NULL""",
            now);
        if (!setUpBegun.isBefore(lastFitting)) {
          setUpInForceBegun = setUpBegun;
        }
        setUpBegun = null;
        cleared = now;
      }
      case ISSUE -> {
        if (!mayBeLent()) {
          // The file must refuse what the triggers cover; the rest is the use case's to refuse.
          return tryToLendOutright();
        }
        lend();
      }
      case RECEIVE -> {
        if (!onLoan) {
          return false;
        }
        run("UPDATE loan_line SET back_at = ?, outcome = 'BACK' WHERE back_at IS NULL", now);
        onLoan = false;
        lastEvent = now;
      }
      case CHECK_NOT_YET_PUT_BACK -> {
        check(null);
        lastEvent = now;
      }
      case CHECK_AND_PUT_BACK -> {
        check(now);
        lastEvent = now;
        cleared = now;
      }
      case WITHDRAW_LIMBS -> {
        withdraw(LIMBS);
        limbsWithdrawn = true;
      }
      case RELEASE_LIMBS -> {
        release(LIMBS);
        limbsWithdrawn = false;
      }
      case WITHDRAW_STRING -> {
        withdraw(STRING);
        stringWithdrawn = true;
      }
      case RELEASE_STRING -> {
        release(STRING);
        stringWithdrawn = false;
      }
      case INSPECT_BOLTS -> {
        inspect(RISER, "BOLT_INSPECTION");
        boltsInspected = today();
        loansSinceBoltInspection = 0;
      }
      case ASK_FOR_LIMB_INSPECTION -> {
        run(
            """
            INSERT INTO upkeep_task (item_id, work, opened_at, opened_by, why, blocks)
            VALUES (2, 'LIMB_INSPECTION', ?, 1, 'fell over', 1)""",
            now);
        limbInspectionAsked = true;
      }
      case INSPECT_LIMBS -> {
        inspect(LIMBS, "LIMB_INSPECTION");
        run(
            """
            UPDATE upkeep_task SET closed_by_record = (SELECT max(id) FROM upkeep_record)
             WHERE closed_by_record IS NULL""");
        limbsInspected = today();
        limbInspectionAsked = false;
        limbInspectionFailed = false;
      }
      case LIMBS_FAIL_THEIR_INSPECTION -> {
        inspect(LIMBS, "LIMB_INSPECTION", "FAILED");
        limbInspectionFailed = true;
      }
      case REPORT_A_BANG -> {
        run(
            """
            INSERT INTO report (rig_id, told_at, happened_at, recorded_at, told_to, part_known, dangerous)
            VALUES (1, 'BOW', ?, ?, 1, 0, 1)""",
            now,
            now);
        run(
            "INSERT INTO report_part (report_id, item_id) VALUES ((SELECT max(id) FROM report),"
                + " 1)");
        dangerousReport = true;
      }
      case ANSWER_WHAT_WAS_REPORTED -> {
        run(
            """
            UPDATE report SET answer = 'NOTHING_THERE', answered_at = ?, answered_by = 1, answer_words = 'looked'
             WHERE answer IS NULL""",
            now);
        dangerousReport = false;
      }
      case WAIT_HALF_A_YEAR -> now = now.plus(Duration.ofDays(183));
    }
    return true;
  }

  private static final String TAKE_OFF =
      "UPDATE fitting SET until_at = ? WHERE item_id = ? AND until_at IS NULL";

  private void fit(long item, String place) throws SQLException {
    run(
        "INSERT INTO fitting (rig_id, item_id, place, from_at) VALUES (1, ?, '" + place + "', ?)",
        item,
        now);
    lastFitting = now;
  }

  private boolean tryToLendOutright() throws SQLException {
    boolean triggersCover =
        onLoan
            || limbsWithdrawn && limbsFitted
            || stringWithdrawn && stringFitted
            || inspectionKeepsIn(today());
    if (!triggersCover) {
      return false;
    }
    lend();
    return true;
  }

  private void lend() throws SQLException {
    run(
        """
        INSERT INTO loan (kind, borrower_id, issued_at, due_on, issued_by, recorded_at, terms_accepted)
        VALUES ('KIT', 1, ?, '2099-01-01', 1, ?, 1)""",
        now,
        now);
    for (long part : new long[] {RISER, LIMBS, STRING}) {
      run(
          """
          INSERT INTO loan_line (loan_id, item_id, rig_id, out_at)
          VALUES ((SELECT max(id) FROM loan), ?, 1, ?)""",
          part,
          now);
    }
    onLoan = true;
    loansSinceBoltInspection++;
  }

  private void check(Instant released) throws SQLException {
    run(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict,
                               released_at, released_by)
        VALUES (1, 'LOOK', ?, ?, 1, 1, 'FIT', ?, CASE WHEN ? IS NULL THEN NULL ELSE 1 END)""",
        now,
        now,
        released,
        released);
  }

  private void withdraw(long item) throws SQLException {
    run(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)
        VALUES (?, ?, ?, 1, 'a crack')""",
        item,
        now,
        now);
  }

  private void release(long item) throws SQLException {
    run(
        """
        UPDATE withdrawal SET released_at = ?1, released_by = 1, release_why = 'sound', looked_at = 'all of it',
               looked_by = 1, decided_at = ?1, decided_by = 1, no_work_why = 'a scratch and no crack'
         WHERE item_id = ?2 AND released_at IS NULL""",
        now,
        item);
  }

  private void inspect(long item, String work) throws SQLException {
    inspect(item, work, "PASSED");
  }

  private void inspect(long item, String work, String result) throws SQLException {
    run(
        """
        INSERT INTO upkeep_record (item_id, work, happened_at, recorded_at, done_by, result)
        VALUES (?, ?, ?, ?, 1, ?)""",
        item,
        work,
        now,
        now,
        result);
  }

  boolean mayBeLent() {
    return !inspectionKeepsIn(today())
        && limbsFitted
        && stringFitted
        && !limbsWithdrawn
        && !stringWithdrawn
        && !onLoan
        && setUpBegun == null
        && setUpInForceBegun != null
        && !setUpInForceBegun.isBefore(lastFitting);
  }

  /** The state by the model alone. */
  State expected(LocalDate today) {
    if (limbsFitted && limbsWithdrawn || stringFitted && stringWithdrawn) {
      return State.WITHDRAWN;
    }
    if (onLoan) {
      return State.ON_LOAN;
    }
    boolean setUp = setUpInForceBegun != null && !setUpInForceBegun.isBefore(lastFitting);
    if (!limbsFitted || !stringFitted || setUpBegun != null || !setUp) {
      return State.IN_THE_WORKSHOP;
    }
    return lastEvent.isAfter(cleared) || inspectionKeepsIn(today)
        ? State.TO_BE_CHECKED
        : State.READY;
  }

  private boolean inspectionKeepsIn(LocalDate today) {
    return today.isAfter(boltsInspected.plusDays(180))
        || today.isAfter(limbsInspected.plusDays(365))
        || limbInspectionAsked
        || limbInspectionFailed
        || dangerousReport
        || today.isAfter(stringBeyond)
        || loansSinceBoltInspection >= 12;
  }

  Seen seen(LocalDate today) throws SQLException {
    return rows("rig_standing", "0", "s.rig_id = 1", today).get(0);
  }

  /** What stands against it, read on a day that is not over yet. */
  Against against(LocalDate today) {
    Instant when = today.equals(today()) ? now : today.atTime(12, 0).toInstant(ZoneOffset.UTC);
    return ConcernsOf.file(connection, when).of(new RigId(1));
  }

  /** What stood against it on a day that is past, read now. */
  Against againstOn(LocalDate day) {
    return ConcernsOf.file(connection, now).of(new RigId(1), day);
  }

  List<Seen> parts(LocalDate today) throws SQLException {
    return rows("item_standing", "s.retired", "s.item_id IN (1, 2, 3)", today);
  }

  private List<Seen> rows(String view, String retired, String which, LocalDate today)
      throws SQLException {
    String sql =
        "SELECT %s, s.withdrawn, s.loan_id IS NOT NULL, s.in_workshop, s.needs_check, s.blocked_from, %s FROM %s s WHERE %s"
            .formatted(retired, Standing.STATE_TODAY, view, which);
    List<Seen> seen = new ArrayList<>();
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, today.toString());
      try (ResultSet row = statement.executeQuery()) {
        while (row.next()) {
          String blocked = row.getString(6);
          seen.add(
              new Seen(
                  new Standing(
                      row.getBoolean(1),
                      row.getBoolean(2),
                      row.getBoolean(3),
                      row.getBoolean(4),
                      row.getBoolean(5),
                      blocked == null ? null : LocalDate.parse(blocked)),
                  State.valueOf(row.getString(7))));
        }
      }
    }
    return seen;
  }

  private int run(String sql, Object... parameters) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < parameters.length; i++) {
        Object p = parameters[i];
        statement.setObject(i + 1, p instanceof Instant moment ? Stored.moment(moment) : p);
      }
      return statement.executeUpdate();
    }
  }

  /** Leaves the file as it was. */
  @Override
  public void close() throws SQLException {
    connection.rollback();
  }
}
