-- The nights of a leg are a pattern, which repeats in the order of position, or a list, night by night: as many as the longest
-- tour has. `nights` in shared-types/tour.ts; older legs had patterns.
ALTER TABLE legs ADD COLUMN nights_by TEXT NOT NULL DEFAULT 'pattern'
  CHECK (nights_by IN ('pattern', 'list'));

CREATE TABLE leg_nights_of_a_year (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  position INTEGER NOT NULL CHECK (position BETWEEN 0 AND 365),
  night TEXT NOT NULL CHECK (night IN ('wall', 'electric-post', 'none')),
  PRIMARY KEY (tour_id, leg_position, position),
  FOREIGN KEY (tour_id, leg_position) REFERENCES legs (tour_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

INSERT INTO leg_nights_of_a_year (tour_id, leg_position, position, night)
SELECT tour_id, leg_position, position, night FROM leg_nights;

DROP TABLE leg_nights;
ALTER TABLE leg_nights_of_a_year RENAME TO leg_nights;
