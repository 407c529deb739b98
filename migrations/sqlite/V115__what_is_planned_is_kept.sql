-- The plan is asked of its view again after each fact that it rests on. While files are taken in nothing is planned row by
-- row: counting every loan of a part again at each of its loans is what an import took longest for, and everyone else waits
-- meanwhile. Once all rows are in, it is reckoned anew.

CREATE TRIGGER plan_after_item_insert AFTER INSERT ON item
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_item_update AFTER UPDATE OF bought_on, registered_on, retired_on ON item
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_riser_insert AFTER INSERT ON riser
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_riser_update AFTER UPDATE OF build ON riser
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_limbs_insert AFTER INSERT ON limbs
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_limbs_update AFTER UPDATE OF build ON limbs
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_bowstring_insert AFTER INSERT ON bowstring
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_bowstring_update AFTER UPDATE OF material, first_used ON bowstring
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_upkeep_record_insert AFTER INSERT ON upkeep_record
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

CREATE TRIGGER plan_after_upkeep_record_update AFTER UPDATE OF item_id, work, happened_at, result ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id IN (old.item_id, new.item_id);
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id IN (old.item_id, new.item_id);
END;

CREATE TRIGGER plan_after_upkeep_record_delete AFTER DELETE ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = old.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = old.item_id;
END;

CREATE TRIGGER plan_after_loan_line_insert AFTER INSERT ON loan_line
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
 AND EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

CREATE TRIGGER plan_after_loan_line_update AFTER UPDATE OF item_id, out_at, back_at, shots ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id IN (old.item_id, new.item_id);
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id IN (old.item_id, new.item_id);
END;

CREATE TRIGGER plan_after_loan_line_delete AFTER DELETE ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = old.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = old.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = old.item_id;
END;

CREATE TRIGGER plan_after_upkeep_rule_insert AFTER INSERT ON upkeep_rule
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE rule_id = new.id;
END;

CREATE TRIGGER plan_after_upkeep_rule_update AFTER UPDATE OF item_kind, build, material, work, every_days, every_loans, every_shots, beyond_percent ON upkeep_rule
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE rule_id = new.id;
END;

CREATE TRIGGER plan_before_upkeep_rule_delete BEFORE DELETE ON upkeep_rule
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = old.id;
END;

CREATE TRIGGER plan_once_all_is_in AFTER DELETE ON taking_in
BEGIN
  DELETE FROM upkeep_plan;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned;
END;
