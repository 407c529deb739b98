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
