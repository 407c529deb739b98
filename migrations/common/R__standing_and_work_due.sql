-- What follows from the facts at any date. Repeatable: changing a derivation changes no table.

DROP VIEW IF EXISTS item_standing;
DROP VIEW IF EXISTS rig_standing;
DROP VIEW IF EXISTS rig_facts;
DROP VIEW IF EXISTS item_blocked;
DROP VIEW IF EXISTS work_due;
DROP VIEW IF EXISTS inspection_failed;
DROP VIEW IF EXISTS report_against;
DROP VIEW IF EXISTS upkeep_reckoned;
DROP VIEW IF EXISTS upkeep_spell;
DROP VIEW IF EXISTS rig_parts;

-- What each assembled rig consists of now, and its set-up in force: the last one finished that was begun
-- after the last part was fitted.
CREATE VIEW rig_parts AS
SELECT r.id AS rig_id, r.style, r.level,
       b.item_id AS body_id, bi.kind AS body_kind, l.item_id AS limbs_id, s.item_id AS string_id,
       (SELECT u.id FROM set_up u WHERE u.rig_id = r.id AND u.finished_at IS NULL) AS open_set_up_id,
       (SELECT u.id FROM set_up u WHERE u.rig_id = r.id AND u.finished_at IS NOT NULL
           AND u.begun_at >= (SELECT max(f.from_at) FROM fitting f WHERE f.rig_id = r.id AND f.until_at IS NULL)
         ORDER BY u.finished_at DESC LIMIT 1) AS set_up_id
  FROM rig r
  LEFT JOIN fitting b ON b.rig_id = r.id AND b.place = 'BODY' AND b.until_at IS NULL
  LEFT JOIN item bi ON bi.id = b.item_id
  LEFT JOIN fitting l ON l.rig_id = r.id AND l.place = 'LIMBS' AND l.until_at IS NULL
  LEFT JOIN fitting s ON s.rig_id = r.id AND s.place = 'STRING' AND s.until_at IS NULL
 WHERE r.dissolved_at IS NULL;

