package club.ascham.packaged;

import club.ascham.packaged.ApiCaller.Answer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Someone who lends, takes back, checks, inspects and withdraws bows of their own without a pause,
 * and notes each save that was acknowledged. What was sent and not acknowledged is sent again, with
 * its one-time key, before anything else.
 */
final class Clerk {
  private enum Deed {
    ISSUE,
    EXTEND,
    RECEIVE,
    CHECK,
    PUT_BACK,
    INSPECT,
    WITHDRAW,
    DECIDE,
    RELEASE,
    REGISTER;

    Deed next() {
      return values()[(ordinal() + 1) % values().length];
    }
  }

  /** Where the work on one bow has got to. */
  private static final class Work {
    private final Bow bow;
    private Deed deed = Deed.ISSUE;
    private long loan;
    private long check;
    private long withdrawal;

    private Work(Bow bow) {
      this.bow = bow;
    }
  }

  private record Call(Work work, Deed deed, String path, Map<String, Object> body, int success) {
    String key() {
      return (String) body.get("onceKey");
    }
  }

  private final String name;
  private final List<Work> works;
  private final List<Saved> saved = new ArrayList<>();
  private final List<Saved> fresh = new ArrayList<>();
  private final Set<String> cut = new HashSet<>();
  private Call pending;
  private int turn;
  private int calls;

  Clerk(String name, List<Bow> bows) {
    this.name = name;
    this.works = new ArrayList<>(bows.stream().map(Work::new).toList());
  }

  /** Works until no answer comes any more. */
  void work(ApiCaller officer, Runnable afterEachSave) throws InterruptedException {
    try {
      while (!Thread.interrupted()) {
        one(officer);
        afterEachSave.run();
      }
    } catch (IOException noAnswer) {
      cut.add(pending.key());
    }
  }

  /** Sends again what was not acknowledged. */
  void settle(ApiCaller officer) throws IOException, InterruptedException {
    if (pending != null) {
      one(officer);
    }
  }

  private void one(ApiCaller officer) throws IOException, InterruptedException {
    if (pending == null) {
      pending = call(works.get(turn++ % works.size()));
    }
    Answer answer = officer.post(pending.path(), pending.body());
    if (answer.status() != pending.success()) {
      throw new AssertionError(pending + " was answered " + answer.status() + " " + answer.body());
    }
    acknowledged(pending, answer);
    pending.work().deed = pending.deed().next();
    pending = null;
  }

  List<Saved> saved() {
    return List.copyOf(saved);
  }

  /** What was saved since this was asked last. */
  List<Saved> savedSince() {
    List<Saved> taken = List.copyOf(fresh);
    fresh.clear();
    return taken;
  }

  /** The keys of calls that a kill cut off. */
  Set<String> cut() {
    return Set.copyOf(cut);
  }

  /** The key of the call that was cut off last, and is not settled yet. */
  List<String> justCut() {
    return pending == null ? List.of() : List.of(pending.key());
  }

  private Call call(Work work) {
    String tag = name + "-" + ++calls;
    Bow bow = work.bow;
    return switch (work.deed) {
      case ISSUE -> call(work, tag, "/api/loans", bow.issue(tag), 201);
      case EXTEND ->
          call(
              work,
              tag,
              "/api/loans/" + work.loan + "/extend",
              Map.of("dueOn", Bow.due(60 + calls % 60)),
              200);
      case RECEIVE -> call(work, tag, "/api/receipts", Map.of("loanId", work.loan), 201);
      case CHECK -> call(work, tag, "/api/checks", bow.check(), 201);
      case PUT_BACK -> call(work, tag, "/api/checks/" + work.check + "/release", Map.of(), 200);
      case INSPECT -> call(work, tag, "/api/inspections", bow.boltInspection(), 201);
      case WITHDRAW ->
          call(work, tag, "/api/withdrawals", Map.of("item", bow.body(), "why", said(tag)), 201);
      case DECIDE ->
          call(
              work,
              tag,
              "/api/withdrawals/" + work.withdrawal + "/decide",
              Map.of("work", "none", "why", said(tag)),
              200);
      case RELEASE ->
          call(
              work,
              tag,
              "/api/withdrawals/" + work.withdrawal + "/release",
              Map.of("lookedAt", said(tag), "why", said(tag)),
              200);
      case REGISTER ->
          call(
              work,
              tag,
              "/api/strings",
              Map.of("forBowIn", 68, "material", "polyester", "strands", 14, "serial", tag),
              201);
    };
  }

