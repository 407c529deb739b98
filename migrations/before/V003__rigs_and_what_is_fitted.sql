CREATE TABLE rig (
  id           INTEGER PRIMARY KEY,
  style        TEXT    NOT NULL CHECK (style IN ('SPLIT_FINGER', 'THREE_UNDER', 'STRING_WALKING')),
  level        TEXT    NOT NULL CHECK (level IN ('BEGINNER', 'FULLER')),
  assembled_at TEXT    NOT NULL,
  dissolved_at TEXT    CHECK (dissolved_at IS NULL OR dissolved_at >= assembled_at),
  version      INTEGER NOT NULL DEFAULT 0
) STRICT;

-- A fitting is a dated fact: what was fitted to what, from when until when.
CREATE TABLE fitting (
  id         INTEGER PRIMARY KEY,
  rig_id     INTEGER NOT NULL REFERENCES rig (id),
  item_id    INTEGER NOT NULL REFERENCES item (id),
  place      TEXT    NOT NULL CHECK (place IN ('BODY', 'LIMBS', 'STRING')),
  from_at    TEXT    NOT NULL,
  until_at   TEXT    CHECK (until_at IS NULL OR until_at >= from_at)
) STRICT;
CREATE UNIQUE INDEX fitting_one_open_per_item ON fitting (item_id) WHERE until_at IS NULL;
CREATE UNIQUE INDEX fitting_one_open_per_place ON fitting (rig_id, place) WHERE until_at IS NULL;
CREATE INDEX fitting_of_rig ON fitting (rig_id, from_at);
CREATE INDEX fitting_of_item ON fitting (item_id, from_at);

-- A spare string, or a stringer, that lives with a rig without being fitted.
CREATE TABLE kept_with (
  item_id INTEGER PRIMARY KEY REFERENCES item (id),
  rig_id  INTEGER NOT NULL REFERENCES rig (id)
) STRICT;
CREATE INDEX kept_with_rig ON kept_with (rig_id);

CREATE TABLE set_up (
  id             INTEGER PRIMARY KEY,
  rig_id         INTEGER NOT NULL REFERENCES rig (id),
  begun_at       TEXT    NOT NULL,
  begun_by       INTEGER NOT NULL REFERENCES account (id),
  finished_at    TEXT    CHECK (finished_at IS NULL OR finished_at >= begun_at),
  finished_by    INTEGER REFERENCES account (id),
  steps_done     TEXT    NOT NULL DEFAULT '',
  brace          INTEGER CHECK (brace BETWEEN 10000000 AND 30000000),
  brace_typed    TEXT,
  brace_from     TEXT    CHECK (brace_from IN ('GRIP_THROAT', 'BUTTON')),
  tiller_upper   INTEGER CHECK (tiller_upper BETWEEN 8000000 AND 35000000),
  upper_typed    TEXT,
  tiller_lower   INTEGER CHECK (tiller_lower BETWEEN 8000000 AND 35000000),
  lower_typed    TEXT,
  nocking        INTEGER CHECK (nocking BETWEEN -1000000 AND 3000000),
  nocking_typed  TEXT,
  screws_seen    INTEGER NOT NULL DEFAULT 0 CHECK (screws_seen IN (0, 1)),
  turns_upper    REAL    CHECK (turns_upper BETWEEN 0 AND 12),
  turns_lower    REAL    CHECK (turns_lower BETWEEN 0 AND 12),
  twists         INTEGER CHECK (twists BETWEEN 0 AND 150),
  version        INTEGER NOT NULL DEFAULT 0,
  CHECK (finished_at IS NULL OR (brace IS NOT NULL AND brace_from IS NOT NULL AND tiller_upper IS NOT NULL
         AND tiller_lower IS NOT NULL AND nocking IS NOT NULL AND screws_seen = 1))
) STRICT;
CREATE UNIQUE INDEX set_up_one_open_per_rig ON set_up (rig_id) WHERE finished_at IS NULL;
CREATE INDEX set_up_of_rig ON set_up (rig_id, finished_at);

-- The club's own brace bands, by bow length, where no table speaks or the club knows better.
CREATE TABLE club_brace_band (
  bow_length_in INTEGER PRIMARY KEY CHECK (bow_length_in BETWEEN 40 AND 72),
  low           INTEGER NOT NULL,
  high          INTEGER NOT NULL CHECK (high >= low),
  source        TEXT    NOT NULL
) STRICT;
