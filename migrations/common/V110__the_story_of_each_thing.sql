-- The club's record, one chain: a sentence for every change (who, when it happened and was recorded, what, and why where it
-- matters), under it each field that was changed, from and to. Sentences name no borrower; they point to the loan. Each
-- sentence is sealed with a hash over itself and the one before it (story.EntryText).
CREATE TABLE story (
  id          ${key},
  happened_at TEXT    NOT NULL,
  recorded_at TEXT    NOT NULL,
  account_id  INTEGER REFERENCES account (id),   -- null: the program by itself
  sentence    TEXT    NOT NULL CHECK (length(sentence) > 0),
  why         TEXT,
  loan_id     INTEGER REFERENCES loan (id),
  hash        TEXT    CHECK (length(hash) = 64),  -- null until its transaction ends
  -- The seal covers the hash of salt and reason, so that a reason that names somebody can be erased and the chain stays
  -- whole. Null beside a reason, of entries from before: the seal covers the reason itself.
  why_salt    TEXT,
  why_hash    TEXT    CHECK (length(why_hash) = 64)
) ${strict};

CREATE TABLE story_about (
  id       ${key},  -- the seal covers them in this order
  story_id INTEGER NOT NULL REFERENCES story (id),
  item_id  INTEGER REFERENCES item (id),
  rig_id   INTEGER REFERENCES rig (id),
  CHECK ((item_id IS NULL) <> (rig_id IS NULL))
) ${strict};
CREATE INDEX story_about_of_story ON story_about (story_id);
CREATE INDEX story_about_item ON story_about (item_id, story_id) WHERE item_id IS NOT NULL;
CREATE INDEX story_about_rig ON story_about (rig_id, story_id) WHERE rig_id IS NOT NULL;

-- One changed row: {"field": [from, to]}. Written by triggers that the program makes for every table (story.Watch). A change
-- belongs to the sentence told next: it is written before its sentence, in the same transaction.
CREATE TABLE change (
  id         ${key},
  story_id   INTEGER NOT NULL,
  table_name TEXT    NOT NULL,
  row_id     INTEGER NOT NULL,
  what       TEXT    NOT NULL CHECK (json_valid(what))
) ${strict};
CREATE INDEX change_of_story ON change (story_id);
CREATE INDEX change_of_row ON change (table_name, row_id);

-- What says who someone is stands apart from the chain, which holds only the hash of salt and value: erasing takes both
-- away, and the chain stays whole.
CREATE TABLE personal (
  id        ${key},
  change_id INTEGER NOT NULL REFERENCES change (id),
  field     TEXT    NOT NULL,
  salt      TEXT,
  value     TEXT,
  hash      TEXT    CHECK (length(hash) = 64),
  CHECK ((salt IS NULL) = (value IS NULL))
) ${strict};
CREATE INDEX personal_of_change ON personal (change_id);
CREATE INDEX personal_unsealed ON personal (id) WHERE hash IS NULL;
