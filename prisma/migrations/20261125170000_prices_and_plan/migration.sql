-- Prices, what-if scenarios, orders, supply, plans, reservations and stocktakes.

CREATE TABLE price (
  id uuid PRIMARY KEY,
  item_id uuid NOT NULL REFERENCES item (id),
  list text NOT NULL CHECK (list IN ('counter', 'trade')),
  price numeric(14, 4) NOT NULL CHECK (price >= 0),
  from_day date NOT NULL,
  note text,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE INDEX price_item_id_list_from_day_at_idx ON price (item_id, list, from_day, at);

CREATE TABLE scenario (
  id uuid PRIMARY KEY,
  name text NOT NULL UNIQUE,
  changes jsonb NOT NULL,
  note text,
  version integer NOT NULL DEFAULT 1,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);

CREATE TABLE supply_term (
  id uuid PRIMARY KEY,
  item_id uuid NOT NULL UNIQUE REFERENCES item (id),
  supplier_id uuid NOT NULL REFERENCES supplier (id),
  lead_days integer NOT NULL CHECK (lead_days BETWEEN 0 AND 365),
  pack_quantity numeric(14, 3) CHECK (pack_quantity > 0),
  version integer NOT NULL DEFAULT 1
);
CREATE INDEX supply_term_supplier_id_idx ON supply_term (supplier_id);

CREATE TABLE minimum_order (
  supplier_id uuid PRIMARY KEY REFERENCES supplier (id),
  amount numeric(14, 4) NOT NULL CHECK (amount >= 0),
  version integer NOT NULL DEFAULT 1
);

CREATE SEQUENCE order_code_seq;
CREATE TABLE customer_order (
  id uuid PRIMARY KEY,
  code text NOT NULL UNIQUE,
  customer_id uuid REFERENCES customer (id),
  due_on date NOT NULL,
  minimum_life_days integer NOT NULL DEFAULT 0 CHECK (minimum_life_days >= 0),
  state text NOT NULL DEFAULT 'open' CHECK (state IN ('open', 'done', 'cancelled')),
  note text,
  version integer NOT NULL DEFAULT 1,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE INDEX customer_order_state_due_on_idx ON customer_order (state, due_on);
CREATE INDEX customer_order_customer_id_idx ON customer_order (customer_id);

CREATE TABLE order_line (
  id uuid PRIMARY KEY,
  order_id uuid NOT NULL REFERENCES customer_order (id),
  position integer NOT NULL,
  item_id uuid NOT NULL REFERENCES item (id),
  quantity numeric(14, 3) NOT NULL CHECK (quantity > 0),
  net_price numeric(14, 4) CHECK (net_price >= 0),
  UNIQUE (order_id, position)
);
CREATE INDEX order_line_item_id_idx ON order_line (item_id);
CREATE TRIGGER never_deleted BEFORE DELETE ON customer_order
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE season (
  id uuid PRIMARY KEY,
  name text NOT NULL,
  from_day date NOT NULL,
  to_day date NOT NULL,
  factor numeric(8, 4) NOT NULL CHECK (factor > 0),
  CONSTRAINT season_days CHECK (to_day >= from_day)
);

CREATE TABLE saved_plan (
  id uuid PRIMARY KEY,
  today date NOT NULL,
  result jsonb NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);

CREATE TABLE planned_start (
  plan_id uuid NOT NULL REFERENCES saved_plan (id),
  key text NOT NULL,
  batch_id uuid NOT NULL UNIQUE REFERENCES batch (id),
  PRIMARY KEY (plan_id, key)
);

CREATE TABLE reservation (
  id uuid PRIMARY KEY,
  lot_id uuid NOT NULL REFERENCES lot (id),
  batch_id uuid NOT NULL REFERENCES batch (id),
  quantity numeric(14, 3) NOT NULL CHECK (quantity > 0),
  expires_at timestamptz(6) NOT NULL,
  released_at timestamptz(6),
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE INDEX reservation_lot_id_idx ON reservation (lot_id);
CREATE INDEX reservation_batch_id_idx ON reservation (batch_id);

CREATE TABLE stocktake (
  id uuid PRIMARY KEY,
  counted_on date NOT NULL,
  note text,
  at timestamptz(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
  user_id uuid NOT NULL REFERENCES app_user (id)
);
CREATE TABLE stocktake_line (
  id uuid PRIMARY KEY,
  stocktake_id uuid NOT NULL REFERENCES stocktake (id),
  lot_id uuid NOT NULL REFERENCES lot (id),
  booked_quantity numeric(14, 3) NOT NULL,
  counted_quantity numeric(14, 3) NOT NULL CHECK (counted_quantity >= 0),
  cost numeric(14, 4) NOT NULL,
  UNIQUE (stocktake_id, lot_id)
);

DO $$
DECLARE name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['price', 'saved_plan', 'planned_start', 'stocktake',
    'stocktake_line']
  LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I
      FOR EACH ROW EXECUTE FUNCTION refuse_change()', name);
    EXECUTE format('CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON %I
      FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', name);
  END LOOP;
END $$;

-- What open batches other than `for_batch` still keep for themselves of a lot at an instant: what
-- they reserved less what they drew. A reservation ends with its hour or with its batch.
CREATE FUNCTION reserved_of_lot(which uuid, for_batch uuid, moment timestamptz) RETURNS numeric
LANGUAGE sql STABLE AS $$
  SELECT coalesce(sum(greatest(0, held.quantity - coalesce((
    SELECT sum(draw.quantity) FROM draw
    WHERE draw.batch_id = held.batch_id AND draw.lot_id = which), 0))), 0)
  FROM (
    SELECT r.batch_id, sum(r.quantity) AS quantity
    FROM reservation r JOIN batch ON batch.id = r.batch_id
    WHERE r.lot_id = which AND r.released_at IS NULL AND r.expires_at > moment
      AND batch.state = 'open' AND r.batch_id IS DISTINCT FROM for_batch
    GROUP BY r.batch_id) held
$$;

-- BL010: nobody draws or sends away what another batch has reserved. Waste, samples and counts stay
-- possible: they say what has happened already.
CREATE FUNCTION reservation_blocks() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  l record;
  reserved numeric;
BEGIN
  IF NEW.kind NOT IN ('drawn', 'dispatched') OR NEW.quantity >= 0 THEN RETURN NEW; END IF;
  reserved := reserved_of_lot(NEW.lot_id, NEW.batch_id, NEW.at);
  IF reserved = 0 THEN RETURN NEW; END IF;
  SELECT code, on_hand_quantity, unit INTO l FROM lot WHERE id = NEW.lot_id;
  IF l.on_hand_quantity + NEW.quantity < reserved THEN
    RAISE EXCEPTION '% % of lot % are reserved for another batch', reserved, l.unit, l.code
      USING ERRCODE = 'BL010';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER reservation_blocks BEFORE INSERT ON movement
  FOR EACH ROW EXECUTE FUNCTION reservation_blocks();