-- How each rule counts for each item, spell by spell: from the day of first use, purchase or entry, and anew from each
-- time the work was passed; a string that was looked at and kept grows no younger. A spell says the day on which the
-- rule asks for the work, the earliest of the days its interval, its count of loans or its count of shots was or will be
-- reached (overdue from the day after), and the day beyond which the thing stays in where the rule allows only so much
-- more. Null: no count was reached and no interval is set. Nothing here depends on the day it is asked on. Days are the
-- club's own (clock_offset): what was passed late in its evening counts from that evening, whatever day UTC writes. The
-- GROUP BY keeps the moment counted from out of the outer query, which names it many times.
CREATE VIEW upkeep_spell AS
SELECT item_id, rule_id, since_at, until_at, retired,
       nullif(min(coalesce(by_days, '9999-12-31'), coalesce(by_loans, '9999-12-31'), coalesce(by_shots, '9999-12-31')), '9999-12-31') AS due_on,
       CASE min(coalesce(by_days, '9999-12-31'), coalesce(by_loans, '9999-12-31'), coalesce(by_shots, '9999-12-31'))
         WHEN by_days THEN every_days || ' days since ' || said
         WHEN by_loans THEN every_loans || ' loans since ' || said
         WHEN by_shots THEN every_shots || ' shots since ' || said
       END AS because,
       CASE WHEN beyond_percent IS NOT NULL THEN
         nullif(min(coalesce(beyond_days, '9999-12-31'), coalesce(beyond_loans, '9999-12-31'), coalesce(beyond_shots, '9999-12-31')), '9999-12-31')
       END AS beyond_on
  FROM (
    SELECT b.*,
           CAST(substr(since_day, 9, 2) AS INTEGER)
             || substr(' Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec ', 4 * CAST(substr(since_day, 6, 2) AS INTEGER) - 3, 5)
             || substr(since_day, 1, 4) AS said,
           date(since_day, '+' || every_days || ' days') AS by_days,
           date(since_day, '+' || (every_days * (100 + beyond_percent) / 100) || ' days') AS beyond_days,
           CASE WHEN every_loans IS NOT NULL THEN
             (SELECT date(d, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= d ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds') FROM (
               SELECT l.out_at AS d, row_number() OVER (ORDER BY l.out_at) AS nth
                 FROM loan_line l WHERE l.item_id = b.item_id AND l.out_at > b.since_at
                  AND l.id NOT IN (SELECT line_id FROM undone_line)) lent
               WHERE nth = every_loans)
           END AS by_loans,
           CASE WHEN every_loans IS NOT NULL AND beyond_percent IS NOT NULL THEN
             (SELECT date(d, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= d ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds') FROM (
               SELECT l.out_at AS d, row_number() OVER (ORDER BY l.out_at) AS nth
                 FROM loan_line l WHERE l.item_id = b.item_id AND l.out_at > b.since_at
                  AND l.id NOT IN (SELECT line_id FROM undone_line)) lent
               WHERE nth = (every_loans * (100 + beyond_percent) + 99) / 100)
           END AS beyond_loans,
           CASE WHEN every_shots IS NOT NULL THEN
             (SELECT date(d, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= d ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds') FROM (SELECT min(d) AS d FROM (
               SELECT l.back_at AS d, sum(l.shots) OVER (ORDER BY l.back_at) AS fired
                 FROM loan_line l WHERE l.item_id = b.item_id AND l.back_at > b.since_at) shot
               WHERE fired >= every_shots) reached)
           END AS by_shots,
           CASE WHEN every_shots IS NOT NULL AND beyond_percent IS NOT NULL THEN
             (SELECT date(d, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= d ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds') FROM (SELECT min(d) AS d FROM (
               SELECT l.back_at AS d, sum(l.shots) OVER (ORDER BY l.back_at) AS fired
                 FROM loan_line l WHERE l.item_id = b.item_id AND l.back_at > b.since_at) shot
               WHERE fired >= (every_shots * (100 + beyond_percent) + 99) / 100) reached)
           END AS beyond_shots
      FROM (
       SELECT g.*,
              CASE WHEN length(since) = 10 THEN since ELSE date(since, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= since ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds') END AS since_day,
              -- a day begins at the club's midnight; without the Z it comes before that very moment
              CASE WHEN length(since) = 10 THEN
                  strftime('%Y-%m-%dT%H:%M:%f', since, -coalesce((SELECT o.ahead_s FROM clock_offset o
                     WHERE o.from_local <= since || 'T00:00:00' ORDER BY o.from_local DESC LIMIT 1), 0) || ' seconds')
                  ELSE since END AS since_at
         FROM (
        SELECT i.id AS item_id, r.id AS rule_id, r.every_days, r.every_loans, r.every_shots, r.beyond_percent,
               i.retired_on IS NOT NULL AS retired,
               coalesce(s.first_used, i.bought_on, i.registered_on) AS since,
               (SELECT min(n.happened_at) FROM upkeep_record n
                 WHERE n.item_id = i.id AND n.work = r.work AND n.result = 'PASSED'
                   AND n.work <> 'STRING_REPLACEMENT') AS until_at
          FROM item i
          JOIN upkeep_rule r ON r.item_kind = i.kind
          LEFT JOIN riser ri ON ri.id = i.id
          LEFT JOIN limbs li ON li.id = i.id
          LEFT JOIN bowstring s ON s.id = i.id
         WHERE (r.build IS NULL OR r.build = coalesce(ri.build, li.build, 'ONE_PIECE'))
           AND (r.material IS NULL OR r.material = s.material)
         GROUP BY i.id, r.id, s.id
        UNION ALL
        SELECT i.id AS item_id, r.id AS rule_id, r.every_days, r.every_loans, r.every_shots, r.beyond_percent,
               i.retired_on IS NOT NULL AS retired,
               u.happened_at AS since,
               (SELECT min(n.happened_at) FROM upkeep_record n
                 WHERE n.item_id = i.id AND n.work = r.work AND n.result = 'PASSED'
                   AND n.work <> 'STRING_REPLACEMENT' AND n.happened_at > u.happened_at) AS until_at
          FROM item i
          JOIN upkeep_rule r ON r.item_kind = i.kind
          JOIN upkeep_record u ON u.item_id = i.id AND u.work = r.work AND u.result = 'PASSED'
                              AND u.work <> 'STRING_REPLACEMENT'
          LEFT JOIN riser ri ON ri.id = i.id
          LEFT JOIN limbs li ON li.id = i.id
          LEFT JOIN bowstring s ON s.id = i.id
         WHERE (r.build IS NULL OR r.build = coalesce(ri.build, li.build, 'ONE_PIECE'))
           AND (r.material IS NULL OR r.material = s.material)
         GROUP BY i.id, r.id, u.happened_at) g) b) spell;

