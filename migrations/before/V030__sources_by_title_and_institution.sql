-- Sources name title, institution and year. Where a club wrote its own, it stays.
UPDATE upkeep_rule SET source = 'Published ages differ: 2 to 3 years in normal use is common practice; 3,000 to 5,000 shots or two years (Archery Magazine, second quarter of 2015, as a coach''s page quotes it). The stricter pair, middle of the shots.'
 WHERE source = 'Published ages differ: 2 to 3 years in normal use (endeavourarchery.com); 3,000 to 5,000 shots or two years (a coach quoted at puttingitontheline.com, 2015). The stricter pair, middle of the shots.';
UPDATE upkeep_rule SET source = 'Common practice: half a year or a season of beginners. Locking screws can shake out unnoticed (a coach''s page, 2016).'
 WHERE source = 'Common practice: half a year or a season of beginners. Locking screws can shake out unnoticed (archerycoach.wordpress.com, 2016).';
UPDATE upkeep_rule SET source = 'Season start (“Vérifications et préréglages de son arc classique”, Archers de Rixheim, after the French federation (FFTA), undated); yearly in a maker''s manual, 2005.'
 WHERE source = 'Season start (archers-rixheim.fr, after the French federation); yearly in a maker''s manual (Hoyt, 2005).';
UPDATE upkeep_rule SET source = 'Common practice for sets on loan; before each shot by the archer (“Safety”, Archery Australia, undated).'
 WHERE source = 'Common practice for sets on loan; before each shot by the archer (archery.org.au/safety).';
UPDATE club SET twists_source = '10 to 30 turns: “Réglage du band”, La Flèche Gasconne, undated; 20 to 60: “La corde”, Archers de Douai, from a coaches'' academy, undated'
 WHERE twists_source = '10 to 30 turns: laflechegasconne.fr, after the French federation; 20 to 60: archers-douai.fr, lancasterarchery.com';

-- In a record that is kept already, what was changed above belongs to a sentence.
INSERT INTO story (happened_at, recorded_at, sentence)
SELECT strftime('%Y-%m-%dT%H:%M:%fZ', 'now'), strftime('%Y-%m-%dT%H:%M:%fZ', 'now'),
       'Sources that came with the program are named by title, institution and year; no rule changed.'
 WHERE (SELECT max(story_id) FROM change) > (SELECT coalesce(max(id), -1) FROM story);
