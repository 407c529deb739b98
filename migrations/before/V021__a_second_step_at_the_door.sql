-- An account whose holder gives a one-time code after the password (RFC 6238). What phone and club share must be
-- known to reckon the code, so it is kept sealed: AES-GCM with the key in second-step.key beside this file, which no
-- backup and no export holds. In hexadecimal: 12 bytes of nonce, 20 of secret, 16 of tag.
CREATE TABLE second_step (
  account_id    INTEGER PRIMARY KEY REFERENCES account (id),
  sealed_secret TEXT    NOT NULL CHECK (length(sealed_secret) = 96 AND sealed_secret NOT GLOB '*[^0-9a-f]*'),
  turned_on_at  TEXT    NOT NULL
) STRICT;

-- The half-minute of the newest code that was taken: it and all before it are not taken again.
CREATE TABLE code_taken (
  account_id INTEGER PRIMARY KEY REFERENCES second_step (account_id) ON DELETE CASCADE,
  time_step  INTEGER NOT NULL CHECK (time_step > 0)
) STRICT;

-- Codes for whoever lost the phone, each good once. Only their digests are kept.
CREATE TABLE recovery_code (
  digest     TEXT    PRIMARY KEY CHECK (length(digest) = 64),
  account_id INTEGER NOT NULL REFERENCES second_step (account_id) ON DELETE CASCADE,
  used_at    TEXT
) STRICT;
CREATE INDEX recovery_code_of_account ON recovery_code (account_id);

-- Who must have a second step before anything else is open to them.
CREATE TABLE door_rule (
  id              INTEGER PRIMARY KEY CHECK (id = 1),
  second_step_for TEXT    NOT NULL CHECK (second_step_for IN ('NOBODY', 'OFFICERS', 'EVERYONE'))
) STRICT;
INSERT INTO door_rule (id, second_step_for) VALUES (1, 'NOBODY');
