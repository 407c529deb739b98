-- Conventions of every table: STRICT; lengths are whole hundred-thousandths of a millimetre; money is
-- minor units of the club's currency; a moment is ISO text in UTC with three decimals, a day is
-- ISO text; a word from a fixed list is written as the code's enum constant.

CREATE TABLE club (
  id                      INTEGER PRIMARY KEY CHECK (id = 1),
  name                    TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  demo                    INTEGER NOT NULL CHECK (demo IN (0, 1)),
  brace_table             TEXT    NOT NULL,
  full_check_every_looks  INTEGER NOT NULL DEFAULT 6 CHECK (full_check_every_looks BETWEEN 0 AND 100),
  loan_days               INTEGER NOT NULL DEFAULT 28 CHECK (loan_days BETWEEN 1 AND 400),
  deposit_minor           INTEGER NOT NULL DEFAULT 0 CHECK (deposit_minor >= 0),
  sessions_a_week         REAL    NOT NULL DEFAULT 1.5 CHECK (sessions_a_week BETWEEN 0 AND 14),
  shots_a_session         INTEGER NOT NULL DEFAULT 60 CHECK (shots_a_session BETWEEN 0 AND 1000),
  keep_names_days         INTEGER NOT NULL DEFAULT 180 CHECK (keep_names_days BETWEEN 1 AND 4000),
  changed_by              INTEGER REFERENCES account (id),
  changed_at              TEXT,
  version                 INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE account (
  id              INTEGER PRIMARY KEY,
  name            TEXT    NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 40),
  password_hash   TEXT    NOT NULL,
  role            TEXT    NOT NULL CHECK (role IN ('OFFICER', 'VOLUNTEER', 'COMMITTEE')),
  permit_until    TEXT,
  length_unit     TEXT    NOT NULL DEFAULT 'INCH' CHECK (length_unit IN ('INCH', 'MILLIMETRE', 'CENTIMETRE')),
  access_key_hash TEXT    UNIQUE,
  closed_on       TEXT,
  version         INTEGER NOT NULL DEFAULT 0
) STRICT;

-- The first press of a form leaves its key here with the page it led to; a second press is led there too.
CREATE TABLE pressed (
  form_key TEXT PRIMARY KEY,
  led_to   TEXT NOT NULL,
  at       TEXT NOT NULL
) STRICT;