  /** A reason that only one call gives. */
  private static String said(String tag) {
    return "Written by the clerk as " + tag;
  }

  private static Call call(
      Work work, String tag, String path, Map<String, Object> body, int success) {
    Map<String, Object> keyed = new HashMap<>(body);
    keyed.put("onceKey", tag);
    return new Call(work, work.deed, path, keyed, success);
  }

  private void acknowledged(Call call, Answer answer) {
    Work work = call.work();
    switch (call.deed()) {
      case ISSUE -> {
        work.loan = answer.id();
        keep(
            call,
            Bow.lines(answer.body()),
            """
            SELECT count(*) FROM loan l JOIN borrower b ON b.id = l.borrower_id JOIN loan_line x ON x.loan_id = l.id
             WHERE l.id = ?1 AND b.name = ?2 AND l.deposit_minor = 2000""",
            work.loan,
            call.key());
      }
      case EXTEND ->
          keep(
              call,
              1,
              "SELECT count(*) FROM loan WHERE id = ?1 AND due_on = ?2",
              work.loan,
              call.body().get("dueOn"));
      case RECEIVE ->
          keep(
              call,
              answer.body().path("back").size(),
              "SELECT count(*) FROM loan_line WHERE receipt_id = ?1 AND loan_id = ?2 AND outcome = 'BACK'",
              answer.id(),
              work.loan);
      case CHECK -> {
        work.check = answer.id();
        if (!answer.body().path("verdict").path("kind").asText().equals("fit")) {
          throw new AssertionError("not fit as it was set up: " + answer.body());
        }
        keep(
            call,
            answer.body().path("signs").size(),
            "SELECT count(*) FROM bow_check c JOIN check_sign s ON s.check_id = c.id WHERE c.id = ?1 AND c.rig_id = ?2",
            work.check,
            work.bow.rig());
      }
      case PUT_BACK ->
          keep(
              call,
              1,
              "SELECT count(*) FROM bow_check WHERE id = ?1 AND released_at IS NOT NULL",
              work.check);
      case INSPECT ->
          keep(
              call,
              1,
              """
              SELECT count(*) FROM upkeep_record u JOIN item i ON i.id = u.item_id
               WHERE u.id = ?1 AND i.code = ?2 AND u.result = 'PASSED'""",
              answer.id(),
              work.bow.body().replace("-", ""));
      case WITHDRAW -> {
        work.withdrawal = answer.id();
        keep(
            call,
            1,
            "SELECT count(*) FROM withdrawal WHERE id = ?1 AND why = ?2",
            work.withdrawal,
            said(call.key()));
      }
      case DECIDE ->
          keep(
              call,
              1,
              "SELECT count(*) FROM withdrawal WHERE id = ?1 AND no_work_why = ?2",
              work.withdrawal,
              said(call.key()));
      case RELEASE ->
          keep(
              call,
              1,
              "SELECT count(*) FROM withdrawal WHERE id = ?1 AND release_why = ?2",
              work.withdrawal,
              said(call.key()));
      case REGISTER ->
          keep(
              call,
              1,
              "SELECT count(*) FROM item i JOIN bowstring s ON s.id = i.id WHERE i.serial = ?1",
              call.key());
    }
  }

  private void keep(Call call, long expected, String sql, Object... parameters) {
    Saved one = new Saved(call.deed() + " " + call.key(), expected, sql, parameters);
    saved.add(one);
    fresh.add(one);
  }
}
