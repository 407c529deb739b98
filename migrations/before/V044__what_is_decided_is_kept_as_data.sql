-- What a verdict says, one row a thing said: what is said and of what, and of a step what is done, by whom and how much.
-- Words are made of it when it is shown (verdict.Saying), and nothing reads them back. One table and not two, since a
-- step is one more thing said in its place among the others, and a check is saved the most: one statement keeps it all.
CREATE TABLE verdict_line (
  id          INTEGER PRIMARY KEY,
  check_id    INTEGER NOT NULL REFERENCES bow_check (id),
  place       INTEGER NOT NULL CHECK (place > 0),
  kind        TEXT    NOT NULL CHECK (kind IN ('REASON', 'STEP', 'EXPECTED', 'WORK', 'NOTE', 'BASIS')),
  saying      TEXT    NOT NULL CHECK (length(saying) > 0),
  -- An array of what it is said of: whole numbers (of lengths hundred-thousandths of a millimetre), words, sayings within it.
  said_of     TEXT    NOT NULL CHECK (json_valid(said_of) AND substr(said_of, 1, 1) = '['),
  step        TEXT    CHECK (step IN ('LOOK_ALONG', 'SAME_POINT', 'STRING_OFF', 'ANSWER_TOLD', 'RELEASE', 'PARTS_RIGHT',
                                      'COUNT_TWISTS', 'LOOK_AT_LIMBS', 'TWISTS', 'OTHER_STRING', 'TO_WORKSHOP',
                                      'LOCK_LOOSENED', 'UPPER_BOLT', 'LOWER_BOLT', 'LOCK_TIGHTENED', 'STRING_ON', 'LOOPS',
                                      'STRING_LINE', 'MEASURE_AGAIN')),
  by_whom     TEXT    CHECK (by_whom IN ('VOLUNTEER', 'PERMIT_HOLDER', 'COACH')),
  -- Of a twist put in, of a turn that tightens; negative: taken out, loosened.
  thousandths INTEGER CHECK (thousandths BETWEEN -150000 AND 150000),
  UNIQUE (check_id, place),
  CHECK ((kind = 'STEP') = (step IS NOT NULL)),
  CHECK ((step IS NULL) = (by_whom IS NULL)),
  CHECK (thousandths IS NULL OR (step IS NOT NULL AND step IN ('TWISTS', 'UPPER_BOLT', 'LOWER_BOLT')))
) STRICT;

-- What earlier versions kept as one text, line by line, and what each line began with. A line that can't be taken apart is
-- a reason, as it was shown; all of it stays as it was said.
INSERT INTO verdict_line (check_id, place, kind, saying, said_of, step, by_whom, thousandths)
WITH RECURSIVE cut (check_id, place, line, rest) AS (
  SELECT id, 0, NULL, replace(verdict_text, char(13), '') || char(10) FROM bow_check
  UNION ALL
  SELECT check_id, place + 1, substr(rest, 1, instr(rest, char(10)) - 1), substr(rest, instr(rest, char(10)) + 1)
    FROM cut WHERE rest <> ''
),
line (check_id, place, line, head, tail) AS (
  SELECT check_id, row_number() OVER (PARTITION BY check_id ORDER BY place), line,
         iif(line GLOB 'Step [A-Z]* by [a-z]*: *', substr(line, 6, instr(line, ' by ') - 6), NULL),
         substr(line, instr(line, ' by ') + 4)
    FROM cut WHERE trim(line) <> ''
),
told (check_id, place, line, step, amount, by_whom, words) AS (
  SELECT check_id, place, line,
         substr(head, 1, instr(head || ' ', ' ') - 1), substr(head, instr(head || ' ', ' ') + 1),
         upper(replace(substr(tail, 1, instr(tail, ': ') - 1), '-', '_')), substr(tail, instr(tail, ': ') + 2)
    FROM line
),
known (check_id, place, line, words, step, by_whom, thousandths) AS (
  SELECT t.check_id, t.place, t.line, t.words, k.step, k.by_whom,
         iif(k.step IS NULL OR t.amount = '', NULL, CAST(round(CAST(t.amount AS REAL) * 1000) AS INTEGER))
    FROM told t LEFT JOIN (
      SELECT s.value AS step, w.value AS by_whom
        FROM json_each('["LOOK_ALONG", "SAME_POINT", "STRING_OFF", "ANSWER_TOLD", "RELEASE", "PARTS_RIGHT", "COUNT_TWISTS",
                         "LOOK_AT_LIMBS", "TWISTS", "OTHER_STRING", "TO_WORKSHOP", "LOCK_LOOSENED", "UPPER_BOLT", "LOWER_BOLT",
                         "LOCK_TIGHTENED", "STRING_ON", "LOOPS", "STRING_LINE", "MEASURE_AGAIN"]') s,
             json_each('["VOLUNTEER", "PERMIT_HOLDER", "COACH"]') w) k
      ON k.step = t.step AND k.by_whom = t.by_whom
     AND (t.amount = ''
          OR (t.step IN ('TWISTS', 'UPPER_BOLT', 'LOWER_BOLT') AND t.amount GLOB '[+-][0-9]*'
              AND t.amount NOT GLOB '?*[^0-9.]*' AND abs(CAST(t.amount AS REAL)) <= 150))
)
SELECT check_id, place,
       CASE WHEN step IS NOT NULL THEN 'STEP' WHEN line GLOB 'Expect: *' THEN 'EXPECTED' WHEN line GLOB 'Needs: *' THEN 'WORK'
            WHEN line GLOB 'Note: *' THEN 'NOTE' WHEN line GLOB 'Rests on: *' THEN 'BASIS' ELSE 'REASON' END,
       iif(step IS NOT NULL AND instr(words, ' | ') > 0, 'AS_SAID_WITH_CAUTION', 'AS_SAID'),
       CASE WHEN step IS NOT NULL AND instr(words, ' | ') > 0
              THEN json_array(substr(words, 1, instr(words, ' | ') - 1), substr(words, instr(words, ' | ') + 3))
            WHEN step IS NOT NULL THEN json_array(words)
            WHEN line GLOB 'Expect: *' THEN json_array(substr(line, 9)) WHEN line GLOB 'Needs: *' THEN json_array(substr(line, 8))
            WHEN line GLOB 'Note: *' THEN json_array(substr(line, 7)) WHEN line GLOB 'Rests on: *' THEN json_array(substr(line, 11))
            ELSE json_array(line) END,
       step, by_whom, thousandths
  FROM known ORDER BY check_id, place;

CREATE TRIGGER verdict_line_is_never_changed BEFORE UPDATE ON verdict_line
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;
CREATE TRIGGER verdict_line_is_never_deleted BEFORE DELETE ON verdict_line
BEGIN
  SELECT RAISE(ABORT, 'what-was-decided-stays');
END;

-- The text goes: a copy of what the rows say could only come to differ from them. The record has it all the same, in the
-- entry of each check, under its seal; of a column that is no more it compares nothing. What watches the table names each
-- column and is made anew when the folder is opened. The schema is writable meanwhile for one reason: ALTER TABLE tries
-- every trigger of the file, and in a new file the views that some of them look into are made after this.
DROP TRIGGER IF EXISTS record_insert_bow_check;
DROP TRIGGER IF EXISTS record_update_bow_check;
DROP TRIGGER IF EXISTS record_delete_bow_check;
PRAGMA writable_schema = ON;
ALTER TABLE bow_check DROP COLUMN verdict_text;
PRAGMA writable_schema = RESET;
