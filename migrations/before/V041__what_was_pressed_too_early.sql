-- What was pressed too early is undone: told as a correction, and nothing is deleted. A move is one press that moved
-- things: back from a loan, from one thing to another, or back into use. Its rows stay as they were pressed; what they
-- said of the world is taken back when it is undone.
CREATE TABLE move (
  id        INTEGER PRIMARY KEY,
  kind      TEXT    NOT NULL CHECK (kind IN ('RECEIPT', 'SESSION_RETURN', 'EXCHANGE', 'PUT_BACK')),
  loan_id   INTEGER REFERENCES loan (id),
  check_id  INTEGER REFERENCES bow_check (id),
  made_at   TEXT    NOT NULL,  -- the clock as the press had written everything: what is recorded later came since
  made_by   INTEGER NOT NULL REFERENCES account (id),
  undone_at TEXT    CHECK (undone_at IS NULL OR undone_at >= made_at),
  undone_by INTEGER REFERENCES account (id),
  CHECK ((kind = 'PUT_BACK') = (check_id IS NOT NULL)),
  CHECK ((kind = 'PUT_BACK') = (loan_id IS NULL)),
  CHECK ((undone_at IS NULL) = (undone_by IS NULL))
) STRICT;
CREATE INDEX move_of_loan ON move (loan_id);
CREATE INDEX move_of_check ON move (check_id);
CREATE INDEX move_undone ON move (id) WHERE undone_at IS NOT NULL;

-- What one press wrote: a receipt, a line that came IN or went OUT by it, or the look of a session's return.
CREATE TABLE moved (
  id         INTEGER PRIMARY KEY,
  move_id    INTEGER NOT NULL REFERENCES move (id),
  receipt_id INTEGER REFERENCES receipt (id),
  line_id    INTEGER REFERENCES loan_line (id),
  went       TEXT    CHECK (went IN ('IN', 'OUT')),
  kept_with  INTEGER REFERENCES rig (id),  -- a part that was kept with a rig before it went on one
  check_id   INTEGER REFERENCES bow_check (id),
  CHECK ((receipt_id IS NOT NULL) + (line_id IS NOT NULL) + (check_id IS NOT NULL) = 1),
  CHECK ((line_id IS NULL) = (went IS NULL)),
  CHECK (kept_with IS NULL OR (went IS NOT NULL AND went = 'OUT'))
) STRICT;
CREATE INDEX moved_of_move ON moved (move_id);
CREATE INDEX moved_line ON moved (line_id) WHERE line_id IS NOT NULL;

-- A look that nobody took, since the bow had not come back.
CREATE VIEW undone_look AS
SELECT d.check_id FROM move m JOIN moved d ON d.move_id = m.id
 WHERE m.undone_at IS NOT NULL AND d.check_id IS NOT NULL;

-- A line of a thing that never went out.
CREATE VIEW undone_line AS
SELECT d.line_id FROM move m JOIN moved d ON d.move_id = m.id
 WHERE m.undone_at IS NOT NULL AND d.went = 'OUT';

CREATE TRIGGER move_is_undone_once BEFORE UPDATE ON move
WHEN old.undone_at IS NOT NULL OR new.id <> old.id OR new.kind <> old.kind OR new.loan_id IS NOT old.loan_id
  OR new.check_id IS NOT old.check_id OR new.made_at <> old.made_at OR new.made_by <> old.made_by
BEGIN
  SELECT RAISE(ABORT, 'undone-once');
END;
CREATE TRIGGER move_is_never_deleted BEFORE DELETE ON move
BEGIN
  SELECT RAISE(ABORT, 'a-press-is-never-deleted');
END;
CREATE TRIGGER moved_is_never_changed BEFORE UPDATE ON moved
BEGIN
  SELECT RAISE(ABORT, 'a-press-is-never-changed');
END;
CREATE TRIGGER moved_is_never_deleted BEFORE DELETE ON moved
BEGIN
  SELECT RAISE(ABORT, 'a-press-is-never-deleted');
END;
CREATE TRIGGER moved_tells_of_a_press_that_stands BEFORE INSERT ON moved
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  SELECT RAISE(ABORT, 'a-press-is-never-changed') FROM move WHERE id = new.move_id AND undone_at IS NOT NULL;
END;

