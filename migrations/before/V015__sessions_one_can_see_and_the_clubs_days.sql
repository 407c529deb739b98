-- A stay that began with a password in some browser, whose cookie carries its number and when it began. It is
-- over once it is ended, or seven days after it began. It says nothing of browser or network.
DROP TABLE sessions_ended;
CREATE TABLE session (
  id         INTEGER PRIMARY KEY,
  account_id INTEGER NOT NULL REFERENCES account (id),
  begun_at   TEXT    NOT NULL,
  ended_at   TEXT
) STRICT;
CREATE INDEX session_open ON session (account_id) WHERE ended_at IS NULL;

-- How far the club's clock is ahead of UTC, and from which moment on (in UTC, and as that clock shows it): SQLite
-- knows no time zones, and the views ask on which of the club's days a moment lies. Written at each start from
-- the club's time zone (upkeep.ClubsDays); without any row the club's days are those of UTC.
CREATE TABLE clock_offset (
  from_at    TEXT    PRIMARY KEY,
  from_local TEXT    NOT NULL UNIQUE,
  ahead_s    INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
