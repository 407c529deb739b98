-- Rules that cross tables. The name in RAISE is what the message to the person is made from.

CREATE TRIGGER fitting_refuses_retired_or_withdrawn BEFORE INSERT ON fitting WHEN new.until_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'fitted-part-is-retired') FROM item WHERE id = new.item_id AND retired_on IS NOT NULL;
  SELECT RAISE(ABORT, 'fitted-part-is-withdrawn') FROM withdrawal WHERE item_id = new.item_id AND released_at IS NULL;
  SELECT RAISE(ABORT, 'fitted-part-has-wrong-place') FROM item
   WHERE id = new.item_id
     AND NOT ((new.place = 'BODY' AND kind IN ('RISER', 'BOW')) OR (new.place = 'LIMBS' AND kind = 'LIMBS') OR (new.place = 'STRING' AND kind = 'STRING'));
  SELECT RAISE(ABORT, 'one-piece-bow-takes-no-limbs') FROM fitting f JOIN item i ON i.id = f.item_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL
     AND ((new.place = 'LIMBS' AND i.kind = 'BOW')
       OR (f.place = 'LIMBS' AND (SELECT kind FROM item WHERE id = new.item_id) = 'BOW'));
  SELECT RAISE(ABORT, 'rig-is-dissolved') FROM rig WHERE id = new.rig_id AND dissolved_at IS NOT NULL;
END;

CREATE TRIGGER rig_on_loan_is_not_dissolved BEFORE UPDATE OF dissolved_at ON rig WHEN new.dissolved_at IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'rig-is-on-loan') FROM loan_line l WHERE l.rig_id = new.id AND l.back_at IS NULL;
  SELECT RAISE(ABORT, 'rig-still-has-parts') FROM fitting f WHERE f.rig_id = new.id AND f.until_at IS NULL;
END;

CREATE TRIGGER item_retires_only_when_free BEFORE UPDATE OF retired_on ON item
WHEN new.retired_on IS NOT NULL AND old.retired_on IS NULL
BEGIN
  SELECT RAISE(ABORT, 'retired-item-is-fitted') FROM fitting WHERE item_id = new.id AND until_at IS NULL;
  SELECT RAISE(ABORT, 'retired-item-is-on-loan') FROM loan_line WHERE item_id = new.id AND back_at IS NULL;
END;

CREATE TRIGGER item_kind_is_fixed BEFORE UPDATE OF kind, code ON item WHEN new.kind <> old.kind OR new.code <> old.code
BEGIN
  SELECT RAISE(ABORT, 'item-code-and-kind-are-fixed');
END;

-- Whoever buys or is given a thing knows nothing of what stands against it here.
CREATE TRIGGER withdrawn_item_is_not_sold BEFORE UPDATE OF retired_on ON item
WHEN new.retired_on IS NOT NULL AND old.retired_on IS NULL AND new.retired_why = 'SOLD'
BEGIN
  SELECT RAISE(ABORT, 'sold-item-is-withdrawn') FROM withdrawal w WHERE w.item_id = new.id AND w.released_at IS NULL;
END;

CREATE TRIGGER loan_line_refuses_unfit BEFORE INSERT ON loan_line WHEN new.back_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'lent-item-is-retired') FROM item WHERE id = new.item_id AND retired_on IS NOT NULL;
  SELECT RAISE(ABORT, 'lent-item-is-withdrawn') FROM withdrawal WHERE item_id = new.item_id AND released_at IS NULL;
  SELECT RAISE(ABORT, 'lent-part-is-not-fitted-to-that-rig') WHERE new.rig_id IS NOT NULL
     AND NOT EXISTS (SELECT 1 FROM fitting WHERE rig_id = new.rig_id AND item_id = new.item_id AND until_at IS NULL);
  SELECT RAISE(ABORT, 'lent-rig-has-a-withdrawn-part') FROM fitting f JOIN withdrawal w ON w.item_id = f.item_id AND w.released_at IS NULL
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL;
  SELECT RAISE(ABORT, 'lent-rig-has-no-complete-set-up') WHERE new.rig_id IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM set_up s WHERE s.rig_id = new.rig_id AND s.finished_at IS NOT NULL);
  SELECT RAISE(ABORT, 'lent-pool-has-too-few-arrows') FROM kit_item k
   WHERE k.id = new.item_id AND k.pool = 1 AND k.arrow_count < coalesce(new.arrow_count, 0)
      + coalesce((SELECT sum(arrow_count) FROM loan_line WHERE item_id = k.id AND back_at IS NULL), 0);
  SELECT RAISE(ABORT, 'pool-is-lent-by-count') FROM kit_item k
   WHERE k.id = new.item_id AND (k.pool = 1) <> (new.arrow_count IS NOT NULL);
END;

-- Nothing leaves while something blocks it. Of a day that is past, typed in late, that day counts.
CREATE TRIGGER loan_line_refuses_blocked BEFORE INSERT ON loan_line
WHEN new.back_at IS NULL AND NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  SELECT RAISE(ABORT, 'lent-item-is-blocked') FROM item_blocked b
   WHERE b.item_id = new.item_id
     AND b.blocked_from < date(new.out_at, coalesce((SELECT o.ahead_s FROM clock_offset o
           WHERE o.from_at <= new.out_at ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds');
END;

-- History that comes in from a file is inserted as it was; a release from now on is a change of an open row.
CREATE TRIGGER withdrawal_released_once_seen BEFORE UPDATE OF released_at ON withdrawal
WHEN new.released_at IS NOT NULL AND old.released_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'released-before-decided') WHERE new.work IS NULL AND new.no_work_why IS NULL;
  SELECT RAISE(ABORT, 'released-before-looked-at')
   WHERE new.looked_at IS NULL OR (new.looked_by IS NULL AND new.looked_by_name IS NULL);
  -- What was asked for is passed since it was asked for.
  SELECT RAISE(ABORT, 'released-before-passed')
   WHERE new.work IS NOT NULL AND NOT EXISTS (
     SELECT 1 FROM upkeep_record u
      WHERE u.item_id = new.item_id AND u.work = new.work AND u.result = 'PASSED'
        AND u.happened_at >= coalesce(new.decided_at, new.happened_at));
  -- And nothing that was failed waits for its pass.
  SELECT RAISE(ABORT, 'released-though-failed') FROM upkeep_record u
   WHERE u.item_id = new.item_id AND u.result = 'FAILED'
     AND NOT EXISTS (SELECT 1 FROM upkeep_record p
                      WHERE p.item_id = u.item_id AND p.work = u.work AND p.result = 'PASSED'
                        AND (p.happened_at, p.id) > (u.happened_at, u.id));
END;

-- What was told of a bow stands until a person answers it, and an answer stands too: no later check forgets either.
CREATE TRIGGER report_stays_answered BEFORE UPDATE OF answer ON report
WHEN old.answer IS NOT NULL AND new.answer IS NOT old.answer
BEGIN
  SELECT RAISE(ABORT, 'report-is-answered');
END;

-- A person's release of a check, while something told of a part of its bow is open.
CREATE TRIGGER bow_check_not_released_unanswered BEFORE UPDATE OF released_at ON bow_check
WHEN old.released_at IS NULL AND new.released_at IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'released-bow-has-an-open-report')
    FROM fitting f JOIN report_part p ON p.item_id = f.item_id JOIN report r ON r.id = p.report_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND r.answer IS NULL;
END;
