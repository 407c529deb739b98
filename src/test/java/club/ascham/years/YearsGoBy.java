package club.ascham.years;

import club.ascham.assembly.AssemblyDoor;
import club.ascham.check.CheckDoor;
import club.ascham.form.Outcome;
import club.ascham.id.CheckId;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.Made;
import club.ascham.id.RigId;
import club.ascham.issue.IssueDoor;
import club.ascham.receive.ReceiveDoor;
import club.ascham.register.ItemKind;
import club.ascham.register.RegisterDoor;
import club.ascham.session.SessionDoor;
import club.ascham.setup.SetUpDoor;
import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import club.ascham.worksheet.WorksheetDoor;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * What a club does on a day: kits go out for some weeks, come back and are checked, bows are lent
 * for an evening, and every other week somebody is at the bench. Each rig goes out some ten times a
 * year. All that is random comes from one seed.
 */
@Singleton
class YearsGoBy {
  private static final String[] FIRST = {
    "Ada", "Bram", "Cleo", "Dara", "Edwin", "Fay", "Gus", "Hana"
  };
  private static final String[] LAST = {
    "Finch", "Harker", "Ostler", "Pryor", "Quill", "Rusk", "Tarn"
  };

  /** Set-up figures of all bows, in millimetres; readings scatter about them. */
  private static final double BRACE = 216;

  private static final double UPPER = 190;
  private static final double LOWER = 186;

  private final RegisterDoor register;
  private final AssemblyDoor assembly;
  private final SetUpDoor setUp;
  private final IssueDoor issue;
  private final ReceiveDoor receive;
  private final CheckDoor check;
  private final WorksheetDoor worksheet;
  private final SessionDoor session;
  private final Rows rows;

  YearsGoBy(
      RegisterDoor register,
      AssemblyDoor assembly,
      SetUpDoor setUp,
      IssueDoor issue,
      ReceiveDoor receive,
      CheckDoor check,
      WorksheetDoor worksheet,
      SessionDoor session,
      Rows rows) {
    this.register = register;
    this.assembly = assembly;
    this.setUp = setUp;
    this.issue = issue;
    this.receive = receive;
    this.check = check;
    this.worksheet = worksheet;
    this.session = session;
    this.rows = rows;
  }

  /** What was done, and what was refused, by the words of the refusal. */
  static final class Tally {
    final Map<String, Integer> done = new HashMap<>();
    final Map<String, Integer> refused = new HashMap<>();

    private void done(String what) {
      done.merge(what, 1, Integer::sum);
    }

    private boolean of(String what, Outcome<? extends Made> outcome) {
      if (outcome instanceof Outcome.Done) {
        done(what);
        return true;
      }
      String why = outcome.refusals().isEmpty() ? "unread" : outcome.refusals().get(0).words();
      refused.merge(what + ": " + why.replaceAll("[A-Z]-\\d{4}-\\w|\\d+", "#"), 1, Integer::sum);
      return false;
    }
  }

  private record Ready(RigId rig, String hand, String body) {}

  private record Due(LoanId loan, boolean session) {}

  private record Task(ItemId item, String bareCode, Work work, RigId rig, int bowIn) {}

  /** Builds so many rigs, of which one in five is for left hands, and sets each of them up. */
  @Writes
  void begin(int from, int to, Random random, Tally tally) {
    for (int i = from; i < to; i++) {
      String hand = i % 5 == 4 ? "left" : "right";
      int riserIn = i % 4 == 3 ? 23 : 25;
      ItemCode riser =
          add(
              ItemKind.RISER,
              Map.of(
                  "maker",
                  "Alderfen",
                  "model",
                  "Fenlight " + riserIn,
                  "build",
                  "adjustable",
                  "hand",
                  hand,
                  "lengthIn",
                  "" + riserIn,
                  "limbFitting",
                  "ILF",
                  "maxTurnsOut",
                  "4",
                  "price",
                  "139.00"));
      ItemCode limbs =
          add(
              ItemKind.LIMBS,
              Map.of(
                  "maker",
                  "Alderfen",
                  "model",
                  "Sedge",
                  "build",
                  "adjustable",
                  "size",
                  "medium",
                  "markedLb",
                  "" + (16 + 2 * (i % 5)),
                  "limbFitting",
                  "ILF",
                  "price",
                  "79.00"));
      ItemCode string = string(riserIn + 43, random);
      add(ItemKind.TAB, Map.of("kind", "tab", "size", "M", "hand", hand, "price", "9.00"));
      if (i % 4 == 0) {
        add(
            ItemKind.STRINGER,
            Map.of("stringerKind", "tip-to-tip", "bowFromIn", "60", "bowToIn", "72"));
      }
      Outcome<RigId> rig =
          assembly.assemble(
              Map.of(
                  "body", riser.display(), "limbs", limbs.display(), "string", string.display()));
      if (tally.of("assembled", rig)) {
        bench(((Outcome.Done<RigId>) rig).made(), tally);
      }
    }
  }

