-- A link that an officer hands over and with which its holder chooses the password of an account, once.
-- Only its digest is kept. An account nobody has joined yet has the empty text as its password hash.
CREATE TABLE password_link (
  digest     TEXT    PRIMARY KEY CHECK (length(digest) = 64),
  account_id INTEGER NOT NULL REFERENCES account (id),
  made_at    TEXT    NOT NULL,
  expires_at TEXT    NOT NULL,
  used_at    TEXT
) STRICT;
