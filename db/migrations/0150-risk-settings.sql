-- How sure the energy margin is to be, and how use strays from day to day. Ranges and defaults: `risk` and `usualRisk` in
-- shared-types/settings.ts.
ALTER TABLE settings ADD COLUMN risk_confidence REAL NOT NULL DEFAULT 0.9
  CHECK (risk_confidence BETWEEN 0.5 AND 0.99);
ALTER TABLE settings ADD COLUMN risk_use_spread REAL NOT NULL DEFAULT 0.25
  CHECK (risk_use_spread BETWEEN 0 AND 1);
