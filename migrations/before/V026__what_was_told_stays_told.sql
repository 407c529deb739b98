-- What was told of a bow stands until a person answers it, and an answer stands too: no later check forgets either.

CREATE TRIGGER report_stays_answered BEFORE UPDATE OF answer ON report
WHEN old.answer IS NOT NULL AND new.answer IS NOT old.answer
BEGIN
  SELECT RAISE(ABORT, 'report-is-answered');
END;

-- A person's release of a check, while something told of a part of its bow is open.
CREATE TRIGGER bow_check_not_released_unanswered BEFORE UPDATE OF released_at ON bow_check
WHEN old.released_at IS NULL AND new.released_at IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'released-bow-has-an-open-report')
    FROM fitting f JOIN report_part p ON p.item_id = f.item_id JOIN report r ON r.id = p.report_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND r.answer IS NULL;
END;
