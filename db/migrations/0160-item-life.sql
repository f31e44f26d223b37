-- How long an item serves and what it fetches afterwards, where the rider knows. Ranges: `itemCommon` in
-- shared-types/item-common.ts.
ALTER TABLE items ADD COLUMN life_years REAL CHECK (life_years BETWEEN 0.5 AND 50);
ALTER TABLE items ADD COLUMN resale_minor INTEGER CHECK (resale_minor BETWEEN 0 AND 100000000);
ALTER TABLE items ADD COLUMN resale_currency TEXT CHECK (resale_currency GLOB '[A-Z][A-Z][A-Z]')
  CONSTRAINT resale_with_its_currency CHECK ((resale_minor IS NULL) = (resale_currency IS NULL));
