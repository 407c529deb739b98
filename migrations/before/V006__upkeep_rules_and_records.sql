CREATE TABLE upkeep_rule (
  id           INTEGER PRIMARY KEY,
  item_kind    TEXT    NOT NULL,
  build        TEXT    CHECK (build IN ('ADJUSTABLE', 'SCREW_IN', 'ONE_PIECE')),
  material     TEXT    CHECK (material IN ('POLYESTER', 'HMPE', 'LCP', 'OTHER')),
  work         TEXT    NOT NULL CHECK (work IN ('STRING_REPLACEMENT', 'BOLT_INSPECTION', 'RISER_INSPECTION', 'LIMB_INSPECTION', 'STRINGER_INSPECTION', 'ARROW_INSPECTION')),
  every_days   INTEGER CHECK (every_days BETWEEN 1 AND 4000),
  every_loans  INTEGER CHECK (every_loans BETWEEN 1 AND 1000),
  every_shots  INTEGER CHECK (every_shots BETWEEN 1 AND 1000000),
  soon_days    INTEGER NOT NULL DEFAULT 14 CHECK (soon_days BETWEEN 0 AND 365),
  blocks       INTEGER NOT NULL CHECK (blocks IN (0, 1)),
  source       TEXT    NOT NULL,
  changed_by   INTEGER REFERENCES account (id),
  changed_at   TEXT,
  version      INTEGER NOT NULL DEFAULT 0,
  CHECK (every_days IS NOT NULL OR every_loans IS NOT NULL OR every_shots IS NOT NULL)
) STRICT;
CREATE INDEX upkeep_rule_of_kind ON upkeep_rule (item_kind);

-- Work done: the plan of the next one follows from it.
CREATE TABLE upkeep_record (
  id           INTEGER PRIMARY KEY,
  item_id      INTEGER NOT NULL REFERENCES item (id),
  work         TEXT    NOT NULL CHECK (work IN ('STRING_REPLACEMENT', 'BOLT_INSPECTION', 'RISER_INSPECTION', 'LIMB_INSPECTION', 'STRINGER_INSPECTION', 'ARROW_INSPECTION')),
  happened_at  TEXT    NOT NULL,
  recorded_at  TEXT    NOT NULL,
  done_by      INTEGER NOT NULL REFERENCES account (id),
  result       TEXT    NOT NULL CHECK (result IN ('PASSED', 'FAILED', 'REPLACED')),
  found        TEXT,
  measured     TEXT,
  parts_used   TEXT,
  replaced_by  INTEGER REFERENCES item (id)
) STRICT;
CREATE INDEX upkeep_record_of_item ON upkeep_record (item_id, work, happened_at);
CREATE INDEX upkeep_record_passed ON upkeep_record (item_id, work, happened_at) WHERE result = 'PASSED';

-- Work asked for out of turn, by a sign seen or an event that could have harmed.
CREATE TABLE upkeep_task (
  id         INTEGER PRIMARY KEY,
  item_id    INTEGER NOT NULL REFERENCES item (id),
  work       TEXT    NOT NULL CHECK (work IN ('STRING_REPLACEMENT', 'BOLT_INSPECTION', 'RISER_INSPECTION', 'LIMB_INSPECTION', 'STRINGER_INSPECTION', 'ARROW_INSPECTION')),
  opened_at  TEXT    NOT NULL,
  opened_by  INTEGER NOT NULL REFERENCES account (id),
  why        TEXT    NOT NULL,
  blocks     INTEGER NOT NULL CHECK (blocks IN (0, 1)),
  closed_by_record INTEGER REFERENCES upkeep_record (id)
) STRICT;
CREATE UNIQUE INDEX upkeep_task_one_open ON upkeep_task (item_id, work) WHERE closed_by_record IS NULL;
