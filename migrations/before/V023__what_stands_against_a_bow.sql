-- What stands against a bow. A rule may say how far beyond its interval a thing may go before it stays in; work
-- that was asked for says why; what somebody told of a bow is a fact of its own, open until a person answers it.

-- Null: being overdue never keeps the thing in by itself. A quarter of the interval is judged, and the club's to change.
ALTER TABLE upkeep_rule ADD COLUMN beyond_percent INTEGER CHECK (beyond_percent BETWEEN 0 AND 400);

-- What led to the work: a person asked, readings change by more than readers differ, someone reported something, the
-- thing was found again after it had been given up, or it was withdrawn.
ALTER TABLE upkeep_task ADD COLUMN cause TEXT NOT NULL DEFAULT 'ASKED'
  CHECK (cause IN ('ASKED', 'CHANGING', 'REPORTED', 'FOUND_AGAIN', 'WITHDRAWN'));
UPDATE upkeep_task SET cause = 'CHANGING' WHERE why LIKE 'Its readings change by more than readers differ.%';

CREATE INDEX upkeep_record_failed ON upkeep_record (item_id, work, happened_at) WHERE result = 'FAILED';

-- What somebody told of a bow or of a thing beside it. It stands against each of its report_part until it is answered.
CREATE TABLE report (
  id           INTEGER PRIMARY KEY,
  rig_id       INTEGER REFERENCES rig (id),
  loan_id      INTEGER REFERENCES loan (id),
  receipt_id   INTEGER REFERENCES receipt (id),
  told_at      TEXT    NOT NULL CHECK (told_at IN ('RECEIVING', 'SESSION', 'LOAN', 'BOW', 'CHECK')),
  happened_at  TEXT    NOT NULL,
  recorded_at  TEXT    NOT NULL,
  told_to      INTEGER NOT NULL REFERENCES account (id),
  part_known   INTEGER NOT NULL CHECK (part_known IN (0, 1)),
  dangerous    INTEGER NOT NULL CHECK (dangerous IN (0, 1)),
  words        TEXT,
  answer       TEXT    CHECK (answer IN ('NOTHING_THERE', 'STOP', 'WATCH')),
  answered_at  TEXT    CHECK (answered_at >= happened_at),
  answered_by  INTEGER REFERENCES account (id),
  answer_words TEXT,
  watch_until  TEXT,
  check_id     INTEGER REFERENCES bow_check (id),
  record_id    INTEGER REFERENCES upkeep_record (id),
  CHECK ((answer IS NULL) = (answered_at IS NULL) AND (answer IS NULL) = (answered_by IS NULL)),
  CHECK ((answer IS NOT NULL AND answer = 'WATCH') = (watch_until IS NOT NULL)),
  CHECK (answer IS NULL OR length(answer_words) > 0)
) STRICT;
CREATE INDEX report_open ON report (rig_id) WHERE answer IS NULL;
CREATE INDEX report_of_loan ON report (loan_id);

CREATE TABLE report_sign (
  id        INTEGER PRIMARY KEY,
  report_id INTEGER NOT NULL REFERENCES report (id),
  sign      TEXT    NOT NULL,
  UNIQUE (report_id, sign)
) STRICT;

-- The part that was named, or, where nobody knows which, every part that the bow had then: they may go separate ways.
CREATE TABLE report_part (
  id        INTEGER PRIMARY KEY,
  report_id INTEGER NOT NULL REFERENCES report (id),
  item_id   INTEGER NOT NULL REFERENCES item (id),
  UNIQUE (report_id, item_id)
) STRICT;
CREATE INDEX report_part_of_item ON report_part (item_id);

-- Kept from the view beside the day: from the day after this one, the thing stays in.
ALTER TABLE upkeep_plan ADD COLUMN beyond_on TEXT;

DROP TRIGGER plan_after_item_insert;
CREATE TRIGGER plan_after_item_insert AFTER INSERT ON item
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_item_update;
CREATE TRIGGER plan_after_item_update AFTER UPDATE OF bought_on, registered_on, retired_on ON item
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_riser_insert;
CREATE TRIGGER plan_after_riser_insert AFTER INSERT ON riser
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_riser_update;
CREATE TRIGGER plan_after_riser_update AFTER UPDATE OF build ON riser
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_limbs_insert;
CREATE TRIGGER plan_after_limbs_insert AFTER INSERT ON limbs
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_limbs_update;
CREATE TRIGGER plan_after_limbs_update AFTER UPDATE OF build ON limbs
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_bowstring_insert;
CREATE TRIGGER plan_after_bowstring_insert AFTER INSERT ON bowstring
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_bowstring_update;
CREATE TRIGGER plan_after_bowstring_update AFTER UPDATE OF material, first_used ON bowstring
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_upkeep_record_insert;
CREATE TRIGGER plan_after_upkeep_record_insert AFTER INSERT ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

DROP TRIGGER plan_after_upkeep_record_update;
CREATE TRIGGER plan_after_upkeep_record_update AFTER UPDATE OF item_id, work, happened_at, result ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id IN (old.item_id, new.item_id);
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id IN (old.item_id, new.item_id);
END;

DROP TRIGGER plan_after_upkeep_record_delete;
CREATE TRIGGER plan_after_upkeep_record_delete AFTER DELETE ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = old.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = old.item_id;
END;

DROP TRIGGER plan_after_loan_line_insert;
CREATE TRIGGER plan_after_loan_line_insert AFTER INSERT ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

DROP TRIGGER plan_after_loan_line_update;
CREATE TRIGGER plan_after_loan_line_update AFTER UPDATE OF item_id, out_at, back_at, shots ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id IN (old.item_id, new.item_id);
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id IN (old.item_id, new.item_id);
END;

DROP TRIGGER plan_after_loan_line_delete;
CREATE TRIGGER plan_after_loan_line_delete AFTER DELETE ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = old.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = old.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = old.item_id;
END;

DROP TRIGGER plan_after_upkeep_rule_insert;
CREATE TRIGGER plan_after_upkeep_rule_insert AFTER INSERT ON upkeep_rule
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE rule_id = new.id;
END;

-- No view to reckon by is there before the last script of a first start: nothing may fire here.
DROP TRIGGER plan_after_upkeep_rule_update;
UPDATE upkeep_rule SET beyond_percent = 25 WHERE work = 'STRING_REPLACEMENT';
CREATE TRIGGER plan_after_upkeep_rule_update AFTER UPDATE OF item_kind, build, material, work, every_days, every_loans, every_shots, beyond_percent ON upkeep_rule
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE rule_id = new.id;
END;

-- A row while a file is taken in: its loans come before the inspections that let them go, so that what left is judged
-- once all of it is in, by the import.
CREATE TABLE taking_in (
  id INTEGER PRIMARY KEY CHECK (id = 1)
) STRICT;

-- Nothing leaves while something blocks it. Of a day that is past, typed in late, that day counts.
CREATE TRIGGER loan_line_refuses_blocked BEFORE INSERT ON loan_line
WHEN new.back_at IS NULL AND NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  SELECT RAISE(ABORT, 'lent-item-is-blocked') FROM item_blocked b
   WHERE b.item_id = new.item_id
     AND b.blocked_from < date(new.out_at, coalesce((SELECT o.ahead_s FROM clock_offset o
           WHERE o.from_at <= new.out_at ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds');
END;
