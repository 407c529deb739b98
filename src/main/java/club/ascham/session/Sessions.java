package club.ascham.session;

import club.ascham.bow.AgeBand;
import club.ascham.bow.RigSpec;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.Missing;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.Standing;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads what a session could take, and what it took. */
@ApplicationScoped
class Sessions {
  private final Rows rows;
  private final RigSpecs rigs;
  private final Concerns concerns;

  Sessions(Rows rows, RigSpecs rigs, Concerns concerns) {
    this.rows = rows;
    this.rigs = rigs;
    this.concerns = concerns;
  }

  private record Id(RigId rig) {}

  /** A rig as the leader picks it: by hand, length and weight. */
  record Pick(
      RigId rig,
      String code,
      String hand,
      Integer bowLengthIn,
      Double markedLb,
      Against against,
      boolean chosen) {
    public String label() {
      return Stream.of(
              hand + "-handed",
              bowLengthIn == null ? null : bowLengthIn + " in",
              markedLb == null ? null : plain(markedLb) + " lb")
          .filter(part -> part != null)
          .collect(Collectors.joining(", "));
    }

    public String field() {
      return "rig-" + rig.value();
    }

    private static String plain(double lb) {
      return lb == Math.rint(lb) ? Long.toString((long) lb) : Double.toString(lb);
    }
  }

  /** A session's head. */
  record Head(LoanId id, String leader, Instant issuedAt, LocalDate dueOn, String issuedBy) {}

  /** A rig that went out with a session. */
  record Out(RigId rig, String bareCode, Instant backAt) {
    public boolean isOut() {
      return backAt == null;
    }

    public String code() {
      return bareCode == null ? "rig " + rig.value() : new ItemCode(bareCode).display();
    }

    public String seenField() {
      return "seen-" + rig.value();
    }

    public String wordsField() {
      return "words-" + rig.value();
    }

    public String stillOutField() {
      return "out-" + rig.value();
    }
  }

  /**
   * Who shares a rig: what its weight and the arrows depend on, no name.
   *
   * @param age null: noted before it was asked
   * @param why it was given against advice; null: nothing spoke against it
   * @param coach who agreed to its weight; null: that was not asked
   */
  record Archer(
      RigId rig,
      String rigBareCode,
      AgeBand age,
      Length draw,
      String arrowsBareCode,
      Length arrowLength,
      String why,
      String coach) {
    public String ageSaid() {
      return Words.said(age);
    }

    public String rigCode() {
      return rigBareCode == null ? "a rig" : new ItemCode(rigBareCode).display();
    }

    public String drawSaid() {
      return LengthText.both(draw);
    }

    public String arrowsSaid() {
      return arrowLength == null ? "" : LengthText.both(arrowLength);
    }

    public String arrows() {
      return arrowsBareCode == null ? null : new ItemCode(arrowsBareCode).display();
    }
  }

  /** A session in a list. */
  record Row(
      LoanId id,
      String leader,
      Instant issuedAt,
      LocalDate dueOn,
      int rigs,
      int rigsOut,
      int besideOut,
      int arrowsMissing) {
    /** Of one that is over: what of it came back. */
    public String back() {
      return Missing.allBackBut(arrowsMissing);
    }

    /** What is not back, in a few words; empty: all is. */
    public String out() {
      return Stream.of(
              rigsOut == 0 ? "" : rigsOut + (rigsOut == 1 ? " rig" : " rigs"),
              besideOut == 0
                  ? ""
                  : besideOut + (besideOut == 1 ? " thing" : " things") + " beside them")
          .filter(part -> !part.isEmpty())
          .collect(Collectors.joining(" and "));
    }
  }

