-- Extra criteria, each counted or not, and limits that leave a scenario out. Ranges: shared-types/settings.ts and limits.ts;
-- defaults: `usualExtras` and `noLimits` there.
CREATE TABLE scales_with_extras (
  criterion TEXT NOT NULL PRIMARY KEY CHECK (
    criterion IN ('cost', 'grams', 'frontWheelGrams', 'margin', 'risk', 'minutesLost', 'daysWithoutWall')
  ),
  weight REAL NOT NULL CHECK (weight BETWEEN 0 AND 1),
  satisfied REAL NOT NULL CHECK (satisfied BETWEEN -1000000 AND 1000000),
  unacceptable REAL NOT NULL CHECK (unacceptable BETWEEN -1000000 AND 1000000),
  -- NULL where there is no choice: the four of the core count always.
  counted INTEGER CHECK (counted IN (0, 1)),
  CONSTRAINT choice_for_extras CHECK (
    (counted IS NULL) = (criterion IN ('cost', 'grams', 'frontWheelGrams', 'margin'))
  ),
  -- Less is better for all but two.
  CONSTRAINT bounds_in_order CHECK (
    CASE WHEN criterion IN ('margin', 'daysWithoutWall') THEN unacceptable < satisfied ELSE satisfied < unacceptable END
  )
) STRICT, WITHOUT ROWID;

INSERT INTO scales_with_extras (criterion, weight, satisfied, unacceptable)
  SELECT criterion, weight, satisfied, unacceptable FROM criterion_scales;

WITH extras (criterion, weight, satisfied, unacceptable, counted) AS (
  VALUES ('risk', 0.2, 0.0, 0.1, 0), ('minutesLost', 0.2, 0.0, 20.0, 0), ('daysWithoutWall', 0.2, 7.0, 2.0, 0)
)
INSERT INTO scales_with_extras (criterion, weight, satisfied, unacceptable, counted)
  SELECT extras.criterion, extras.weight, extras.satisfied, extras.unacceptable, extras.counted FROM extras, settings;

DROP TABLE criterion_scales;
ALTER TABLE scales_with_extras RENAME TO criterion_scales;

ALTER TABLE settings ADD COLUMN limit_to_buy REAL CHECK (limit_to_buy BETWEEN 0 AND 1000000);
ALTER TABLE settings ADD COLUMN limit_g REAL CHECK (limit_g BETWEEN 0 AND 1000000);
ALTER TABLE settings ADD COLUMN limit_front_wheel_g REAL CHECK (limit_front_wheel_g BETWEEN 0 AND 1000000);
ALTER TABLE settings ADD COLUMN limit_margin REAL CHECK (limit_margin BETWEEN -1 AND 3);
ALTER TABLE settings ADD COLUMN limit_by_air INTEGER NOT NULL DEFAULT 0 CHECK (limit_by_air IN (0, 1));
