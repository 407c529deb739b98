-- Whoever buys or is given a thing knows nothing of what stands against it here.
CREATE TRIGGER withdrawn_item_is_not_sold BEFORE UPDATE OF retired_on ON item
WHEN new.retired_on IS NOT NULL AND old.retired_on IS NULL AND new.retired_why = 'SOLD'
BEGIN
  SELECT RAISE(ABORT, 'sold-item-is-withdrawn') FROM withdrawal w WHERE w.item_id = new.id AND w.released_at IS NULL;
END;
