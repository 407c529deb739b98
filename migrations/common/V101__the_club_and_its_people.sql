-- Conventions of every table: lengths are whole hundred-thousandths of a millimetre; money is minor units of the club's
-- currency; a moment is ISO text in UTC with three decimals, a day is ISO text; a word from a fixed list is written as the
-- code's enum constant. What stands in this folder is SQL that SQLite and PostgreSQL both take; where they differ there is a
-- blank in braces: ${key} a number that the database gives, ${real} a number of 64 bits, and ${strict} or ${strict_by_key}
-- what SQLite has to be told so that it minds types, and keeps a table by its key alone.

CREATE TABLE account (
  id              ${key},
  name            TEXT    NOT NULL UNIQUE COLLATE NOCASE CHECK (length(name) BETWEEN 1 AND 40),
  password_hash   TEXT    NOT NULL,  -- the empty text until somebody joined it
  role            TEXT    NOT NULL CHECK (role IN ('OFFICER', 'VOLUNTEER', 'COMMITTEE')),
  permit_until    TEXT,
  length_unit     TEXT    NOT NULL DEFAULT 'INCH' CHECK (length_unit IN ('INCH', 'MILLIMETRE', 'CENTIMETRE')),
  access_key_hash TEXT    UNIQUE,
  closed_on       TEXT,
  version         INTEGER NOT NULL DEFAULT 0,
  erased_on       TEXT  -- since then only a number
) ${strict};

CREATE TABLE club (
  id                      INTEGER PRIMARY KEY CHECK (id = 1),
  name                    TEXT    NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  demo                    INTEGER NOT NULL CHECK (demo IN (0, 1)),
  brace_table             TEXT    NOT NULL,
  full_check_every_looks  INTEGER NOT NULL DEFAULT 6 CHECK (full_check_every_looks BETWEEN 0 AND 100),
  loan_days               INTEGER NOT NULL DEFAULT 28 CHECK (loan_days BETWEEN 1 AND 400),
  deposit_minor           INTEGER NOT NULL DEFAULT 0 CHECK (deposit_minor >= 0),
  sessions_a_week         ${real}    NOT NULL DEFAULT 1.5 CHECK (sessions_a_week BETWEEN 0 AND 14),
  shots_a_session         INTEGER NOT NULL DEFAULT 60 CHECK (shots_a_session BETWEEN 0 AND 1000),
  keep_names_days         INTEGER NOT NULL DEFAULT 180 CHECK (keep_names_days BETWEEN 1 AND 4000),
  changed_by              INTEGER REFERENCES account (id),
  changed_at              TEXT,
  version                 INTEGER NOT NULL DEFAULT 0,
  -- How many twists this club takes as sound; to start with, the lowest and the highest figure in print.
  fewest_twists           INTEGER NOT NULL DEFAULT 10 CHECK (fewest_twists BETWEEN 0 AND 140),
  most_twists             INTEGER NOT NULL DEFAULT 60 CHECK (most_twists BETWEEN fewest_twists + 10 AND 150),
  twists_source           TEXT    NOT NULL CHECK (length(twists_source) BETWEEN 1 AND 500)
    DEFAULT '10 to 30 turns: “Réglage du band”, La Flèche Gasconne, undated; 20 to 60: “La corde”, Archers de Douai, from a coaches'' academy, undated',
  -- How often limbs belong on the bow scale; null: by no rule. A year is judged. Late, it is a note and keeps nothing in: a
  -- club may have no scale.
  weigh_limbs_days        INTEGER DEFAULT 365 CHECK (weigh_limbs_days BETWEEN 30 AND 4000),
  -- What a borrower reads at home: whom to call, on what terms, and how far the brace height may move before the bow comes
  -- back. All of it is the club's own, and may be left out.
  telephone               TEXT    CHECK (length(telephone) BETWEEN 1 AND 60),
  mail                    TEXT    CHECK (length(mail) BETWEEN 1 AND 200),
  terms                   TEXT    CHECK (length(terms) BETWEEN 1 AND 1200),
  brace_may_move          INTEGER CHECK (brace_may_move BETWEEN 100000 AND 2000000),
  brace_may_move_source   TEXT    CHECK ((brace_may_move IS NULL) = (brace_may_move_source IS NULL))
) ${strict};

-- A stay that began with a password in some browser, whose cookie carries its number and when it began. It is over once it
-- is ended, or seven days after it began. It says nothing of browser or network.
CREATE TABLE session (
  id         ${key},
  account_id INTEGER NOT NULL REFERENCES account (id),
  begun_at   TEXT    NOT NULL,
  ended_at   TEXT
) ${strict};
CREATE INDEX session_open ON session (account_id) WHERE ended_at IS NULL;

-- A link that an officer hands over and with which its holder chooses the password of an account, once. Only its digest is
-- kept.
CREATE TABLE password_link (
  digest     TEXT    PRIMARY KEY CHECK (length(digest) = 64),
  account_id INTEGER NOT NULL REFERENCES account (id),
  made_at    TEXT    NOT NULL,
  expires_at TEXT    NOT NULL,
  used_at    TEXT
) ${strict};

-- An account whose holder gives a one-time code after the password (RFC 6238). What phone and club share must be known to
-- reckon the code, so it is kept sealed: AES-GCM with the key in second-step.key beside the file, which no backup and no
-- export holds. In hexadecimal: 12 bytes of nonce, 20 of secret, 16 of tag.
CREATE TABLE second_step (
  account_id    INTEGER PRIMARY KEY REFERENCES account (id),
  sealed_secret TEXT    NOT NULL CHECK (length(sealed_secret) = 96 AND trim(sealed_secret, '0123456789abcdef') = ''),
  turned_on_at  TEXT    NOT NULL
) ${strict};

-- The half-minute of the newest code that was taken: it and all before it are not taken again.
CREATE TABLE code_taken (
  account_id INTEGER PRIMARY KEY REFERENCES second_step (account_id) ON DELETE CASCADE,
  time_step  INTEGER NOT NULL CHECK (time_step > 0)
) ${strict};

-- Codes for whoever lost the phone, each good once. Only their digests are kept.
CREATE TABLE recovery_code (
  digest     TEXT    PRIMARY KEY CHECK (length(digest) = 64),
  account_id INTEGER NOT NULL REFERENCES second_step (account_id) ON DELETE CASCADE,
  used_at    TEXT
) ${strict};
CREATE INDEX recovery_code_of_account ON recovery_code (account_id);

-- Who must have a second step before anything else is open to them.
CREATE TABLE door_rule (
  id              INTEGER PRIMARY KEY CHECK (id = 1),
  second_step_for TEXT    NOT NULL CHECK (second_step_for IN ('NOBODY', 'OFFICERS', 'EVERYONE'))
) ${strict};
INSERT INTO door_rule (id, second_step_for) VALUES (1, 'NOBODY');
