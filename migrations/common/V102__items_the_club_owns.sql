CREATE TABLE item (
  id            ${key},
  code          TEXT    NOT NULL UNIQUE CHECK (length(code) = 6 AND code = upper(code) AND code NOT LIKE '%I%' AND code NOT LIKE '%O%'),
  kind          TEXT    NOT NULL CHECK (kind IN ('RISER', 'LIMBS', 'BOW', 'STRING', 'STRINGER', 'ARROWS', 'TAB', 'BRACER', 'CHESTGUARD', 'QUIVER', 'CASE', 'REST', 'SIGHT', 'BUTTON', 'STABILISER', 'CLICKER')),
  maker         TEXT,
  model         TEXT,
  batch         TEXT,
  serial        TEXT,
  bought_on     TEXT,
  price_minor   INTEGER CHECK (price_minor >= 0),
  notes         TEXT,
  registered_on TEXT    NOT NULL,
  retired_on    TEXT,
  retired_why   TEXT    CHECK (retired_why IN ('SCRAPPED', 'SOLD', 'LOST')),
  retired_note  TEXT,
  version       INTEGER NOT NULL DEFAULT 0,
  CHECK ((retired_on IS NULL) = (retired_why IS NULL))
) ${strict};
CREATE INDEX item_kind ON item (kind);

CREATE TABLE riser (
  id              INTEGER PRIMARY KEY REFERENCES item (id),
  build           TEXT    NOT NULL CHECK (build IN ('ADJUSTABLE', 'SCREW_IN')),
  hand            TEXT    NOT NULL CHECK (hand IN ('RIGHT', 'LEFT')),
  length_in       INTEGER NOT NULL CHECK (length_in BETWEEN 13 AND 32),
  limb_fitting    TEXT,
  limb_model      TEXT,
  thread_pitch    INTEGER CHECK (thread_pitch BETWEEN 20000 AND 500000),
  max_turns_out   ${real}    CHECK (max_turns_out BETWEEN 0 AND 12),
  "lateral"       INTEGER NOT NULL DEFAULT 0 CHECK ("lateral" IN (0, 1)),
  mass_g          INTEGER CHECK (mass_g BETWEEN 100 AND 4000),
  CHECK (build <> 'ADJUSTABLE' OR limb_fitting IS NOT NULL),
  CHECK (build <> 'SCREW_IN' OR limb_model IS NOT NULL)
) ${strict};

CREATE TABLE limbs (
  id              INTEGER PRIMARY KEY REFERENCES item (id),
  build           TEXT    NOT NULL CHECK (build IN ('ADJUSTABLE', 'SCREW_IN')),
  size            TEXT    CHECK (size IN ('SHORT', 'MEDIUM', 'LONG')),
  bow_length_in   INTEGER CHECK (bow_length_in BETWEEN 48 AND 72),
  marked_lb       ${real}    NOT NULL CHECK (marked_lb BETWEEN 5 AND 80),
  marked_at_in    ${real}    NOT NULL DEFAULT 28 CHECK (marked_at_in BETWEEN 18 AND 32),
  marked_riser_in INTEGER CHECK (marked_riser_in BETWEEN 13 AND 32),
  limb_fitting    TEXT,
  serial_upper    TEXT,
  serial_lower    TEXT,
  hmpe_tips       TEXT    NOT NULL DEFAULT 'UNKNOWN' CHECK (hmpe_tips IN ('YES', 'NO', 'UNKNOWN')),
  brace_low       INTEGER CHECK (brace_low BETWEEN 10000000 AND 30000000),
  brace_high      INTEGER CHECK (brace_high BETWEEN 10000000 AND 30000000),
  CHECK (size IS NOT NULL OR bow_length_in IS NOT NULL),
  CHECK (build <> 'ADJUSTABLE' OR limb_fitting IS NOT NULL),
  CHECK ((brace_low IS NULL) = (brace_high IS NULL) AND coalesce(brace_low <= brace_high, TRUE))
) ${strict};

CREATE TABLE bow (
  id              INTEGER PRIMARY KEY REFERENCES item (id),
  hand            TEXT    CHECK (hand IN ('RIGHT', 'LEFT')),
  bow_length_in   INTEGER NOT NULL CHECK (bow_length_in BETWEEN 40 AND 72),
  marked_lb       ${real}    NOT NULL CHECK (marked_lb BETWEEN 5 AND 80),
  marked_at_in    ${real}    NOT NULL DEFAULT 28 CHECK (marked_at_in BETWEEN 18 AND 32),
  hmpe_tips       TEXT    NOT NULL DEFAULT 'UNKNOWN' CHECK (hmpe_tips IN ('YES', 'NO', 'UNKNOWN')),
  brace_low       INTEGER CHECK (brace_low BETWEEN 10000000 AND 30000000),
  brace_high      INTEGER CHECK (brace_high BETWEEN 10000000 AND 30000000),
  mass_g          INTEGER CHECK (mass_g BETWEEN 100 AND 4000),
  CHECK ((brace_low IS NULL) = (brace_high IS NULL) AND coalesce(brace_low <= brace_high, TRUE))
) ${strict};

CREATE TABLE bowstring (
  id              INTEGER PRIMARY KEY REFERENCES item (id),
  for_bow_in      INTEGER NOT NULL CHECK (for_bow_in BETWEEN 40 AND 72),
  measured_length INTEGER CHECK (measured_length BETWEEN 90000000 AND 200000000),
  material        TEXT    NOT NULL CHECK (material IN ('POLYESTER', 'HMPE', 'LCP', 'OTHER')),
  strands         INTEGER CHECK (strands BETWEEN 4 AND 40),
  strand_diameter INTEGER CHECK (strand_diameter BETWEEN 10000 AND 200000),
  twists          INTEGER CHECK (twists BETWEEN 0 AND 150),
  first_used      TEXT
) ${strict};

CREATE TABLE stringer (
  id              INTEGER PRIMARY KEY REFERENCES item (id),
  stringer_kind   TEXT    NOT NULL CHECK (stringer_kind IN ('TIP_TO_TIP', 'TIP_AND_SADDLE')),
  bow_from_in     INTEGER NOT NULL CHECK (bow_from_in BETWEEN 40 AND 72),
  bow_to_in       INTEGER NOT NULL CHECK (bow_to_in BETWEEN 40 AND 72),
  CHECK (bow_from_in <= bow_to_in)
) ${strict};

-- Everything smaller that goes out with a bow. Arrows are a set (one holder) or a pool (given out by count).
CREATE TABLE kit_item (
  id              INTEGER PRIMARY KEY REFERENCES item (id),
  hand            TEXT    CHECK (hand IN ('RIGHT', 'LEFT')),
  size            TEXT,
  arrow_length    INTEGER CHECK (arrow_length BETWEEN 40000000 AND 105000000),
  spine           INTEGER CHECK (spine BETWEEN 200 AND 3000),
  arrow_mass_gr   ${real}    CHECK (arrow_mass_gr BETWEEN 50 AND 1500), -- of one whole arrow, the lightest
  arrow_count     INTEGER CHECK (arrow_count BETWEEN 0 AND 2000),
  pool            INTEGER NOT NULL DEFAULT 0 CHECK (pool IN (0, 1)),
  CHECK (pool = 0 OR arrow_count IS NOT NULL)
) ${strict};
