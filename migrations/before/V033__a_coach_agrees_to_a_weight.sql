-- Above the ceiling of an archer's age a coach agrees and says why. Both are kept with the loan, and in a session, where
-- each rig is shared by several, with the archer.
ALTER TABLE loan ADD COLUMN override_coach TEXT
  CHECK (override_coach IS NULL OR (override_why IS NOT NULL AND length(override_coach) BETWEEN 2 AND 80));

-- Null: noted before the age was asked.
ALTER TABLE session_archer ADD COLUMN age_band TEXT
  CHECK (age_band IN ('UP_TO_12', 'FROM_13_TO_14', 'FROM_15_TO_16', 'FROM_17_TO_18', 'ADULT'));
ALTER TABLE session_archer ADD COLUMN override_why TEXT;
ALTER TABLE session_archer ADD COLUMN override_coach TEXT
  CHECK (override_coach IS NULL OR (override_why IS NOT NULL AND length(override_coach) BETWEEN 2 AND 80));
