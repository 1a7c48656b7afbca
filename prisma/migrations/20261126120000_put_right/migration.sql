-- What was written wrongly at a batch and can't be put right by a draw or a loss: a lot that never
-- came out as it was counted, a reading, the use of a mould. Nothing is deleted: each is named by an
-- entry of its own, with the reason, and what counts leaves it out from then on.

-- ── Lots ────────────────────────────────────────────────────────────────────────────────────────
ALTER TABLE lot
  ADD COLUMN taken_back_at timestamptz(6),
  ADD COLUMN taken_back_by_id uuid,
  ADD COLUMN taken_back_reason text,
  ADD CONSTRAINT lot_taken_back CHECK (
    num_nonnulls(taken_back_at, taken_back_by_id, taken_back_reason) IN (0, 3)
    AND (taken_back_at IS NULL OR batch_id IS NOT NULL));

CREATE OR REPLACE FUNCTION lot_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  allowed text[] := ARRAY['place_id', 'frozen_on', 'thawed_on', 'best_before', 'use_by',
    'date_reasons', 'specification_id', 'on_hand_quantity', 'on_hand_mass_g', 'on_hand_cost',
    'taken_back_at', 'taken_back_by_id', 'taken_back_reason'];
BEGIN
  IF TG_OP = 'INSERT' THEN
    IF NEW.on_hand_quantity <> 0 OR NEW.on_hand_mass_g <> 0 OR NEW.on_hand_cost <> 0 THEN
      RAISE EXCEPTION 'a lot starts with nothing on hand; its movement adds it'
        USING ERRCODE = 'BL002';
    END IF;
    IF NEW.taken_back_at IS NOT NULL THEN
      RAISE EXCEPTION 'a lot is taken back after it was made' USING ERRCODE = 'BL007';
    END IF;
    RETURN NEW;
  END IF;
  IF to_jsonb(NEW) - allowed <> to_jsonb(OLD) - allowed THEN
    RAISE EXCEPTION 'lot % is fixed once it is made', OLD.code USING ERRCODE = 'BL003';
  END IF;
  IF pg_trigger_depth() < 2 AND (NEW.on_hand_quantity, NEW.on_hand_mass_g, NEW.on_hand_cost)
     IS DISTINCT FROM (OLD.on_hand_quantity, OLD.on_hand_mass_g, OLD.on_hand_cost) THEN
    RAISE EXCEPTION 'what is on hand of lot % changes only by a movement', OLD.code
      USING ERRCODE = 'BL002';
  END IF;
  IF NEW.specification_id IS DISTINCT FROM OLD.specification_id AND NOT EXISTS (
    SELECT 1 FROM specification s JOIN delivery_line line ON line.id = NEW.delivery_line_id
      JOIN delivery ON delivery.id = line.delivery_id
    WHERE s.id = NEW.specification_id AND s.item_id = NEW.item_id
      AND s.supplier_id = delivery.supplier_id AND s.state = 'approved') THEN
    RAISE EXCEPTION 'lot % takes only an approved specification of its own supplier', OLD.code
      USING ERRCODE = 'BL003';
  END IF;
  IF (NEW.taken_back_at, NEW.taken_back_by_id, NEW.taken_back_reason) IS DISTINCT FROM
     (OLD.taken_back_at, OLD.taken_back_by_id, OLD.taken_back_reason) THEN
    IF OLD.taken_back_at IS NOT NULL THEN
      RAISE EXCEPTION 'lot % was taken back already', OLD.code USING ERRCODE = 'BL003';
    END IF;
    -- Nothing rests on it: it was never drawn, sent or counted but by what was reversed since.
    IF EXISTS (SELECT 1 FROM movement used WHERE used.lot_id = OLD.id AND used.kind <> 'made'
        AND used.reverses_id IS NULL
        AND NOT EXISTS (SELECT 1 FROM movement back WHERE back.reverses_id = used.id)) THEN
      RAISE EXCEPTION 'lot % was used already', OLD.code USING ERRCODE = 'BL007';
    END IF;
  END IF;
  -- A date may come nearer; it moves away only when the lot goes into or out of the freezer.
  IF (NEW.frozen_on, NEW.thawed_on) IS NOT DISTINCT FROM (OLD.frozen_on, OLD.thawed_on)
     AND (NEW.best_before > OLD.best_before OR NEW.use_by > OLD.use_by
       OR (OLD.best_before IS NOT NULL AND NEW.best_before IS NULL)
       OR (OLD.use_by IS NOT NULL AND NEW.use_by IS NULL)) THEN
    RAISE EXCEPTION 'the date of lot % may be brought forward, never put back', OLD.code
      USING ERRCODE = 'BL003';
  END IF;
  RETURN NEW;
END $$;

