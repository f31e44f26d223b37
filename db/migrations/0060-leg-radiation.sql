-- The rider's own mean daily radiation on a horizontal plane: twelve rows for a leg, 1 is January. A leg without rows takes
-- the sunshine of its station. The range is that of shared-types/tour.ts.
CREATE TABLE leg_radiation (
  tour_id TEXT NOT NULL,
  leg_position INTEGER NOT NULL,
  month INTEGER NOT NULL CHECK (month BETWEEN 1 AND 12),
  kwh_per_m2_a_day REAL NOT NULL CHECK (kwh_per_m2_a_day BETWEEN 0 AND 13.5),
  PRIMARY KEY (tour_id, leg_position, month),
  FOREIGN KEY (tour_id, leg_position) REFERENCES legs (tour_id, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