-- Nothing goes out again without a new issue, but by an undo of the press that took it in; and not by that where it
-- would be a leaving: it was lent, withdrawn, or told of since, or whoever had it is forgotten.
CREATE TRIGGER loan_line_reopens_by_an_undo BEFORE UPDATE OF back_at ON loan_line
WHEN old.back_at IS NOT NULL AND new.back_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'reopened-without-an-undo') WHERE NOT EXISTS (
    SELECT 1 FROM moved d JOIN move m ON m.id = d.move_id
     WHERE d.line_id = new.id AND d.went = 'IN' AND m.undone_at IS NOT NULL);
  SELECT RAISE(ABORT, 'undone-though-lent-since') FROM loan_line o
   WHERE o.item_id = new.item_id AND o.id <> new.id AND new.arrow_count IS NULL AND o.out_at >= old.back_at
     AND o.id NOT IN (SELECT line_id FROM undone_line);
  SELECT RAISE(ABORT, 'undone-though-kept-in-since') FROM moved d JOIN move m ON m.id = d.move_id
   WHERE d.line_id = new.id AND d.went = 'IN' AND m.undone_at IS NOT NULL
     AND m.id = (SELECT max(e.move_id) FROM moved e WHERE e.line_id = new.id AND e.went = 'IN')
     AND (EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = new.item_id AND w.released_at IS NULL AND w.recorded_at > m.made_at)
       OR EXISTS (SELECT 1 FROM report r JOIN report_part p ON p.report_id = r.id
                   WHERE p.item_id = new.item_id AND r.answer IS NULL AND r.dangerous = 1 AND r.recorded_at > m.made_at));
  SELECT RAISE(ABORT, 'lent-item-is-retired') FROM item WHERE id = new.item_id AND retired_on IS NOT NULL;
  SELECT RAISE(ABORT, 'lent-part-is-not-fitted-to-that-rig') WHERE new.rig_id IS NOT NULL
     AND NOT EXISTS (SELECT 1 FROM fitting WHERE rig_id = new.rig_id AND item_id = new.item_id AND until_at IS NULL);
  SELECT RAISE(ABORT, 'lent-pool-has-too-few-arrows') FROM kit_item k
   WHERE k.id = new.item_id AND k.pool = 1 AND k.arrow_count < coalesce(new.arrow_count, 0)
      + coalesce((SELECT sum(arrow_count) FROM loan_line WHERE item_id = k.id AND back_at IS NULL), 0);
  SELECT RAISE(ABORT, 'borrower-is-forgotten') FROM loan l JOIN borrower b ON b.id = l.borrower_id
   WHERE l.id = new.loan_id AND b.erased_on IS NOT NULL;
END;

CREATE TRIGGER fitting_reopens_by_an_undo BEFORE UPDATE OF until_at ON fitting
WHEN old.until_at IS NOT NULL AND new.until_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'reopened-without-an-undo') WHERE NOT EXISTS (
    SELECT 1 FROM loan_line l JOIN moved d ON d.line_id = l.id JOIN move m ON m.id = d.move_id
     WHERE l.item_id = new.item_id AND l.rig_id = new.rig_id AND d.went = 'IN' AND m.kind = 'EXCHANGE'
       AND m.undone_at IS NOT NULL);
  SELECT RAISE(ABORT, 'fitted-part-is-retired') FROM item WHERE id = new.item_id AND retired_on IS NOT NULL;
  SELECT RAISE(ABORT, 'fitted-part-is-withdrawn') FROM withdrawal WHERE item_id = new.item_id AND released_at IS NULL;
  SELECT RAISE(ABORT, 'rig-is-dissolved') FROM rig WHERE id = new.rig_id AND dissolved_at IS NOT NULL;
END;

CREATE TRIGGER put_back_is_taken_back_by_an_undo BEFORE UPDATE OF released_at ON bow_check
WHEN old.released_at IS NOT NULL AND new.released_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'reopened-without-an-undo') WHERE NOT EXISTS (
    SELECT 1 FROM move m WHERE m.check_id = new.id AND m.undone_at IS NOT NULL
    UNION ALL SELECT 1 FROM undone_look u WHERE u.check_id = new.id);
  SELECT RAISE(ABORT, 'rig-is-on-loan') FROM move m JOIN loan_line l ON l.rig_id = new.rig_id AND l.back_at IS NULL
   WHERE m.check_id = new.id;
END;
