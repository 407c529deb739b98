-- How many twists this club takes as sound; to start with, the lowest and the highest figure in print.
ALTER TABLE club ADD COLUMN fewest_twists INTEGER NOT NULL DEFAULT 10 CHECK (fewest_twists BETWEEN 0 AND 140);
ALTER TABLE club ADD COLUMN most_twists INTEGER NOT NULL DEFAULT 60
  CHECK (most_twists BETWEEN fewest_twists + 10 AND 150);
ALTER TABLE club ADD COLUMN twists_source TEXT NOT NULL
  DEFAULT '10 to 30 turns: laflechegasconne.fr, after the French federation; 20 to 60: archers-douai.fr, lancasterarchery.com'
  CHECK (length(twists_source) BETWEEN 1 AND 500);
