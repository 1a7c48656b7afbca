-- How a ganache is used, so that its balance has ranges to stand against; and the calibration of
-- water-activity meters, without which a reading is worth nothing.

ALTER TABLE recipe_version
  ADD COLUMN ganache_use text,
  ADD CONSTRAINT recipe_version_ganache_use
    CHECK (ganache_use IN ('moulded', 'cut', 'piped'));

CREATE TABLE meter_calibration (
  id uuid PRIMARY KEY,
  instrument text NOT NULL,
  checks jsonb NOT NULL,
  passed boolean NOT NULL,
  uncertainty numeric(6, 4) NOT NULL CHECK (uncertainty > 0),
  note text,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE INDEX meter_calibration_instrument_at_idx ON meter_calibration (instrument, at);

CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON meter_calibration
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON meter_calibration
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
