CREATE TABLE borrower (
  id        INTEGER PRIMARY KEY,
  name      TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  contact   TEXT NOT NULL CHECK (length(contact) BETWEEN 1 AND 200),
  member_no TEXT,
  age_band  TEXT NOT NULL CHECK (age_band IN ('UP_TO_12', 'FROM_13_TO_14', 'FROM_15_TO_16', 'FROM_17_TO_18', 'ADULT')),
  guardian  TEXT,
  erased_on TEXT,  -- since then only a number
  version   INTEGER NOT NULL DEFAULT 0,
  CHECK (age_band = 'ADULT' OR guardian IS NOT NULL)
) STRICT;
CREATE INDEX borrower_name ON borrower (name COLLATE NOCASE);

-- A kit lent to a borrower, or a session: rigs lent to a leader until tonight.
CREATE TABLE loan (
  id             INTEGER PRIMARY KEY,
  kind           TEXT    NOT NULL CHECK (kind IN ('KIT', 'SESSION')),
  borrower_id    INTEGER REFERENCES borrower (id),
  leader         TEXT,
  issued_at      TEXT    NOT NULL,
  due_on         TEXT    NOT NULL,
  issued_by      INTEGER NOT NULL REFERENCES account (id),
  recorded_at    TEXT    NOT NULL,
  hand           TEXT    CHECK (hand IN ('RIGHT', 'LEFT')),
  draw_length    INTEGER CHECK (draw_length BETWEEN 35000000 AND 92000000),
  draw_estimated INTEGER NOT NULL DEFAULT 0 CHECK (draw_estimated IN (0, 1)),
  experience     TEXT    CHECK (experience IN ('BEGINNER', 'IMPROVER', 'EXPERIENCED')),
  override_why   TEXT,
  deposit_minor  INTEGER NOT NULL DEFAULT 0 CHECK (deposit_minor >= 0),
  deposit_how    TEXT    CHECK (deposit_how IN ('CASH', 'CARD', 'TRANSFER', 'OTHER')),
  deposit_back_minor INTEGER CHECK (deposit_back_minor BETWEEN 0 AND deposit_minor),
  deposit_kept_why   TEXT,
  terms_accepted INTEGER NOT NULL DEFAULT 0 CHECK (terms_accepted IN (0, 1)),
  version        INTEGER NOT NULL DEFAULT 0,
  -- a day is the club's own, a moment is in UTC: west of it the evening's moments bear the next day's date
  CHECK (due_on >= date(issued_at, '-12 hours') OR kind = 'SESSION'),
  CHECK (kind <> 'KIT' OR (borrower_id IS NOT NULL AND terms_accepted = 1)),
  CHECK (kind <> 'SESSION' OR leader IS NOT NULL),
  CHECK (deposit_minor = 0 OR deposit_how IS NOT NULL)
) STRICT;
CREATE INDEX loan_of_borrower ON loan (borrower_id);

CREATE TABLE receipt (
  id             INTEGER PRIMARY KEY,
  loan_id        INTEGER NOT NULL REFERENCES loan (id),
  happened_at    TEXT    NOT NULL,
  recorded_at    TEXT    NOT NULL,
  received_by    INTEGER NOT NULL REFERENCES account (id),
  dry_loose_or_fall INTEGER NOT NULL DEFAULT 0 CHECK (dry_loose_or_fall IN (0, 1)),
  came_back_strung  INTEGER NOT NULL DEFAULT 0 CHECK (came_back_strung IN (0, 1)),
  words          TEXT
) STRICT;
CREATE INDEX receipt_of_loan ON receipt (loan_id);

-- Each line comes back by itself. A rig's parts are lines of their own that name the rig.
CREATE TABLE loan_line (
  id          INTEGER PRIMARY KEY,
  loan_id     INTEGER NOT NULL REFERENCES loan (id),
  item_id     INTEGER NOT NULL REFERENCES item (id),
  rig_id      INTEGER REFERENCES rig (id),
  out_at      TEXT    NOT NULL,
  arrow_count INTEGER CHECK (arrow_count > 0),
  back_at     TEXT    CHECK (back_at IS NULL OR back_at >= out_at),
  receipt_id  INTEGER REFERENCES receipt (id),
  outcome     TEXT    CHECK (outcome IN ('BACK', 'DAMAGED', 'LOST', 'CHANGED')),
  back_count  INTEGER CHECK (back_count BETWEEN 0 AND arrow_count),
  shots       INTEGER CHECK (shots >= 0),
  CHECK ((back_at IS NULL) = (outcome IS NULL))
) STRICT;
CREATE UNIQUE INDEX loan_line_one_open_per_item ON loan_line (item_id) WHERE back_at IS NULL AND arrow_count IS NULL;
CREATE INDEX loan_line_of_loan ON loan_line (loan_id);
CREATE INDEX loan_line_of_item ON loan_line (item_id, out_at);
CREATE INDEX loan_line_shots ON loan_line (item_id, back_at, shots);
CREATE INDEX loan_line_of_rig ON loan_line (rig_id, back_at);
CREATE INDEX loan_line_open ON loan_line (loan_id) WHERE back_at IS NULL;

-- Who shares which rig in a session: no names, only what the arrows' length depends on.
CREATE TABLE session_archer (
  id           INTEGER PRIMARY KEY,
  loan_id      INTEGER NOT NULL REFERENCES loan (id),
  rig_id       INTEGER NOT NULL REFERENCES rig (id),
  draw_length  INTEGER NOT NULL CHECK (draw_length BETWEEN 35000000 AND 92000000),
  arrows_id    INTEGER REFERENCES item (id)
) STRICT;
CREATE INDEX session_archer_of_loan ON session_archer (loan_id);
