-- What an open withdrawal needs is decided before it is released: a work, or that no inspection fits and why.
-- Withdrawals of before keep what they had: the columns are empty there.
ALTER TABLE withdrawal ADD COLUMN decided_by INTEGER REFERENCES account (id);
ALTER TABLE withdrawal ADD COLUMN decided_at TEXT
  CHECK ((decided_at IS NULL) = (decided_by IS NULL))
  CHECK (decided_at IS NULL OR decided_at >= happened_at);
ALTER TABLE withdrawal ADD COLUMN no_work_why TEXT
  CHECK (no_work_why IS NULL OR (work IS NULL AND decided_at IS NOT NULL AND length(no_work_why) > 0));

-- What was looked at before the release, and by whom: a person of the club, or someone by name.
ALTER TABLE withdrawal ADD COLUMN looked_at TEXT CHECK (looked_at IS NULL OR (released_at IS NOT NULL AND length(looked_at) > 0));
ALTER TABLE withdrawal ADD COLUMN looked_by INTEGER REFERENCES account (id);
ALTER TABLE withdrawal ADD COLUMN looked_by_name TEXT CHECK (looked_by_name IS NULL OR (looked_by IS NULL AND length(looked_by_name) > 0));

-- History that comes in from a file is inserted as it was; a release from now on is a change of an open row.
CREATE TRIGGER withdrawal_released_once_seen BEFORE UPDATE OF released_at ON withdrawal
WHEN new.released_at IS NOT NULL AND old.released_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'released-before-decided') WHERE new.work IS NULL AND new.no_work_why IS NULL;
  SELECT RAISE(ABORT, 'released-before-looked-at')
   WHERE new.looked_at IS NULL OR (new.looked_by IS NULL AND new.looked_by_name IS NULL);
  -- What was asked for is passed since it was asked for.
  SELECT RAISE(ABORT, 'released-before-passed')
   WHERE new.work IS NOT NULL AND NOT EXISTS (
     SELECT 1 FROM upkeep_record u
      WHERE u.item_id = new.item_id AND u.work = new.work AND u.result = 'PASSED'
        AND u.happened_at >= coalesce(new.decided_at, new.happened_at));
  -- And nothing that was failed waits for its pass.
  SELECT RAISE(ABORT, 'released-though-failed') FROM upkeep_record u
   WHERE u.item_id = new.item_id AND u.result = 'FAILED'
     AND NOT EXISTS (SELECT 1 FROM upkeep_record p
                      WHERE p.item_id = u.item_id AND p.work = u.work AND p.result = 'PASSED'
                        AND (p.happened_at, p.id) > (u.happened_at, u.id));
END;
