-- The trigger as it was, but for the order in which it looks: from the check's own few lines to what is recorded of each. Left
-- to itself SQLite went through every line ever recorded, for each line that was added.
DROP TRIGGER verdict_line_comes_with_its_check;

CREATE TRIGGER verdict_line_comes_with_its_check BEFORE INSERT ON verdict_line
WHEN EXISTS (SELECT 1 FROM change c JOIN story s ON s.id = c.story_id
              WHERE c.id = (SELECT max(id) FROM change
                             WHERE table_name = 'bow_check' AND row_id = new.check_id AND what LIKE '{"id":[null,%')
                AND s.hash IS NOT NULL
                AND s.sentence NOT IN ('Took in a file.', 'Registered from a file.'))
  OR EXISTS (SELECT 1 FROM verdict_line l CROSS JOIN change c CROSS JOIN story s
              WHERE l.check_id = new.check_id
                AND c.table_name = 'verdict_line' AND c.row_id = l.id
                AND s.id = c.story_id AND s.hash IS NOT NULL)
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;
