-- While files are taken in nothing is planned row by row: counting every loan of a part again at each of its loans is
-- what an import took longest for, and everyone else waits meanwhile. Once all rows are in, the plan is reckoned anew.

DROP TRIGGER plan_after_item_insert;
CREATE TRIGGER plan_after_item_insert AFTER INSERT ON item
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_riser_insert;
CREATE TRIGGER plan_after_riser_insert AFTER INSERT ON riser
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_limbs_insert;
CREATE TRIGGER plan_after_limbs_insert AFTER INSERT ON limbs
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_bowstring_insert;
CREATE TRIGGER plan_after_bowstring_insert AFTER INSERT ON bowstring
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.id;
END;

DROP TRIGGER plan_after_upkeep_record_insert;
CREATE TRIGGER plan_after_upkeep_record_insert AFTER INSERT ON upkeep_record
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

DROP TRIGGER plan_after_loan_line_insert;
CREATE TRIGGER plan_after_loan_line_insert AFTER INSERT ON loan_line
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
 AND EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

DROP TRIGGER plan_after_upkeep_rule_insert;
CREATE TRIGGER plan_after_upkeep_rule_insert AFTER INSERT ON upkeep_rule
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE rule_id = new.id;
END;

DROP TRIGGER plan_after_upkeep_rule_update;
CREATE TRIGGER plan_after_upkeep_rule_update AFTER UPDATE OF item_kind, build, material, work, every_days, every_loans, every_shots, beyond_percent ON upkeep_rule
WHEN NOT EXISTS (SELECT 1 FROM taking_in)
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned WHERE rule_id = new.id;
END;

CREATE TRIGGER plan_once_all_is_in AFTER DELETE ON taking_in
BEGIN
  DELETE FROM upkeep_plan;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
  SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned;
END;