  /**
   * Ready rigs, by hand, then length, then weight; those of an earlier session are chosen already,
   * but for what something speaks against: nobody takes that unseen.
   *
   * @param byHand a person chose these, and not an earlier session
   */
  List<Pick> ready(LocalDate today, Set<RigId> chosen, boolean byHand) {
    List<RigId> ids =
        rows
            .list(
                Id.class,
                "SELECT s.rig_id FROM rig_standing s WHERE " + Standing.STATE_TODAY + " = 'READY'",
                today)
            .stream()
            .map(Id::rig)
            .toList();
    Map<RigId, Against> against = concerns.ofRigs(ids);
    return rigs.of(ids).values().stream()
        .filter(card -> card.spec().isPresent() && !against.get(card.id()).blocks())
        .map(card -> pick(card, against.get(card.id()), chosen, byHand))
        .sorted(
            Comparator.comparing(Pick::hand, Comparator.reverseOrder())
                .thenComparing(Pick::bowLengthIn, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Pick::markedLb, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(Pick::code))
        .toList();
  }

  private static Pick pick(RigCard card, Against against, Set<RigId> chosen, boolean byHand) {
    RigSpec spec = card.spec().orElseThrow();
    double marked = spec.onePiece() != null ? spec.onePiece().markedLb() : spec.limbs().markedLb();
    return new Pick(
        card.id(),
        card.name(),
        spec.hand() == null ? "either" : Words.of(spec.hand()),
        spec.bowLengthIn().isPresent() ? spec.bowLengthIn().getAsInt() : null,
        marked,
        against,
        chosen.contains(card.id()) && (byHand || !against.speaks()));
  }

  /** The rigs of the session before, to offer the same set again. */
  Set<RigId> lastSet() {
    return rows
        .list(
            Id.class,
            """
            SELECT DISTINCT rig_id FROM loan_line WHERE rig_id IS NOT NULL AND loan_id =
              (SELECT id FROM loan WHERE kind = 'SESSION' ORDER BY issued_at DESC, id DESC LIMIT 1)\
            """)
        .stream()
        .map(Id::rig)
        .collect(Collectors.toSet());
  }

  Optional<Head> head(LoanId id) {
    return rows.one(
        Head.class,
        """
        SELECT l.id, l.leader, l.issued_at, l.due_on, a.name AS issued_by
          FROM loan l JOIN account a ON a.id = l.issued_by WHERE l.id = ?1 AND l.kind = 'SESSION'\
        """,
        id);
  }

  List<Out> rigsOf(LoanId id) {
    return rows.list(
        Out.class,
        """
        SELECT x.rig_id, i.code AS bare_code, x.back_at
          FROM loan_line x JOIN item i ON i.id = x.item_id
         WHERE x.loan_id = ?1 AND x.rig_id IS NOT NULL AND i.kind IN ('RISER', 'BOW')
           AND x.id = (SELECT max(y.id) FROM loan_line y JOIN item j ON j.id = y.item_id
                        WHERE y.loan_id = x.loan_id AND y.rig_id = x.rig_id AND j.kind IN ('RISER', 'BOW'))
         ORDER BY i.code\
        """,
        id);
  }

  List<Archer> archersOf(LoanId id) {
    return rows.list(
        Archer.class,
        """
        SELECT a.rig_id,
               (SELECT b.code FROM fitting f JOIN item b ON b.id = f.item_id
                 WHERE f.rig_id = a.rig_id AND f.place = 'BODY' ORDER BY f.until_at IS NULL DESC, f.from_at DESC LIMIT 1) AS rig_bare_code,
               a.age_band AS age, a.draw_length AS draw, i.code AS arrows_bare_code, k.arrow_length, a.override_why AS why, a.override_coach AS coach
          FROM session_archer a LEFT JOIN item i ON i.id = a.arrows_id LEFT JOIN kit_item k ON k.id = a.arrows_id
         WHERE a.loan_id = ?1 ORDER BY a.id\
        """,
        id);
  }

  /**
   * Where a rig stands.
   *
   * @param fullCheckDue whether the last look at it found it fine and did not release it
   */
  record Stands(RigId rig, State state, boolean fullCheckDue) {}

  Map<RigId, Stands> stands(Collection<RigId> rigs, LocalDate today) {
    return rows
        .list(
            Stands.class,
            "SELECT s.rig_id, "
                + Standing.STATE_TODAY
                + " AS state, coalesce((SELECT c.kind = 'LOOK' AND c.verdict = 'FIT' AND c.released_at IS NULL FROM bow_check c"
                + " WHERE c.rig_id = s.rig_id ORDER BY c.happened_at DESC, c.id DESC LIMIT 1), 0) AS full_check_due"
                + " FROM rig_standing s WHERE s.rig_id IN (SELECT value FROM json_each(?2))",
            today,
            rigs.stream()
                .map(rig -> Long.toString(rig.value()))
                .collect(Collectors.joining(",", "[", "]")))
        .stream()
        .collect(Collectors.toMap(Stands::rig, Function.identity()));
  }

  long looksSinceFullCheck(RigId rig) {
    return rows.number(
        """
        SELECT count(*) FROM bow_check c WHERE c.rig_id = ?1 AND c.kind = 'LOOK'
           AND c.id NOT IN (SELECT check_id FROM undone_look) AND c.happened_at >
          max(coalesce((SELECT max(f.happened_at) FROM bow_check f WHERE f.rig_id = ?1 AND f.kind = 'CHECK' AND f.released_at IS NOT NULL), ''),
              coalesce((SELECT max(u.finished_at) FROM set_up u WHERE u.rig_id = ?1), ''))\
        """,
        rig);
  }

  /** Parts, and what goes beside a rig in this loan, still out. */
  List<ItemId> partsOf(RigId rig) {
    return rows
        .list(
            ItemOnly.class,
            "SELECT item_id FROM fitting WHERE rig_id = ?1 AND until_at IS NULL ORDER BY id",
            rig)
        .stream()
        .map(ItemOnly::item)
        .toList();
  }

  private record ItemOnly(ItemId item) {}

  List<Row> page(int page, int size) {
    return rows.list(
        Row.class,
        """
        SELECT l.id, l.leader, l.issued_at, l.due_on,
               (SELECT count(DISTINCT x.rig_id) FROM loan_line x WHERE x.loan_id = l.id) AS rigs,
               (SELECT count(DISTINCT x.rig_id) FROM loan_line x WHERE x.loan_id = l.id AND x.back_at IS NULL) AS rigs_out,
               (SELECT count(*) FROM loan_line x WHERE x.loan_id = l.id AND x.rig_id IS NULL AND x.back_at IS NULL) AS beside_out,
               (SELECT coalesce(sum(x.missing_count), 0) FROM loan_line x WHERE x.loan_id = l.id) AS arrows_missing
          FROM loan l WHERE l.kind = 'SESSION' ORDER BY l.issued_at DESC, l.id DESC LIMIT ?1 OFFSET ?2\
        """,
        size,
        (page - 1) * size);
  }

  long count() {
    return rows.number("SELECT count(*) FROM loan WHERE kind = 'SESSION'");
  }
}