-- The spell that each rule counts now for each item in use. The table upkeep_plan keeps what this view answers, and its
-- triggers ask again after every fact that it rests on.
CREATE VIEW upkeep_reckoned AS
SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_spell WHERE until_at IS NULL AND NOT retired;

-- Every piece of upkeep that an item in use is planned for, and the day it falls due: what the rules plan,
-- and what was asked for out of turn on some day.
CREATE VIEW work_due AS
SELECT p.item_id, r.work, p.rule_id, NULL AS task_id, r.blocks, r.soon_days, p.due_on, p.because
  FROM upkeep_plan p JOIN upkeep_rule r ON r.id = p.rule_id
UNION ALL
SELECT t.item_id, t.work, NULL, t.id, t.blocks, 0,
       date(t.opened_at, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= t.opened_at ORDER BY o.from_at DESC LIMIT 1), 0) || ' seconds'), t.why
  FROM upkeep_task t JOIN item i ON i.id = t.item_id
 WHERE t.closed_by_record IS NULL AND i.retired_on IS NULL;

-- The newest inspection of its work on an item, where it failed: nothing but a later pass takes that back, neither a
-- release nor a spell off the register.
CREATE VIEW inspection_failed AS
SELECT f.id AS record_id, f.item_id, f.work, f.happened_at, f.found FROM upkeep_record f
 WHERE f.result = 'FAILED'
   AND NOT EXISTS (SELECT 1 FROM upkeep_record n WHERE n.item_id = f.item_id AND n.work = f.work
                      AND n.result IN ('PASSED', 'FAILED') AND (n.happened_at, n.id) > (f.happened_at, f.id));

-- What was told of a thing and is not answered.
CREATE VIEW report_against AS
SELECT r.id AS report_id, p.item_id, r.happened_at, r.dangerous
  FROM report r JOIN report_part p ON p.report_id = r.id WHERE r.answer IS NULL;

-- The last day on which an item may leave: after it something keeps it in that is not a withdrawal. Work that was asked
-- for, an inspection that failed and a dangerous report do so at once. Days are the club's own.
CREATE VIEW item_blocked AS
SELECT item_id, min(blocked_from) AS blocked_from FROM (
  SELECT item_id, CASE WHEN task_id IS NULL THEN due_on ELSE date(due_on, '-1 day') END AS blocked_from FROM work_due WHERE blocks = 1
  UNION ALL
  SELECT item_id, beyond_on FROM upkeep_plan WHERE beyond_on IS NOT NULL
  UNION ALL
  SELECT item_id, date(at, coalesce((SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= at ORDER BY o.from_at DESC LIMIT 1), 0)
           || ' seconds', '-1 day')
    FROM (SELECT item_id, happened_at AS at FROM inspection_failed
          UNION ALL SELECT item_id, happened_at FROM report_against WHERE dangerous = 1) told) blocking
 GROUP BY item_id;

