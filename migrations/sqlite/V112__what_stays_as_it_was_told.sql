-- The record, and what was decided, are added to and never changed.

-- A reason may be erased, where the seal covers its hash.
CREATE TRIGGER story_is_never_changed
BEFORE UPDATE OF id, happened_at, recorded_at, account_id, sentence, why, why_salt, why_hash, loan_id ON story
WHEN new.id <> old.id OR new.happened_at <> old.happened_at OR new.recorded_at <> old.recorded_at
  OR new.account_id IS NOT old.account_id OR new.sentence <> old.sentence OR new.loan_id IS NOT old.loan_id
  OR NOT (
    (old.hash IS NULL AND new.why IS old.why)
    OR (old.why_hash IS NOT NULL AND new.why_hash = old.why_hash AND new.why IS NULL AND new.why_salt IS NULL))
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

-- Behind the newest seal nothing would ever be sealed.
CREATE TRIGGER story_comes_after_what_is_sealed AFTER INSERT ON story
WHEN EXISTS (SELECT 1 FROM story WHERE id > new.id AND hash IS NOT NULL)
BEGIN
  SELECT RAISE(ABORT, 'story-comes-after-what-is-sealed');
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

CREATE TRIGGER verdict_line_is_never_changed BEFORE UPDATE ON verdict_line
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;

CREATE TRIGGER verdict_line_is_never_deleted BEFORE DELETE ON verdict_line
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;

-- What a verdict says comes with its check. Once the check is sealed in the record it is decided, and nothing is added to it,
-- whoever writes. Of one that a file brought, its lines may come in a file of their own, all at once: a list is sent by itself.
CREATE TRIGGER verdict_line_comes_with_its_check BEFORE INSERT ON verdict_line
WHEN EXISTS (SELECT 1 FROM change c JOIN story s ON s.id = c.story_id
              WHERE c.id = (SELECT max(id) FROM change
                             WHERE table_name = 'bow_check' AND row_id = new.check_id AND what LIKE '{"id":[null,%')
                AND s.hash IS NOT NULL
                AND s.sentence NOT IN ('Took in a file.', 'Registered from a file.'))
  OR EXISTS (SELECT 1 FROM verdict_line l JOIN change c ON c.table_name = 'verdict_line' AND c.row_id = l.id
               JOIN story s ON s.id = c.story_id
              WHERE l.check_id = new.check_id AND s.hash IS NOT NULL)
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;

-- Words on one line, and numbers none of which is beyond the longest length there is (verdict.Blank, which has the bounds of
-- each saying).
CREATE TRIGGER verdict_line_is_said_of_what_can_be BEFORE INSERT ON verdict_line
WHEN iif(json_valid(new.said_of),
         EXISTS (SELECT 1 FROM json_tree(new.said_of)
                  WHERE type NOT IN ('array', 'text', 'integer', 'real')
                     OR (type = 'text' AND (trim(atom) = '' OR instr(atom, char(10)) > 0 OR instr(atom, char(13)) > 0))
                     OR (type IN ('integer', 'real') AND abs(atom) > 300000000)),
         0)
BEGIN
  SELECT RAISE(ABORT, 'no-verdict-says-that');
END;