  private ItemCode string(int bowIn, Random random) {
    return add(
        ItemKind.STRING,
        Map.of(
            "maker",
            "Marlwick",
            "model",
            "Homespun",
            "forBowIn",
            "" + bowIn,
            "material",
            "polyester",
            "strands",
            "12",
            "price",
            "10.00",
            "twists",
            "" + (18 + random.nextInt(8))));
  }

  private ItemCode add(ItemKind kind, Map<String, String> form) {
    Outcome<ItemId> added = register.add(kind, form);
    ItemId item = ((Outcome.Done<ItemId>) added).made();
    return new ItemCode(rows.texts("SELECT code FROM item WHERE id = ?1", item).get(0));
  }

  private void bench(RigId rig, Tally tally) {
    tally.of(
        "set up",
        setUp.setUp(
            rig,
            Map.of(
                "stepsDone",
                "all",
                "brace",
                BRACE + " mm",
                "braceFrom",
                "grip-throat",
                "tillerUpper",
                UPPER + " mm",
                "tillerLower",
                LOWER + " mm",
                "nocking",
                "4 mm",
                "screwsSeen",
                "on",
                "turnsUpper",
                "2",
                "turnsLower",
                "2",
                "twists",
                "22")));
  }

  /** One day; all of it is one transaction. */
  @Writes
  void day(LocalDate today, int rigs, Random random, Tally tally) {
    for (Due due :
        rows.list(
            Due.class,
            """
            SELECT l.id AS loan, l.kind = 'SESSION' AS session FROM loan l
             WHERE l.due_on <= ?1 AND EXISTS (SELECT 1 FROM loan_line x WHERE x.loan_id = l.id AND x.back_at IS NULL)""",
            today)) {
      if (due.session()) {
        tally.of("session back", session.takeBack(due.loan()));
      } else if (random.nextInt(10) > 0) {
        comesBack(due.loan(), random, tally);
      }
    }
    if (today.getDayOfYear() % 14 == 0) {
      atTheBench(today, random, tally);
    }
    List<Ready> ready = ready(today);
    int kits = rigs * 10 / 365 + (random.nextInt(365) < rigs * 10 % 365 ? 1 : 0);
    for (int i = 0; i < kits && !ready.isEmpty(); i++) {
      goesOut(ready.remove(random.nextInt(ready.size())), random, tally);
    }
    if (today.getDayOfWeek().getValue() == 6 && ready.size() >= 4) {
      List<RigId> evening = new ArrayList<>();
      for (int i = 0; i < Math.min(12, ready.size()); i++) {
        evening.add(ready.get(i).rig());
      }
      tally.of("session", session.lend(name(random), evening));
    }
  }

  private List<Ready> ready(LocalDate today) {
    return new ArrayList<>(
        rows.list(
            Ready.class,
            "SELECT s.rig_id, r.hand, s.body_id AS body FROM rig_standing s JOIN riser r ON r.id = s.body_id WHERE "
                + Standing.STATE_TODAY
                + " = 'READY' ORDER BY s.rig_id",
            today));
  }

  private void goesOut(Ready ready, Random random, Tally tally) {
    Map<String, String> form = new HashMap<>();
    form.put("name", name(random));
    form.put("contact", "07700 9%05d".formatted(random.nextInt(100_000)));
    form.put("hand", ready.hand().toLowerCase(Locale.ROOT));
    form.put("drawLength", "27 in");
    form.put("ageBand", "adult");
    form.put("experience", "improver");
    form.put("rig", Long.toString(ready.rig().value()));
    form.put("dueWeeks", Integer.toString(1 + random.nextInt(4)));
    form.put("deposit", "20.00");
    form.put("depositHow", "cash");
    form.put("termsAccepted", "on");
    form.put("briefingGiven", "on");
    form.put("overrideWhy", "Looked at by the officer and found sound for this archer.");
    form.put("overrideCoach", "Mara Voss");
    tally.of("issued", issue.issue(form));
  }

