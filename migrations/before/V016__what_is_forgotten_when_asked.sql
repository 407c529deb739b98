-- An account whose holder asked to be forgotten is a number from then on, as a borrower is.
ALTER TABLE account ADD COLUMN erased_on TEXT;

-- A reason is free text and may name somebody: the seal covers the hash of salt and reason, so that the reason
-- can be erased and the chain stays whole. (Null beside a reason: the seal covers the reason itself.)
ALTER TABLE story ADD COLUMN why_salt TEXT;
ALTER TABLE story ADD COLUMN why_hash TEXT CHECK (length(why_hash) = 64);

DROP TRIGGER story_is_never_changed;
CREATE TRIGGER story_is_never_changed
BEFORE UPDATE OF id, happened_at, recorded_at, account_id, sentence, why, why_salt, why_hash, loan_id ON story
WHEN new.id <> old.id OR new.happened_at <> old.happened_at OR new.recorded_at <> old.recorded_at
  OR new.account_id IS NOT old.account_id OR new.sentence <> old.sentence OR new.loan_id IS NOT old.loan_id
  OR NOT (
    (old.hash IS NULL AND new.why IS old.why)
    OR (old.why_hash IS NOT NULL AND new.why_hash = old.why_hash AND new.why IS NULL AND new.why_salt IS NULL))
BEGIN
  SELECT RAISE(ABORT, 'story-is-never-changed');
END;
