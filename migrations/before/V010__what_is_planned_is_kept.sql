-- What the view upkeep_reckoned answers, kept: nearly every page asks whether an inspection is overdue, and
-- counting every loan and shot for each of them would cost more than all the rest of the page. The triggers
-- ask the view again after each fact that it rests on, in the same transaction; a test holds the two together.
CREATE TABLE upkeep_plan (
  item_id INTEGER NOT NULL REFERENCES item (id),
  rule_id INTEGER NOT NULL REFERENCES upkeep_rule (id),
  due_on  TEXT,
  because TEXT,
  PRIMARY KEY (item_id, rule_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX upkeep_plan_by_day ON upkeep_plan (due_on);
CREATE INDEX upkeep_plan_of_rule ON upkeep_plan (rule_id);

CREATE TRIGGER plan_after_item_insert AFTER INSERT ON item
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_item_update AFTER UPDATE OF bought_on, registered_on, retired_on ON item
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_riser_insert AFTER INSERT ON riser
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_riser_update AFTER UPDATE OF build ON riser
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_limbs_insert AFTER INSERT ON limbs
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_limbs_update AFTER UPDATE OF build ON limbs
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_bowstring_insert AFTER INSERT ON bowstring
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_bowstring_update AFTER UPDATE OF material, first_used ON bowstring
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.id;
END;

CREATE TRIGGER plan_after_upkeep_record_insert AFTER INSERT ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

CREATE TRIGGER plan_after_upkeep_record_update AFTER UPDATE OF item_id, work, happened_at, result ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id IN (old.item_id, new.item_id);
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id IN (old.item_id, new.item_id);
END;

CREATE TRIGGER plan_after_upkeep_record_delete AFTER DELETE ON upkeep_record
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = old.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = old.item_id;
END;

CREATE TRIGGER plan_after_loan_line_insert AFTER INSERT ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = new.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = new.item_id;
END;

CREATE TRIGGER plan_after_loan_line_update AFTER UPDATE OF item_id, out_at, back_at, shots ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = new.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id IN (old.item_id, new.item_id);
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id IN (old.item_id, new.item_id);
END;

CREATE TRIGGER plan_after_loan_line_delete AFTER DELETE ON loan_line
WHEN EXISTS (SELECT 1 FROM item i JOIN upkeep_rule r ON r.item_kind = i.kind
              WHERE i.id = old.item_id AND (r.every_loans IS NOT NULL OR r.every_shots IS NOT NULL))
BEGIN
  DELETE FROM upkeep_plan WHERE item_id = old.item_id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE item_id = old.item_id;
END;

CREATE TRIGGER plan_after_upkeep_rule_insert AFTER INSERT ON upkeep_rule
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE rule_id = new.id;
END;

CREATE TRIGGER plan_after_upkeep_rule_update AFTER UPDATE ON upkeep_rule
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = new.id;
  INSERT INTO upkeep_plan (item_id, rule_id, due_on, because)
  SELECT item_id, rule_id, due_on, because FROM upkeep_reckoned WHERE rule_id = new.id;
END;

CREATE TRIGGER plan_before_upkeep_rule_delete BEFORE DELETE ON upkeep_rule
BEGIN
  DELETE FROM upkeep_plan WHERE rule_id = old.id;
END;
