-- A repeated press gets the first answer only where it is the same press: of the same person, at the same call, with the
-- same values. Kept is what was made and not the address of a page, so that pages and programs are answered alike.
-- Keys of presses from before are of no use any more: their forms are closed long since.
DROP TABLE pressed;

CREATE TABLE idempotency_key (
  account_id INTEGER NOT NULL REFERENCES account (id),
  call       TEXT    NOT NULL,
  key        TEXT    NOT NULL CHECK (length(key) BETWEEN 1 AND 200),
  digest     TEXT    NOT NULL CHECK (length(digest) = 64),   -- SHA-256 of what was sent, without the key
  made_kind  TEXT    NOT NULL,
  made_id    INTEGER NOT NULL,
  at         TEXT    NOT NULL,
  PRIMARY KEY (account_id, call, key)
) STRICT;

CREATE INDEX idempotency_key_by_age ON idempotency_key (at);

-- Of a press that makes no one thing (a file taken in, a recall), what it answered: the same press is answered so again.
CREATE TABLE kept_answer (
  id     INTEGER PRIMARY KEY,
  answer TEXT    NOT NULL CHECK (json_valid(answer)),
  at     TEXT    NOT NULL
) STRICT;
