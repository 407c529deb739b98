-- Where a club starts: edited on the rules page. Sources are those the trade publishes; the rest says so.
INSERT INTO upkeep_rule (item_kind, build, material, work, every_days, every_loans, every_shots, soon_days, blocks, source) VALUES
  ('STRING', NULL, NULL, 'STRING_REPLACEMENT', 730, NULL, 4000, 90, 0, 'Published ages differ: 2 to 3 years in normal use (endeavourarchery.com); 3,000 to 5,000 shots or two years (a coach quoted at puttingitontheline.com, 2015). The stricter pair, middle of the shots.'),
  ('RISER', 'ADJUSTABLE', NULL, 'BOLT_INSPECTION', 180, 12, NULL, 21, 1, 'Common practice: half a year or a season of beginners. Locking screws can shake out unnoticed (archerycoach.wordpress.com, 2016).'),
  ('RISER', 'SCREW_IN', NULL, 'BOLT_INSPECTION', 180, 12, NULL, 21, 1, 'Common practice: half a year or a season of beginners; thread, seat, washer and tightness of a bolted limb.'),
  ('RISER', NULL, NULL, 'RISER_INSPECTION', 365, NULL, NULL, 30, 1, 'Season start (archers-rixheim.fr, after the French federation); yearly in a maker''s manual (Hoyt, 2005).'),
  ('LIMBS', NULL, NULL, 'LIMB_INSPECTION', 365, NULL, NULL, 30, 1, 'Season start (archers-rixheim.fr, after the French federation); yearly in a maker''s manual (Hoyt, 2005).'),
  ('BOW', NULL, NULL, 'LIMB_INSPECTION', 365, NULL, NULL, 30, 1, 'Season start (archers-rixheim.fr, after the French federation); yearly in a maker''s manual (Hoyt, 2005).'),
  ('STRINGER', NULL, NULL, 'STRINGER_INSPECTION', 365, NULL, NULL, 30, 1, 'Common practice: cord, stitching and saddle rubber once a year.'),
  ('ARROWS', NULL, NULL, 'ARROW_INSPECTION', 180, 10, NULL, 21, 0, 'Common practice for sets on loan; before each shot by the archer (archery.org.au/safety).');
