-- The club's record, one chain: a sentence for every change (who, when it happened and was recorded, what, and
-- why where it matters), under it each field that was changed, from and to. Sentences name no borrower; they
-- point to the loan. Each sentence is sealed with a hash over itself and the one before it.
CREATE TABLE story (
  id          INTEGER PRIMARY KEY,
  happened_at TEXT    NOT NULL,
  recorded_at TEXT    NOT NULL,
  account_id  INTEGER REFERENCES account (id),   -- null: the program by itself
  sentence    TEXT    NOT NULL CHECK (length(sentence) > 0),
  why         TEXT,
  loan_id     INTEGER REFERENCES loan (id),
  hash        TEXT    CHECK (length(hash) = 64)  -- null until its transaction ends
) STRICT;
CREATE INDEX story_unsealed ON story (id) WHERE hash IS NULL;

CREATE TABLE story_about (
  story_id INTEGER NOT NULL REFERENCES story (id),
  item_id  INTEGER REFERENCES item (id),
  rig_id   INTEGER REFERENCES rig (id),
  CHECK ((item_id IS NULL) <> (rig_id IS NULL))
) STRICT;
CREATE INDEX story_about_of_story ON story_about (story_id);
CREATE INDEX story_about_item ON story_about (item_id, story_id) WHERE item_id IS NOT NULL;
CREATE INDEX story_about_rig ON story_about (rig_id, story_id) WHERE rig_id IS NOT NULL;

-- One changed row: {"field": [from, to]}. Written by triggers that the program makes for every table (story.Watch).
-- A change belongs to the sentence told next: it is written before its sentence, in the same transaction.
CREATE TABLE change (
  id         INTEGER PRIMARY KEY,
  story_id   INTEGER NOT NULL,
  table_name TEXT    NOT NULL,
  row_id     INTEGER NOT NULL,
  what       TEXT    NOT NULL CHECK (json_valid(what))
) STRICT;
CREATE INDEX change_of_story ON change (story_id);
CREATE INDEX change_of_row ON change (table_name, row_id);

-- What says who someone is stands apart from the chain, which holds only the hash of salt and value: erasing
-- takes both away, and the chain stays whole.
CREATE TABLE personal (
  id        INTEGER PRIMARY KEY,
  change_id INTEGER NOT NULL REFERENCES change (id),
  field     TEXT    NOT NULL,
  salt      TEXT,
  value     TEXT,
  hash      TEXT    CHECK (length(hash) = 64),
  CHECK ((salt IS NULL) = (value IS NULL))
) STRICT;
CREATE INDEX personal_of_change ON personal (change_id);
CREATE INDEX personal_unsealed ON personal (id) WHERE hash IS NULL;

CREATE TRIGGER story_is_never_changed BEFORE UPDATE OF id, happened_at, recorded_at, account_id, sentence, why, loan_id ON story
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-changed');
END;
CREATE TRIGGER story_is_sealed_once BEFORE UPDATE OF hash ON story WHEN old.hash IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'story-is-sealed-once');
END;
CREATE TRIGGER story_is_never_deleted BEFORE DELETE ON story
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-deleted');
END;
CREATE TRIGGER sealed_story_is_about_what_it_was BEFORE INSERT ON story_about
WHEN (SELECT hash FROM story WHERE id = new.story_id) IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'sealed-story-is-about-what-it-was');
END;
CREATE TRIGGER story_about_is_never_changed BEFORE UPDATE ON story_about
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-changed');
END;
CREATE TRIGGER story_about_is_never_deleted BEFORE DELETE ON story_about
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-deleted');
END;
CREATE TRIGGER change_is_never_changed BEFORE UPDATE ON change
WHEN old.id <> new.id OR old.table_name <> new.table_name OR old.row_id <> new.row_id OR old.what <> new.what
  OR (SELECT hash FROM story WHERE id = old.story_id) IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'change-is-never-changed');
END;
CREATE TRIGGER change_is_never_deleted BEFORE DELETE ON change
BEGIN
  SELECT RAISE(ABORT, 'change-is-never-deleted');
END;
CREATE TRIGGER personal_value_is_only_erased BEFORE UPDATE ON personal
WHEN old.id <> new.id OR old.change_id <> new.change_id OR old.field <> new.field
  OR (old.hash IS NOT NULL AND new.hash IS NOT old.hash)
  OR (new.value IS NOT NULL AND (new.value IS NOT old.value OR new.salt IS NOT old.salt))
BEGIN
  SELECT RAISE(ABORT, 'personal-value-is-only-erased');
END;
CREATE TRIGGER personal_value_keeps_its_hash BEFORE DELETE ON personal
BEGIN
  SELECT RAISE(ABORT, 'personal-value-keeps-its-hash');
END;
