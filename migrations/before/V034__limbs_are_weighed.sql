-- How often limbs belong on the bow scale, in days; null: by no rule. A year is judged. Late, it is a note and keeps
-- nothing in: a club may have no scale.
ALTER TABLE club ADD COLUMN weigh_limbs_days INTEGER DEFAULT 365 CHECK (weigh_limbs_days BETWEEN 30 AND 4000);

-- Work may be asked for by the scale. Nothing on disk changes with one more word in this list, so that the table need not
-- be made anew with all its triggers: the way of SQLite's own page on ALTER TABLE for a change of a constraint.
PRAGMA writable_schema = ON;
UPDATE sqlite_schema
   SET sql = replace(sql, 'CHECK (cause IN (''ASKED'', ''CHANGING'', ''REPORTED'', ''FOUND_AGAIN'', ''WITHDRAWN''))',
                          'CHECK (cause IN (''ASKED'', ''CHANGING'', ''REPORTED'', ''FOUND_AGAIN'', ''WITHDRAWN'', ''WEIGHED''))')
 WHERE type = 'table' AND name = 'upkeep_task';
PRAGMA writable_schema = RESET;
