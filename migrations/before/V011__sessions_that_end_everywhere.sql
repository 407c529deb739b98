-- How many times all sessions of an account were ended. A session says at which count it began and is
-- over as soon as the count has moved on; no row: never ended.
CREATE TABLE sessions_ended (
  account_id INTEGER PRIMARY KEY REFERENCES account (id),
  times      INTEGER NOT NULL CHECK (times > 0)
) STRICT;