-- Facts of each assembled rig, but for the inspections of its parts.
CREATE VIEW rig_facts AS
SELECT p.*,
       EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id IN (p.body_id, p.limbs_id, p.string_id) AND w.released_at IS NULL) AS withdrawn,
       (SELECT l.loan_id FROM loan_line l WHERE l.rig_id = p.rig_id AND l.back_at IS NULL LIMIT 1) AS loan_id,
       (p.open_set_up_id IS NOT NULL OR p.set_up_id IS NULL OR p.body_id IS NULL OR p.string_id IS NULL
         OR (p.limbs_id IS NULL AND p.body_kind <> 'BOW')) AS in_workshop,
       coalesce(p.last_event > p.cleared_at, FALSE) AS needs_check
  FROM (
    SELECT r.*,
           max(coalesce((SELECT max(x.back_at) FROM loan_line x WHERE x.rig_id = r.rig_id AND x.back_at IS NOT NULL), ''),
               coalesce((SELECT max(c.happened_at) FROM bow_check c WHERE c.rig_id = r.rig_id
                            AND c.id NOT IN (SELECT check_id FROM undone_look)), '')) AS last_event,
           max(coalesce((SELECT max(c.happened_at) FROM bow_check c WHERE c.rig_id = r.rig_id AND c.released_at IS NOT NULL
                            AND c.id NOT IN (SELECT check_id FROM undone_look)), ''),
               coalesce((SELECT max(u.finished_at) FROM set_up u WHERE u.rig_id = r.rig_id), '')) AS cleared_at
      FROM rig_parts r) p;

-- Facts of each assembled rig.
CREATE VIEW rig_standing AS
SELECT f.*, d.blocked_from,
       CASE
         WHEN f.withdrawn THEN 'WITHDRAWN'
         WHEN f.loan_id IS NOT NULL THEN 'ON_LOAN'
         WHEN f.in_workshop THEN 'IN_THE_WORKSHOP'
         WHEN f.needs_check THEN 'TO_BE_CHECKED'
         ELSE 'READY'
       END AS state_if_inspected
  FROM rig_facts f
  LEFT JOIN (SELECT g.rig_id, min(b.blocked_from) AS blocked_from
               FROM item_blocked b JOIN fitting g ON g.item_id = b.item_id AND g.until_at IS NULL
              GROUP BY g.rig_id) d ON d.rig_id = f.rig_id;

-- Facts of each item. A fitted part is in the workshop, or waits for a check, with its rig.
CREATE VIEW item_standing AS
SELECT f.*,
       CASE
         WHEN f.retired THEN 'RETIRED'
         WHEN f.withdrawn THEN 'WITHDRAWN'
         WHEN f.loan_id IS NOT NULL THEN 'ON_LOAN'
         WHEN f.in_workshop THEN 'IN_THE_WORKSHOP'
         WHEN f.needs_check THEN 'TO_BE_CHECKED'
         ELSE 'READY'
       END AS state_if_inspected
  FROM (
    SELECT i.id AS item_id, i.code, i.kind,
           i.retired_on IS NOT NULL AS retired,
           EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id AND w.released_at IS NULL) AS withdrawn,
           (SELECT l.loan_id FROM loan_line l WHERE l.item_id = i.id AND l.back_at IS NULL AND l.arrow_count IS NULL) AS loan_id,
           g.rig_id,
           coalesce(r.in_workshop, FALSE) AS in_workshop,
           coalesce(r.needs_check, FALSE) AS needs_check,
           d.blocked_from
      FROM item i
      LEFT JOIN item_blocked d ON d.item_id = i.id
      LEFT JOIN fitting g ON g.item_id = i.id AND g.until_at IS NULL
      LEFT JOIN rig_facts r ON r.rig_id = g.rig_id) f;

-- A derivation changed here holds for what was planned before, too.
DELETE FROM upkeep_plan;
INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)
SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned;
