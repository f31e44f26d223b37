-- One row, from the first start on: its presence tells that the demo was loaded once. Ranges: shared-types/settings.ts.
CREATE TABLE settings (
  id INTEGER NOT NULL PRIMARY KEY CHECK (id = 1),
  currency TEXT NOT NULL CHECK (currency GLOB '[A-Z][A-Z][A-Z]'),
  theme TEXT NOT NULL CHECK (theme IN ('system', 'light', 'dark')),
  tour_id TEXT REFERENCES tours (id) ON DELETE SET NULL,
  step_min INTEGER NOT NULL CHECK (step_min IN (5, 15, 30, 60))
) STRICT;

-- Less is better for all criteria but the energy margin, hence the turned order of its two bounds.
CREATE TABLE criterion_scales (
  criterion TEXT NOT NULL PRIMARY KEY CHECK (criterion IN ('cost', 'grams', 'frontWheelGrams', 'margin')),
  weight REAL NOT NULL CHECK (weight BETWEEN 0 AND 1),
  satisfied REAL NOT NULL CHECK (satisfied BETWEEN -1000000 AND 1000000),
  unacceptable REAL NOT NULL CHECK (unacceptable BETWEEN -1000000 AND 1000000),
  CONSTRAINT bounds_in_order CHECK (
    CASE criterion WHEN 'margin' THEN unacceptable < satisfied ELSE satisfied < unacceptable END
  )
) STRICT, WITHOUT ROWID;
