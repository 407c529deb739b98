-- Rules that cross tables. The name in RAISE is what the message to the person is made from.

CREATE TRIGGER fitting_refuses_retired_or_withdrawn BEFORE INSERT ON fitting WHEN new.until_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'fitted-part-is-retired') FROM item WHERE id = new.item_id AND retired_on IS NOT NULL;
  SELECT RAISE(ABORT, 'fitted-part-is-withdrawn') FROM withdrawal WHERE item_id = new.item_id AND released_at IS NULL;
  SELECT RAISE(ABORT, 'fitted-part-has-wrong-place') FROM item
   WHERE id = new.item_id
     AND NOT ((new.place = 'BODY' AND kind IN ('RISER', 'BOW')) OR (new.place = 'LIMBS' AND kind = 'LIMBS') OR (new.place = 'STRING' AND kind = 'STRING'));
  SELECT RAISE(ABORT, 'one-piece-bow-takes-no-limbs') FROM fitting f JOIN item i ON i.id = f.item_id
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL
     AND ((new.place = 'LIMBS' AND i.kind = 'BOW')
       OR (f.place = 'LIMBS' AND (SELECT kind FROM item WHERE id = new.item_id) = 'BOW'));
  SELECT RAISE(ABORT, 'rig-is-dissolved') FROM rig WHERE id = new.rig_id AND dissolved_at IS NOT NULL;
END;

CREATE TRIGGER rig_on_loan_is_not_dissolved BEFORE UPDATE OF dissolved_at ON rig WHEN new.dissolved_at IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'rig-is-on-loan') FROM loan_line l WHERE l.rig_id = new.id AND l.back_at IS NULL;
  SELECT RAISE(ABORT, 'rig-still-has-parts') FROM fitting f WHERE f.rig_id = new.id AND f.until_at IS NULL;
END;

CREATE TRIGGER item_retires_only_when_free BEFORE UPDATE OF retired_on ON item
WHEN new.retired_on IS NOT NULL AND old.retired_on IS NULL
BEGIN
  SELECT RAISE(ABORT, 'retired-item-is-fitted') FROM fitting WHERE item_id = new.id AND until_at IS NULL;
  SELECT RAISE(ABORT, 'retired-item-is-on-loan') FROM loan_line WHERE item_id = new.id AND back_at IS NULL;
END;

CREATE TRIGGER item_kind_is_fixed BEFORE UPDATE OF kind, code ON item WHEN new.kind <> old.kind OR new.code <> old.code
BEGIN
  SELECT RAISE(ABORT, 'item-code-and-kind-are-fixed');
END;

CREATE TRIGGER loan_line_refuses_unfit BEFORE INSERT ON loan_line WHEN new.back_at IS NULL
BEGIN
  SELECT RAISE(ABORT, 'lent-item-is-retired') FROM item WHERE id = new.item_id AND retired_on IS NOT NULL;
  SELECT RAISE(ABORT, 'lent-item-is-withdrawn') FROM withdrawal WHERE item_id = new.item_id AND released_at IS NULL;
  SELECT RAISE(ABORT, 'lent-part-is-not-fitted-to-that-rig') WHERE new.rig_id IS NOT NULL
     AND NOT EXISTS (SELECT 1 FROM fitting WHERE rig_id = new.rig_id AND item_id = new.item_id AND until_at IS NULL);
  SELECT RAISE(ABORT, 'lent-rig-has-a-withdrawn-part') FROM fitting f JOIN withdrawal w ON w.item_id = f.item_id AND w.released_at IS NULL
   WHERE f.rig_id = new.rig_id AND f.until_at IS NULL;
  SELECT RAISE(ABORT, 'lent-rig-has-no-complete-set-up') WHERE new.rig_id IS NOT NULL AND NOT EXISTS (
    SELECT 1 FROM set_up s WHERE s.rig_id = new.rig_id AND s.finished_at IS NOT NULL);
  SELECT RAISE(ABORT, 'lent-pool-has-too-few-arrows') FROM kit_item k
   WHERE k.id = new.item_id AND k.pool = 1 AND k.arrow_count < coalesce(new.arrow_count, 0)
      + coalesce((SELECT sum(arrow_count) FROM loan_line WHERE item_id = k.id AND back_at IS NULL), 0);
  SELECT RAISE(ABORT, 'pool-is-lent-by-count') FROM kit_item k
   WHERE k.id = new.item_id AND (k.pool = 1) <> (new.arrow_count IS NOT NULL);
END;
