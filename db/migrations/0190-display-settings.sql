-- In which units and number format figures are shown; what is stored stays metric. Choices: shared-types/display-settings.ts.
ALTER TABLE settings ADD COLUMN units TEXT NOT NULL DEFAULT 'metric' CHECK (units IN ('metric', 'imperial'));
ALTER TABLE settings ADD COLUMN number_format TEXT NOT NULL DEFAULT 'system'
  CHECK (number_format IN ('system', 'en-GB', 'de-DE', 'fr-FR', 'es-ES', 'de-CH', 'en-IN'));
