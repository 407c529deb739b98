-- A check (with measurements) or a look (without). Never changed once saved but for its release, which is the person's own
-- press; a correction is a new check that names the one it corrects.
CREATE TABLE bow_check (
  id             ${key},
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
  corrects_id    INTEGER REFERENCES bow_check (id),
  correction_why TEXT,
  released_at    TEXT,
  released_by    INTEGER REFERENCES account (id),
  -- Nobody strings a cracked bow, or one with parts missing, to measure it.
  CHECK (kind = 'LOOK' OR verdict <> 'FIT' OR (brace IS NOT NULL AND brace_from IS NOT NULL AND tiller_upper IS NOT NULL AND tiller_lower IS NOT NULL)),
  CHECK (released_at IS NULL OR (verdict = 'FIT' AND released_by IS NOT NULL)),
  CHECK (corrects_id IS NULL OR correction_why IS NOT NULL)
) ${strict};
CREATE INDEX bow_check_of_rig ON bow_check (rig_id, happened_at);
CREATE INDEX bow_check_put_back ON bow_check (rig_id, happened_at) WHERE released_at IS NOT NULL;
CREATE INDEX bow_check_correcting ON bow_check (corrects_id) WHERE corrects_id IS NOT NULL;

-- What a verdict says, one row a thing said: what is said and of what, and of a step what is done, by whom and how much.
-- Words are made of it when it is shown (verdict.Saying), and nothing reads them back. One table and not two, since a step is
-- one more thing said in its place among the others, and a check is saved the most: one statement keeps it all.
CREATE TABLE verdict_line (
  id          ${key},
  check_id    INTEGER NOT NULL REFERENCES bow_check (id),
  place       INTEGER NOT NULL CHECK (place > 0),
  kind        TEXT    NOT NULL CHECK (kind IN ('REASON', 'STEP', 'EXPECTED', 'WORK', 'NOTE', 'BASIS')),
  saying      TEXT    NOT NULL CHECK (length(saying) > 0),
  -- An array of what it is said of: whole numbers (of lengths hundred-thousandths of a millimetre), words, sayings within it.
  said_of     TEXT    NOT NULL CHECK (json_valid(said_of) AND substr(said_of, 1, 1) = '['),
  step        TEXT    CHECK (step IN ('LOOK_ALONG', 'SAME_POINT', 'STRING_OFF', 'ANSWER_TOLD', 'RELEASE', 'PARTS_RIGHT',
                                      'COUNT_TWISTS', 'LOOK_AT_LIMBS', 'TWISTS', 'OTHER_STRING', 'TO_WORKSHOP',
                                      'LOCK_LOOSENED', 'UPPER_BOLT', 'LOWER_BOLT', 'LOCK_TIGHTENED', 'STRING_ON', 'LOOPS',
                                      'STRING_LINE', 'MEASURE_AGAIN')),
  by_whom     TEXT    CHECK (by_whom IN ('VOLUNTEER', 'PERMIT_HOLDER', 'COACH')),
  -- Of a twist put in, of a turn that tightens; negative: taken out, loosened.
  thousandths INTEGER CHECK (thousandths BETWEEN -150000 AND 150000),
  UNIQUE (check_id, place),
  CHECK ((kind = 'STEP') = (step IS NOT NULL)),
  CHECK ((step IS NULL) = (by_whom IS NULL)),
  CHECK (thousandths IS NULL OR (step IS NOT NULL AND step IN ('TWISTS', 'UPPER_BOLT', 'LOWER_BOLT')))
) ${strict};

CREATE TABLE check_sign (
  id       ${key},
  check_id INTEGER NOT NULL REFERENCES bow_check (id),
  part     TEXT    NOT NULL,
  gravity  TEXT    NOT NULL CHECK (gravity IN ('FINE', 'NOTE', 'STOP')),
  words    TEXT    NOT NULL
) ${strict};
CREATE INDEX check_sign_of_check ON check_sign (check_id);

-- What was done at the bench between two readings, and what it did: the mechanics learn from the pair.
CREATE TABLE adjustment (
  id           ${key},
  rig_id       INTEGER NOT NULL REFERENCES rig (id),
  check_id     INTEGER REFERENCES bow_check (id),
  after_id     INTEGER REFERENCES bow_check (id),
  happened_at  TEXT    NOT NULL,
  recorded_at  TEXT    NOT NULL,
  done_by      INTEGER NOT NULL REFERENCES account (id),
  twists_added INTEGER CHECK (twists_added BETWEEN -100 AND 100),
  upper_in     ${real}    CHECK (upper_in BETWEEN -4 AND 4),
  lower_in     ${real}    CHECK (lower_in BETWEEN -4 AND 4),
  words        TEXT
) ${strict};
CREATE INDEX adjustment_of_rig ON adjustment (rig_id, happened_at);
