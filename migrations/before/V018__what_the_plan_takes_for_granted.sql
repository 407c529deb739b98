-- What a new part of each kind costs and takes. Without a price the plan takes what the club paid on average.
CREATE TABLE replacement_terms (
  item_kind   TEXT    PRIMARY KEY CHECK (item_kind IN ('RISER', 'LIMBS', 'BOW', 'STRING', 'STRINGER', 'ARROWS')),
  price_minor INTEGER CHECK (price_minor BETWEEN 0 AND 999999999),
  lead_days   INTEGER NOT NULL CHECK (lead_days BETWEEN 0 AND 365),
  minutes     INTEGER NOT NULL CHECK (minutes BETWEEN 1 AND 600),
  years       INTEGER NOT NULL CHECK (years BETWEEN 1 AND 50),
  failure_times REAL  NOT NULL DEFAULT 5 CHECK (failure_times BETWEEN 1 AND 1000),
  source      TEXT    NOT NULL CHECK (length(source) BETWEEN 1 AND 500),
  changed_by  INTEGER REFERENCES account (id),
  changed_at  TEXT,
  version     INTEGER NOT NULL DEFAULT 0
) STRICT;
INSERT INTO replacement_terms (item_kind, lead_days, minutes, years, source) VALUES
  ('RISER',    28, 60, 12, 'Where a club starts: judged, not published.'),
  ('LIMBS',    28, 60,  8, 'Where a club starts: judged, not published.'),
  ('BOW',      28, 30,  6, 'Where a club starts: judged, not published.'),
  ('STRING',   14, 30,  2, 'Where a club starts: judged, not published.'),
  ('STRINGER', 14, 10,  6, 'Where a club starts: judged, not published.'),
  ('ARROWS',   14, 15,  4, 'Where a club starts: judged, not published.');

-- How long each kind of work takes one person.
CREATE TABLE work_time (
  work    TEXT    PRIMARY KEY CHECK (work IN ('STRING_REPLACEMENT', 'BOLT_INSPECTION', 'RISER_INSPECTION', 'LIMB_INSPECTION', 'STRINGER_INSPECTION', 'ARROW_INSPECTION')),
  minutes INTEGER NOT NULL CHECK (minutes BETWEEN 1 AND 600)
) STRICT;
INSERT INTO work_time (work, minutes) VALUES
  ('STRING_REPLACEMENT', 30), ('BOLT_INSPECTION', 15), ('RISER_INSPECTION', 10),
  ('LIMB_INSPECTION', 15), ('STRINGER_INSPECTION', 5), ('ARROW_INSPECTION', 15);

-- What the plan takes for granted beside the record.
CREATE TABLE plan_rule (
  id                    INTEGER PRIMARY KEY CHECK (id = 1),
  hours_a_week          REAL    NOT NULL CHECK (hours_a_week BETWEEN 0 AND 200),
  terms_a_year          INTEGER NOT NULL CHECK (terms_a_year BETWEEN 1 AND 12),
  archers_a_course      INTEGER NOT NULL CHECK (archers_a_course BETWEEN 1 AND 200),
  evenings_a_course     INTEGER NOT NULL CHECK (evenings_a_course BETWEEN 1 AND 60),
  early_failure_percent INTEGER NOT NULL CHECK (early_failure_percent BETWEEN 0 AND 90),
  usage_spread_percent  INTEGER NOT NULL CHECK (usage_spread_percent BETWEEN 0 AND 90),
  source                TEXT    NOT NULL CHECK (length(source) BETWEEN 1 AND 500),
  changed_by            INTEGER REFERENCES account (id),
  changed_at            TEXT,
  version               INTEGER NOT NULL DEFAULT 0
) STRICT;
INSERT INTO plan_rule (id, hours_a_week, terms_a_year, archers_a_course, evenings_a_course, early_failure_percent, usage_spread_percent, source)
VALUES (1, 3, 3, 12, 6, 5, 20, 'Where a club starts: judged, not published.');
