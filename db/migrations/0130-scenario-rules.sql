-- What a campsite post feeds, who waits when stores run short, and where cells sleep. Defaults: `usualRules` in
-- shared-types/scenario.ts.
ALTER TABLE scenarios ADD COLUMN at_post TEXT NOT NULL DEFAULT 'devices-too'
  CHECK (at_post IN ('devices-too', 'banks-only'));
ALTER TABLE scenarios ADD COLUMN when_short TEXT NOT NULL DEFAULT 'nice-to-haves-wait'
  CHECK (when_short IN ('nice-to-haves-wait', 'serve-all'));
ALTER TABLE scenarios ADD COLUMN cells_sleep TEXT NOT NULL DEFAULT 'tent'
  CHECK (cells_sleep IN ('tent', 'sleeping-bag', 'outside'));
