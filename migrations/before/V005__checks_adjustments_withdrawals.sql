-- A check (with measurements) or a look (without). Never changed once saved but for its release, which
-- is the person's own press; a correction is a new check that names the one it corrects.
CREATE TABLE bow_check (
  id             INTEGER PRIMARY KEY,
  rig_id         INTEGER NOT NULL REFERENCES rig (id),
  kind           TEXT    NOT NULL CHECK (kind IN ('CHECK', 'LOOK')),
  happened_at    TEXT    NOT NULL,
  recorded_at    TEXT    NOT NULL,
  checked_by     INTEGER NOT NULL REFERENCES account (id),
  set_up_id      INTEGER REFERENCES set_up (id),
  all_as_listed  INTEGER NOT NULL CHECK (all_as_listed IN (0, 1)),
  brace          INTEGER CHECK (brace BETWEEN 10000000 AND 30000000),
  brace_typed    TEXT,
  brace_from     TEXT    CHECK (brace_from IN ('GRIP_THROAT', 'BUTTON')),
  tiller_upper   INTEGER CHECK (tiller_upper BETWEEN 8000000 AND 35000000),
  upper_typed    TEXT,
  tiller_lower   INTEGER CHECK (tiller_lower BETWEEN 8000000 AND 35000000),
  lower_typed    TEXT,
  dry_loose_or_fall INTEGER NOT NULL DEFAULT 0 CHECK (dry_loose_or_fall IN (0, 1)),
  came_back_strung  INTEGER NOT NULL DEFAULT 0 CHECK (came_back_strung IN (0, 1)),
  verdict        TEXT    NOT NULL CHECK (verdict IN ('FIT', 'ADJUST', 'WITHDRAW')),
  verdict_text   TEXT    NOT NULL,
  corrects_id    INTEGER REFERENCES bow_check (id),
  correction_why TEXT,
  released_at    TEXT,
  released_by    INTEGER REFERENCES account (id),
  -- Nobody strings a cracked bow, or one with parts missing, to measure it.
  CHECK (kind = 'LOOK' OR verdict <> 'FIT' OR (brace IS NOT NULL AND brace_from IS NOT NULL AND tiller_upper IS NOT NULL AND tiller_lower IS NOT NULL)),
  CHECK (released_at IS NULL OR (verdict = 'FIT' AND released_by IS NOT NULL)),
  CHECK (corrects_id IS NULL OR correction_why IS NOT NULL)
) STRICT;
CREATE INDEX bow_check_of_rig ON bow_check (rig_id, happened_at);
CREATE INDEX bow_check_put_back ON bow_check (rig_id, happened_at) WHERE released_at IS NOT NULL;

CREATE TABLE check_sign (
  id       INTEGER PRIMARY KEY,
  check_id INTEGER NOT NULL REFERENCES bow_check (id),
  part     TEXT    NOT NULL,
  gravity  TEXT    NOT NULL CHECK (gravity IN ('FINE', 'NOTE', 'STOP')),
  words    TEXT    NOT NULL
) STRICT;
CREATE INDEX check_sign_of_check ON check_sign (check_id);

-- What was done at the bench between two readings, and what it did: the mechanics learn from the pair.
CREATE TABLE adjustment (
  id           INTEGER PRIMARY KEY,
  rig_id       INTEGER NOT NULL REFERENCES rig (id),
  check_id     INTEGER REFERENCES bow_check (id),
  after_id     INTEGER REFERENCES bow_check (id),
  happened_at  TEXT    NOT NULL,
  recorded_at  TEXT    NOT NULL,
  done_by      INTEGER NOT NULL REFERENCES account (id),
  twists_added INTEGER CHECK (twists_added BETWEEN -100 AND 100),
  upper_in     REAL    CHECK (upper_in BETWEEN -4 AND 4),
  lower_in     REAL    CHECK (lower_in BETWEEN -4 AND 4),
  words        TEXT
) STRICT;
CREATE INDEX adjustment_of_rig ON adjustment (rig_id, happened_at);

-- A withdrawal is always of one part; a rig is withdrawn when a part fitted to it is.
CREATE TABLE withdrawal (
  id           INTEGER PRIMARY KEY,
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
  CHECK ((released_at IS NULL) = (released_by IS NULL)),
  CHECK (released_at IS NULL OR length(release_why) > 0)
) STRICT;
CREATE UNIQUE INDEX withdrawal_one_open_per_item ON withdrawal (item_id) WHERE released_at IS NULL;
CREATE INDEX withdrawal_of_item ON withdrawal (item_id, happened_at);
