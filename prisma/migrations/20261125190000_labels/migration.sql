-- What people decided about cross-contact, and weighings of filled packs.

CREATE TABLE contact_decision (
  id uuid PRIMARY KEY,
  item_id uuid NOT NULL REFERENCES item (id),
  market text NOT NULL CHECK (market IN ('EU', 'GB', 'NI', 'US')),
  allergen text NOT NULL,
  decision text NOT NULL CHECK (decision IN ('state', 'leave_out')),
  reason text NOT NULL CHECK (length(btrim(reason)) > 0),
  assessment jsonb NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE INDEX contact_decision_item_id_market_allergen_at_idx
  ON contact_decision (item_id, market, allergen, at);

CREATE TABLE quantity_check (
  id uuid PRIMARY KEY,
  lot_id uuid NOT NULL REFERENCES lot (id),
  nominal_g numeric(14, 3) NOT NULL CHECK (nominal_g > 0),
  batch_size integer NOT NULL CHECK (batch_size > 0),
  destructive boolean NOT NULL,
  net_weights_g numeric(14, 3)[] NOT NULL,
  state text NOT NULL CHECK (state IN ('accepted', 'rejected', 'weigh_more', 'not_judged')),
  result jsonb NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE INDEX quantity_check_lot_id_at_idx ON quantity_check (lot_id, at);

DO $$
DECLARE name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['contact_decision', 'quantity_check'] LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I
      FOR EACH ROW EXECUTE FUNCTION refuse_change()', name);
    EXECUTE format('CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON %I
      FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', name);
  END LOOP;
END $$;