-- A lot that never came out can't be labelled; there is none of it to draw or to send either.
CREATE OR REPLACE FUNCTION lot_must_be_usable(which uuid, at timestamptz) RETURNS void
LANGUAGE plpgsql AS $$
DECLARE l record;
BEGIN
  SELECT lot.code, lot.refused, lot.use_by, lot.specification_id, lot.batch_id, lot.taken_back_at,
    item.kind, EXISTS (SELECT 1 FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL) AS held
  INTO l FROM lot JOIN item ON item.id = lot.item_id WHERE lot.id = which;
  IF l.refused THEN
    RAISE EXCEPTION 'lot % was refused on arrival', l.code USING ERRCODE = 'BL004';
  ELSIF l.taken_back_at IS NOT NULL THEN
    RAISE EXCEPTION 'lot % was taken back', l.code USING ERRCODE = 'BL004';
  ELSIF l.held THEN
    RAISE EXCEPTION 'lot % is on hold', l.code USING ERRCODE = 'BL004';
  ELSIF l.use_by < workshop_day(at) THEN
    RAISE EXCEPTION 'lot % is past its use-by date %', l.code, l.use_by USING ERRCODE = 'BL004';
  ELSIF l.kind = 'ingredient' AND l.specification_id IS NULL AND l.batch_id IS NULL THEN
    RAISE EXCEPTION 'lot % has no approved specification', l.code USING ERRCODE = 'BL004';
  END IF;
END $$;

-- The opposite of the movement that put it on hand.
CREATE FUNCTION lot_goes_back() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO movement
    (id, lot_id, quantity, mass_g, cost, kind, batch_id, reverses_id, reason, at, user_id)
  SELECT gen_random_uuid(), born.lot_id, -born.quantity, -born.mass_g, -born.cost, born.kind,
    born.batch_id, born.id, NEW.taken_back_reason, NEW.taken_back_at, NEW.taken_back_by_id
  FROM movement born WHERE born.lot_id = NEW.id AND born.kind = 'made' AND born.reverses_id IS NULL;
  RETURN NULL;
END $$;
CREATE TRIGGER lot_goes_back AFTER UPDATE OF taken_back_at ON lot
  FOR EACH ROW WHEN (OLD.taken_back_at IS NULL AND NEW.taken_back_at IS NOT NULL)
  EXECUTE FUNCTION lot_goes_back();

-- A closed batch makes a lot only where one of its lots is taken back in the same booking.
CREATE OR REPLACE FUNCTION lot_is_born() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.batch_id IS NOT NULL
     AND (SELECT state FROM batch WHERE id = NEW.batch_id) <> 'open'
     AND NOT EXISTS (SELECT 1 FROM lot wrong WHERE wrong.batch_id = NEW.batch_id
       AND wrong.taken_back_at = NEW.created_at) THEN
    RAISE EXCEPTION 'a lot can only be made by an open batch' USING ERRCODE = 'BL007';
  END IF;
  IF NEW.made_quantity > 0 THEN
    INSERT INTO movement
      (id, lot_id, quantity, mass_g, cost, kind, delivery_line_id, batch_id, at, user_id)
    VALUES (gen_random_uuid(), NEW.id, NEW.made_quantity, NEW.made_mass_g, NEW.made_cost,
      CASE WHEN NEW.batch_id IS NULL THEN 'received' ELSE 'made' END,
      NEW.delivery_line_id, NEW.batch_id, NEW.created_at, NEW.user_id);
  END IF;
  RETURN NULL;
END $$;

-- Checked at commit, as before; what was taken back was not made.
CREATE OR REPLACE FUNCTION batch_balances() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  which uuid;
  b record;
BEGIN
  which := CASE WHEN TG_TABLE_NAME = 'batch' THEN (to_jsonb(NEW) ->> 'id')::uuid
                ELSE (to_jsonb(NEW) ->> 'batch_id')::uuid END;
  SELECT code, state, imbalance_reason,
    (SELECT coalesce(sum(mass_g), 0) FROM draw WHERE batch_id = which) AS drawn_g,
    (SELECT coalesce(sum(made_mass_g), 0) FROM lot
      WHERE batch_id = which AND taken_back_at IS NULL) AS made_g,
    (SELECT coalesce(sum(mass_g), 0) FROM batch_loss WHERE batch_id = which) AS lost_g
  INTO b FROM batch WHERE id = which;
  IF b.state = 'open' OR b.drawn_g = b.made_g + b.lost_g THEN RETURN NULL; END IF;
  IF b.made_g + b.lost_g > b.drawn_g AND b.imbalance_reason IS NOT NULL THEN RETURN NULL; END IF;
  RAISE EXCEPTION 'batch % does not balance: % g drawn, % g made, % g lost',
    b.code, b.drawn_g, b.made_g, b.lost_g USING ERRCODE = 'BL005';
END $$;
CREATE CONSTRAINT TRIGGER batch_balances AFTER UPDATE OF taken_back_at ON lot
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW
  WHEN (OLD.taken_back_at IS NULL AND NEW.taken_back_at IS NOT NULL)
  EXECUTE FUNCTION batch_balances();
CREATE CONSTRAINT TRIGGER batch_balances_with_lot AFTER INSERT ON lot
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW WHEN (NEW.batch_id IS NOT NULL)
  EXECUTE FUNCTION batch_balances();

-- ── Readings and mould uses ─────────────────────────────────────────────────────────────────────
CREATE TABLE reading_withdrawal (
  reading_id uuid PRIMARY KEY REFERENCES reading (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  reason text NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT now(),
  user_id uuid NOT NULL
);
CREATE TABLE mould_use_withdrawal (
  mould_use_id uuid PRIMARY KEY REFERENCES mould_use (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  reason text NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT now(),
  user_id uuid NOT NULL
);
DO $$
DECLARE name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['reading_withdrawal', 'mould_use_withdrawal'] LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I
      FOR EACH ROW EXECUTE FUNCTION refuse_change()', name);
    EXECUTE format('CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON %I
      FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', name);
  END LOOP;
END $$;
