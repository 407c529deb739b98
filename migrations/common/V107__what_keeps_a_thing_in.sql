-- A withdrawal is always of one part; a rig is withdrawn when a part fitted to it is.
CREATE TABLE withdrawal (
  id           ${key},
  item_id      INTEGER NOT NULL REFERENCES item (id),
  happened_at  TEXT    NOT NULL,
  recorded_at  TEXT    NOT NULL,
  withdrawn_by INTEGER NOT NULL REFERENCES account (id),
  why          TEXT    NOT NULL CHECK (length(why) > 0),
  work         TEXT,
  check_id     INTEGER REFERENCES bow_check (id),
  released_at  TEXT    CHECK (released_at IS NULL OR released_at >= happened_at),
  released_by  INTEGER REFERENCES account (id),
  release_why  TEXT,
  -- What it needs is decided before it is released: a work, or that no inspection fits and why.
  decided_by   INTEGER REFERENCES account (id),
  decided_at   TEXT    CHECK ((decided_at IS NULL) = (decided_by IS NULL)) CHECK (decided_at IS NULL OR decided_at >= happened_at),
  no_work_why  TEXT    CHECK (no_work_why IS NULL OR (work IS NULL AND decided_at IS NOT NULL AND length(no_work_why) > 0)),
  -- What was looked at before the release, and by whom: a person of the club, or someone by name.
  looked_at    TEXT    CHECK (looked_at IS NULL OR (released_at IS NOT NULL AND length(looked_at) > 0)),
  looked_by    INTEGER REFERENCES account (id),
  looked_by_name TEXT  CHECK (looked_by_name IS NULL OR (looked_by IS NULL AND length(looked_by_name) > 0)),
  CHECK ((released_at IS NULL) = (released_by IS NULL)),
  CHECK (released_at IS NULL OR length(release_why) > 0)
) ${strict};
CREATE UNIQUE INDEX withdrawal_one_open_per_item ON withdrawal (item_id) WHERE released_at IS NULL;
CREATE INDEX withdrawal_of_item ON withdrawal (item_id, happened_at);

-- What somebody told of a bow or of a thing beside it. It stands against each of its report_part until it is answered.
CREATE TABLE report (
  id           ${key},
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
) ${strict};
CREATE INDEX report_open ON report (rig_id) WHERE answer IS NULL;
CREATE INDEX report_of_loan ON report (loan_id);

CREATE TABLE report_sign (
  id        ${key},
  report_id INTEGER NOT NULL REFERENCES report (id),
  sign      TEXT    NOT NULL,
  UNIQUE (report_id, sign)
) ${strict};

-- The part that was named, or, where nobody knows which, every part that the bow had then: they may go separate ways.
CREATE TABLE report_part (
  id        ${key},
  report_id INTEGER NOT NULL REFERENCES report (id),
  item_id   INTEGER NOT NULL REFERENCES item (id),
  UNIQUE (report_id, item_id)
) ${strict};
CREATE INDEX report_part_of_item ON report_part (item_id);

-- After an accident, what was in somebody's hands stays as it was until an officer says that nobody has to look at it any
-- more. The things themselves are withdrawn besides; a withdrawal that was open before stands.
CREATE TABLE accident (
  id          ${key},
  loan_id     INTEGER REFERENCES loan (id),
  rig_id      INTEGER REFERENCES rig (id),
  happened_at TEXT    NOT NULL,
  recorded_at TEXT    NOT NULL,
  told_by     INTEGER NOT NULL REFERENCES account (id),
  words       TEXT    NOT NULL CHECK (length(words) > 0),
  ended_at    TEXT    CHECK (ended_at >= recorded_at),
  ended_by    INTEGER REFERENCES account (id),
  end_why     TEXT,
  CHECK (loan_id IS NOT NULL OR rig_id IS NOT NULL),
  CHECK ((ended_at IS NULL) = (ended_by IS NULL) AND (ended_at IS NULL) = (end_why IS NULL)),
  CHECK (end_why IS NULL OR length(end_why) > 0)
) ${strict};
CREATE INDEX accident_of_loan ON accident (loan_id);
CREATE INDEX accident_of_rig ON accident (rig_id);

-- What was in hand. Arrows given out of a pool by count have no withdrawal: the pool is not what was shot, and the six of
-- them are laid aside by hand. Neither has what was off the register before the accident was told.
CREATE TABLE accident_item (
  id            ${key},
  accident_id   INTEGER NOT NULL REFERENCES accident (id),
  item_id       INTEGER NOT NULL REFERENCES item (id),
  rig_id        INTEGER REFERENCES rig (id),
  arrow_count   INTEGER CHECK (arrow_count > 0),
  withdrawal_id INTEGER REFERENCES withdrawal (id),
  UNIQUE (accident_id, item_id)
) ${strict};
CREATE INDEX accident_item_of_item ON accident_item (item_id);
