-- What a bow scale showed on a rig. It is a fact of the limbs (or the one-piece bow) and goes with them to
-- another riser, so the riser that they sat on is kept beside it.
CREATE TABLE scale_reading (
  id          INTEGER PRIMARY KEY,
  rig_id      INTEGER NOT NULL REFERENCES rig (id),
  item_id     INTEGER NOT NULL REFERENCES item (id),
  happened_at TEXT    NOT NULL,
  recorded_at TEXT    NOT NULL,
  weighed_by  INTEGER NOT NULL REFERENCES account (id),
  riser_in    INTEGER CHECK (riser_in BETWEEN 10 AND 35),
  draw_in     REAL    NOT NULL CHECK (draw_in BETWEEN 14 AND 36),
  force_lb    REAL    NOT NULL CHECK (force_lb BETWEEN 2 AND 100)
) STRICT;
CREATE INDEX scale_reading_of_item ON scale_reading (item_id, happened_at);