  private void comesBack(LoanId loan, Random random, Tally tally) {
    List<RigId> its =
        rows
            .texts(
                "SELECT DISTINCT rig_id FROM loan_line WHERE loan_id = ?1 AND rig_id IS NOT NULL",
                loan)
            .stream()
            .map(id -> new RigId(Long.parseLong(id)))
            .toList();
    if (tally.of("received", receive.receive(loan))) {
      its.forEach(rig -> checked(rig, random, tally));
    }
  }

  /** Checked, adjusted where the verdict says so, checked again, and put back where it is fit. */
  private void checked(RigId rig, Random random, Tally tally) {
    for (double scatter = 2.5; scatter > 0.5; scatter /= 4) {
      Outcome<CheckId> outcome = check.check(rig, readings(scatter, random));
      if (!tally.of("checked", outcome)) {
        return;
      }
      CheckId made = ((Outcome.Done<CheckId>) outcome).made();
      String verdict = rows.texts("SELECT verdict FROM bow_check WHERE id = ?1", made).get(0);
      tally.done(verdict);
      if (verdict.equals("FIT")) {
        tally.of("put back", check.putBack(made));
        return;
      }
      if (!verdict.equals("ADJUST")
          || !tally.of("adjusted", check.adjust(made, Map.of("twistsAdded", "1")))) {
        return;
      }
    }
  }

  private static Map<String, String> readings(double scatter, Random random) {
    double off = scatter * random.nextGaussian();
    Map<String, String> form = new HashMap<>();
    form.put("allAsListed", "on");
    form.put("brace", "%.1f mm".formatted(BRACE + off));
    form.put("braceFrom", "grip-throat");
    form.put("tillerUpper", "%.1f mm".formatted(UPPER + off + scatter * random.nextGaussian() / 4));
    form.put("tillerLower", "%.1f mm".formatted(LOWER + off + scatter * random.nextGaussian() / 4));
    form.put("string", "fine");
    form.put("limbs", "fine");
    form.put("bolts", "fine");
    return form;
  }

  /** What is due within the month is done of all that is in the room; spares are bought for it. */
  private void atTheBench(LocalDate today, Random random, Tally tally) {
    Set<RigId> touched = new HashSet<>();
    for (Task task :
        rows.list(
            Task.class,
            """
            SELECT w.item_id, i.code AS bare_code, w.work, s.rig_id, coalesce(b.for_bow_in, 0) AS bow_in
              FROM work_due w JOIN item i ON i.id = w.item_id JOIN item_standing s ON s.item_id = w.item_id
              LEFT JOIN bowstring b ON b.id = w.item_id
             WHERE w.due_on <= date(?1, '+30 days') AND s.loan_id IS NULL ORDER BY w.due_on, w.item_id""",
            today)) {
      ItemCode code = new ItemCode(task.bareCode());
      if (task.work() != Work.STRING_REPLACEMENT) {
        tally.of(task.work().word(), worksheet.pass(code, task.work()));
      } else if (task.rig() != null) {
        ItemCode fresh = string(task.bowIn(), random);
        if (tally.of("string replaced", worksheet.replace(code, fresh))) {
          touched.add(task.rig());
        }
      }
    }
    touched.forEach(rig -> bench(rig, tally));
    for (String rig :
        rows.texts(
            "SELECT s.rig_id FROM rig_standing s WHERE "
                + Standing.STATE_TODAY
                + " = 'TO_BE_CHECKED' AND s.loan_id IS NULL",
            today)) {
      checked(new RigId(Long.parseLong(rig)), random, tally);
    }
  }

  private static String name(Random random) {
    return FIRST[random.nextInt(FIRST.length)]
        + " "
        + LAST[random.nextInt(LAST.length)]
        + " "
        + (char) ('A' + random.nextInt(26));
  }
}
