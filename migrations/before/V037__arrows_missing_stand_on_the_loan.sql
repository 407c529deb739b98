-- A set holds what came back of it; how many of it did not stays with the line they went out on.
ALTER TABLE loan_line ADD COLUMN missing_count INTEGER CHECK (missing_count IS NULL OR (missing_count >= 0 AND back_count IS NOT NULL));
