-- One line for every change: who, when it happened and was recorded, what, and why where it matters.
-- Sentences name no borrower; they point to the loan.
CREATE TABLE story (
  id          INTEGER PRIMARY KEY,
  happened_at TEXT    NOT NULL,
  recorded_at TEXT    NOT NULL,
  account_id  INTEGER NOT NULL REFERENCES account (id),
  sentence    TEXT    NOT NULL CHECK (length(sentence) > 0),
  why         TEXT,
  loan_id     INTEGER REFERENCES loan (id)
) STRICT;

CREATE TABLE story_about (
  story_id INTEGER NOT NULL REFERENCES story (id),
  item_id  INTEGER REFERENCES item (id),
  rig_id   INTEGER REFERENCES rig (id),
  CHECK ((item_id IS NULL) <> (rig_id IS NULL))
) STRICT;
CREATE INDEX story_about_item ON story_about (item_id, story_id) WHERE item_id IS NOT NULL;
CREATE INDEX story_about_rig ON story_about (rig_id, story_id) WHERE rig_id IS NOT NULL;

CREATE TRIGGER story_is_never_changed BEFORE UPDATE ON story
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-changed');
END;
CREATE TRIGGER story_is_never_deleted BEFORE DELETE ON story
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-deleted');
END;
