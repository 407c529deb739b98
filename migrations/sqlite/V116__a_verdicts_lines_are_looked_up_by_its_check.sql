-- The trigger asks as before, of one line instead of all: the lines of a verdict come at once, so that one of them that is
-- sealed says that all are. Left to itself SQLite went through every line ever recorded, for each line that was added.
DROP TRIGGER verdict_line_comes_with_its_check;

CREATE TRIGGER verdict_line_comes_with_its_check BEFORE INSERT ON verdict_line
WHEN EXISTS (SELECT 1 FROM change c JOIN story s ON s.id = c.story_id
              WHERE c.id = (SELECT max(id) FROM change
                             WHERE table_name = 'bow_check' AND row_id = new.check_id AND what LIKE '{"id":[null,%')
                AND s.hash IS NOT NULL
                AND s.sentence NOT IN ('Took in a file.', 'Registered from a file.'))
  OR EXISTS (SELECT 1 FROM change c CROSS JOIN story s
              WHERE c.table_name = 'verdict_line'
                AND c.row_id = (SELECT min(l.id) FROM verdict_line l WHERE l.check_id = new.check_id)
                AND s.id = c.story_id AND s.hash IS NOT NULL)
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;
