-- What is kept after an accident is neither changed nor looked over by ourselves: whoever has to see it sees it as it was.
-- What was done before it happened, and is typed in late, is a fact like any other.

CREATE TRIGGER kept_item_is_not_released BEFORE UPDATE OF released_at ON withdrawal
WHEN new.released_at IS NOT NULL AND old.released_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
   WHERE k.item_id = new.item_id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL;
END;

CREATE TRIGGER kept_item_is_not_retired BEFORE UPDATE OF retired_on ON item
WHEN new.retired_on IS NOT NULL AND old.retired_on IS NULL
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
   WHERE k.item_id = new.id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL;
END;

CREATE TRIGGER kept_item_stays_fitted BEFORE UPDATE ON fitting
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
   WHERE k.item_id = old.item_id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL;
END;

CREATE TRIGGER kept_item_keeps_its_fittings BEFORE DELETE ON fitting
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
   WHERE k.item_id = old.item_id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL;
END;

-- Nor is anything else fitted to its bow, or the bow would no longer be what it was.
CREATE TRIGGER kept_bow_takes_no_part BEFORE INSERT ON fitting WHEN new.until_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
    LEFT JOIN fitting f ON f.item_id = k.item_id AND f.until_at IS NULL
   WHERE (k.item_id = new.item_id OR f.rig_id = new.rig_id) AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL;
END;

CREATE TRIGGER kept_bow_is_not_adjusted BEFORE INSERT ON adjustment
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM fitting f JOIN accident_item k ON k.item_id = f.item_id
    JOIN accident a ON a.id = k.accident_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL
     AND new.happened_at >= a.happened_at;
END;

CREATE TRIGGER kept_bow_is_not_set_up BEFORE INSERT ON set_up
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM fitting f JOIN accident_item k ON k.item_id = f.item_id
    JOIN accident a ON a.id = k.accident_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL
     AND new.begun_at >= a.happened_at;
END;

CREATE TRIGGER kept_bow_finishes_no_set_up BEFORE UPDATE OF finished_at ON set_up
WHEN new.finished_at IS NOT NULL AND old.finished_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM fitting f JOIN accident_item k ON k.item_id = f.item_id
    JOIN accident a ON a.id = k.accident_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL
     AND new.finished_at >= a.happened_at;
END;

CREATE TRIGGER kept_bow_is_not_drawn_to_weigh_it BEFORE INSERT ON scale_reading
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM fitting f JOIN accident_item k ON k.item_id = f.item_id
    JOIN accident a ON a.id = k.accident_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL
     AND new.happened_at >= a.happened_at;
END;

CREATE TRIGGER kept_item_is_not_worked_on BEFORE INSERT ON upkeep_record
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
   WHERE k.item_id = new.item_id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL
     AND new.happened_at >= a.happened_at;
END;

CREATE TRIGGER kept_item_is_not_decided_on BEFORE UPDATE OF decided_at ON withdrawal
WHEN new.decided_at IS NOT NULL AND old.decided_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident_item k JOIN accident a ON a.id = k.accident_id
   WHERE k.item_id = new.item_id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL;
END;

-- A look after a session says only that the bow came back.
CREATE TRIGGER kept_bow_is_not_checked BEFORE INSERT ON bow_check WHEN new.kind = 'CHECK'
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM fitting f JOIN accident_item k ON k.item_id = f.item_id
    JOIN accident a ON a.id = k.accident_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL
     AND new.happened_at >= a.happened_at;
END;

-- Of a session one bow is kept, and the others go on.
CREATE TRIGGER kept_kit_takes_nothing_more BEFORE INSERT ON loan_line WHEN new.back_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'kept-as-it-is') FROM accident a JOIN loan l ON l.id = a.loan_id AND l.kind = 'KIT'
    JOIN accident_item k ON k.accident_id = a.id AND k.withdrawal_id IS NOT NULL
   WHERE a.loan_id = new.loan_id AND a.ended_at IS NULL AND new.out_at >= a.happened_at;
END;
