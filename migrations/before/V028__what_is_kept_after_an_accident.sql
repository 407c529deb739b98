-- After an accident, what was in somebody's hands stays as it was until an officer says that nobody has to look at it
-- any more. The things themselves are withdrawn besides; a withdrawal that was open before stands.
CREATE TABLE accident (
  id          INTEGER PRIMARY KEY,
  loan_id     INTEGER REFERENCES loan (id),
  rig_id      INTEGER REFERENCES rig (id),
  happened_at TEXT    NOT NULL,
  recorded_at TEXT    NOT NULL,
  told_by     INTEGER NOT NULL REFERENCES account (id),
  words       TEXT    NOT NULL CHECK (length(words) > 0),
  ended_at    TEXT    CHECK (ended_at >= recorded_at),
  ended_by    INTEGER REFERENCES account (id),
  end_why     TEXT,
  CHECK (loan_id IS NOT NULL OR rig_id IS NOT NULL),
  CHECK ((ended_at IS NULL) = (ended_by IS NULL) AND (ended_at IS NULL) = (end_why IS NULL)),
  CHECK (end_why IS NULL OR length(end_why) > 0)
) STRICT;
CREATE INDEX accident_of_loan ON accident (loan_id);
CREATE INDEX accident_of_rig ON accident (rig_id);

-- What was in hand. Arrows given out of a pool by count have no withdrawal: the pool is not what was shot, and the six
-- of them are laid aside by hand. Neither has what was off the register before the accident was told.
CREATE TABLE accident_item (
  id            INTEGER PRIMARY KEY,
  accident_id   INTEGER NOT NULL REFERENCES accident (id),
  item_id       INTEGER NOT NULL REFERENCES item (id),
  rig_id        INTEGER REFERENCES rig (id),
  arrow_count   INTEGER CHECK (arrow_count > 0),
  withdrawal_id INTEGER REFERENCES withdrawal (id),
  UNIQUE (accident_id, item_id)
) STRICT;
CREATE INDEX accident_item_of_item ON accident_item (item_id);

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

-- What was done before it happened, and is typed in late, is a fact like any other.
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
