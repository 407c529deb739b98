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

-- Behind the newest seal nothing would ever be sealed.
CREATE TRIGGER story_comes_after_what_is_sealed AFTER INSERT ON story
WHEN EXISTS (SELECT 1 FROM story WHERE id > new.id AND hash IS NOT NULL)
BEGIN
  SELECT RAISE(ABORT, 'story-comes-after-what-is-sealed');
END;

-- Which texts held the name of someone erased, for as long as a press may be repeated: whoever asks again is told again. No
-- name stands in it, and it is no fact of the club.
CREATE TABLE name_stays (
  id          INTEGER PRIMARY KEY,
  borrower_id INTEGER NOT NULL REFERENCES borrower (id),
  text_key    TEXT    NOT NULL,
  earlier     INTEGER NOT NULL CHECK (earlier IN (0, 1)),
  sure        INTEGER NOT NULL CHECK (sure IN (0, 1)),
  at          TEXT    NOT NULL
) STRICT;
CREATE INDEX name_stays_of ON name_stays (borrower_id);
