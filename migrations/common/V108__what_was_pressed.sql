-- What was pressed too early is undone: told as a correction, and nothing is deleted. A move is one press that moved things:
-- back from a loan, from one thing to another, or back into use. Its rows stay as they were pressed; what they said of the
-- world is taken back when it is undone.
CREATE TABLE move (
  id        ${key},
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
) ${strict};
CREATE INDEX move_of_loan ON move (loan_id);
CREATE INDEX move_of_check ON move (check_id);
CREATE INDEX move_undone ON move (id) WHERE undone_at IS NOT NULL;

-- What one press wrote: a receipt, a line that came IN or went OUT by it, or the look of a session's return.
CREATE TABLE moved (
  id         ${key},
  move_id    INTEGER NOT NULL REFERENCES move (id),
  receipt_id INTEGER REFERENCES receipt (id),
  line_id    INTEGER REFERENCES loan_line (id),
  went       TEXT    CHECK (went IN ('IN', 'OUT')),
  kept_with  INTEGER REFERENCES rig (id),  -- a part that was kept with a rig before it went on one
  check_id   INTEGER REFERENCES bow_check (id),
  CHECK (CASE WHEN receipt_id IS NULL THEN 0 ELSE 1 END + CASE WHEN line_id IS NULL THEN 0 ELSE 1 END
         + CASE WHEN check_id IS NULL THEN 0 ELSE 1 END = 1),
  CHECK ((line_id IS NULL) = (went IS NULL)),
  CHECK (kept_with IS NULL OR (went IS NOT NULL AND went = 'OUT'))
) ${strict};
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

-- A repeated press gets the first answer only where it is the same press: of the same person, at the same call, with the
-- same values. Kept is what was made and not the address of a page, so that pages and programs are answered alike.
CREATE TABLE idempotency_key (
  account_id INTEGER NOT NULL REFERENCES account (id),
  call       TEXT    NOT NULL,
  key        TEXT    NOT NULL CHECK (length(key) BETWEEN 1 AND 200),
  digest     TEXT    NOT NULL CHECK (length(digest) = 64),   -- SHA-256 of what was sent, without the key
  made_kind  TEXT    NOT NULL,
  made_id    INTEGER NOT NULL,
  at         TEXT    NOT NULL,
  PRIMARY KEY (account_id, call, key)
) ${strict};
CREATE INDEX idempotency_key_by_age ON idempotency_key (at);

-- Of a press that makes no one thing (a file taken in, a recall), what it answered: the same press is answered so again.
CREATE TABLE kept_answer (
  id     ${key},
  answer TEXT    NOT NULL CHECK (json_valid(answer)),
  at     TEXT    NOT NULL
) ${strict};

-- A row while a file is taken in: its loans come before the inspections that let them go, so that what left is judged once
-- all of it is in, by the import; and what is due is planned once, at the end.
CREATE TABLE taking_in (
  id INTEGER PRIMARY KEY CHECK (id = 1)
) ${strict};
