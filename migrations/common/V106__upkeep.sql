CREATE TABLE upkeep_rule (
  id           ${key},
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
  -- How far beyond its interval a thing may go before it stays in; null: being overdue never keeps it in by itself.
  beyond_percent INTEGER CHECK (beyond_percent BETWEEN 0 AND 400),
  CHECK (every_days IS NOT NULL OR every_loans IS NOT NULL OR every_shots IS NOT NULL)
) ${strict};
CREATE INDEX upkeep_rule_of_kind ON upkeep_rule (item_kind);

-- Where a club starts: edited on the rules page. Sources are those the trade publishes; the rest says so. A quarter beyond
-- the interval, of strings, is judged.
INSERT INTO upkeep_rule (item_kind, build, material, work, every_days, every_loans, every_shots, soon_days, blocks, beyond_percent, source) VALUES
  ('STRING', NULL, NULL, 'STRING_REPLACEMENT', 730, NULL, 4000, 90, 0, 25, 'Published ages differ: 2 to 3 years in normal use is common practice; 3,000 to 5,000 shots or two years (Archery Magazine, second quarter of 2015, as a coach''s page quotes it). The stricter pair, middle of the shots.'),
  ('RISER', 'ADJUSTABLE', NULL, 'BOLT_INSPECTION', 180, 12, NULL, 21, 1, NULL, 'Common practice: half a year or a season of beginners. Locking screws can shake out unnoticed (a coach''s page, 2016).'),
  ('RISER', 'SCREW_IN', NULL, 'BOLT_INSPECTION', 180, 12, NULL, 21, 1, NULL, 'Common practice: half a year or a season of beginners; thread, seat, washer and tightness of a bolted limb.'),
  ('RISER', NULL, NULL, 'RISER_INSPECTION', 365, NULL, NULL, 30, 1, NULL, 'Season start (“Vérifications et préréglages de son arc classique”, Archers de Rixheim, after the French federation (FFTA), undated); yearly in a maker''s manual, 2005.'),
  ('LIMBS', NULL, NULL, 'LIMB_INSPECTION', 365, NULL, NULL, 30, 1, NULL, 'Season start (“Vérifications et préréglages de son arc classique”, Archers de Rixheim, after the French federation (FFTA), undated); yearly in a maker''s manual, 2005.'),
  ('BOW', NULL, NULL, 'LIMB_INSPECTION', 365, NULL, NULL, 30, 1, NULL, 'Season start (“Vérifications et préréglages de son arc classique”, Archers de Rixheim, after the French federation (FFTA), undated); yearly in a maker''s manual, 2005.'),
  ('STRINGER', NULL, NULL, 'STRINGER_INSPECTION', 365, NULL, NULL, 30, 1, NULL, 'Common practice: cord, stitching and saddle rubber once a year.'),
  ('ARROWS', NULL, NULL, 'ARROW_INSPECTION', 180, 10, NULL, 21, 0, NULL, 'Common practice for sets on loan; before each shot by the archer (“Safety”, Archery Australia, undated).');

-- Work done: the plan of the next one follows from it.
CREATE TABLE upkeep_record (
  id           ${key},
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
) ${strict};
CREATE INDEX upkeep_record_of_item ON upkeep_record (item_id, work, happened_at);
CREATE INDEX upkeep_record_passed ON upkeep_record (item_id, work, happened_at) WHERE result = 'PASSED';
CREATE INDEX upkeep_record_failed ON upkeep_record (item_id, work, happened_at) WHERE result = 'FAILED';

-- Work asked for out of turn, by a sign seen or an event that could have harmed.
CREATE TABLE upkeep_task (
  id         ${key},
  item_id    INTEGER NOT NULL REFERENCES item (id),
  work       TEXT    NOT NULL CHECK (work IN ('STRING_REPLACEMENT', 'BOLT_INSPECTION', 'RISER_INSPECTION', 'LIMB_INSPECTION', 'STRINGER_INSPECTION', 'ARROW_INSPECTION')),
  opened_at  TEXT    NOT NULL,
  opened_by  INTEGER NOT NULL REFERENCES account (id),
  why        TEXT    NOT NULL,
  blocks     INTEGER NOT NULL CHECK (blocks IN (0, 1)),
  closed_by_record INTEGER REFERENCES upkeep_record (id),
  -- What led to it: a person asked, readings change by more than readers differ, someone reported something, the thing was
  -- found again after it had been given up, it was withdrawn, or the scale asks.
  cause      TEXT    NOT NULL DEFAULT 'ASKED' CHECK (cause IN ('ASKED', 'CHANGING', 'REPORTED', 'FOUND_AGAIN', 'WITHDRAWN', 'WEIGHED'))
) ${strict};
CREATE UNIQUE INDEX upkeep_task_one_open ON upkeep_task (item_id, work) WHERE closed_by_record IS NULL;
CREATE INDEX upkeep_task_of_item ON upkeep_task (item_id);

-- What the view upkeep_reckoned answers, kept: nearly every page asks whether an inspection is overdue, and counting every
-- loan and shot for each of them would cost more than all the rest of the page. Triggers ask the view again after each fact
-- that it rests on, in the same transaction; a test holds the two together.
CREATE TABLE upkeep_plan (
  item_id INTEGER NOT NULL REFERENCES item (id),
  rule_id INTEGER NOT NULL REFERENCES upkeep_rule (id),
  due_on  TEXT,
  because TEXT,
  beyond_on TEXT,  -- from the day after this one, the thing stays in
  PRIMARY KEY (item_id, rule_id)
) ${strict_by_key};
CREATE INDEX upkeep_plan_by_day ON upkeep_plan (due_on);
CREATE INDEX upkeep_plan_of_rule ON upkeep_plan (rule_id);

-- How far the club's clock is ahead of UTC, and from which moment on (in UTC, and as that clock shows it): SQLite knows no
-- time zones, and the views ask on which of the club's days a moment lies. Written at each start from the club's time zone
-- (upkeep.ClubsDays); without any row the club's days are those of UTC.
CREATE TABLE clock_offset (
  from_at    TEXT    PRIMARY KEY,
  from_local TEXT    NOT NULL UNIQUE,
  ahead_s    INTEGER NOT NULL
) ${strict_by_key};
