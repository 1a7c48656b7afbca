-- What the database itself refuses. Refusals of triggers carry SQLSTATE class BL:
--   BL001 append-only   BL002 only the ledger changes stock   BL003 frozen
--   BL004 lot not usable   BL005 batch does not balance   BL006 circle   BL007 wrong state
--   BL008 reversal is not the exact opposite   BL009 label without known allergens

-- ── Values ──────────────────────────────────────────────────────────────────────────────────────
ALTER TABLE workshop
  ADD CONSTRAINT workshop_is_one_row CHECK (id = 1),
  ADD CONSTRAINT workshop_market CHECK (market IN ('EU', 'GB', 'NI', 'US')),
  ADD CONSTRAINT workshop_overhead_rule CHECK (overhead_rule IN ('per_hour', 'per_piece', 'percent')),
  ADD CONSTRAINT workshop_overhead_value CHECK (overhead_value >= 0);
ALTER TABLE labour_rate ADD CONSTRAINT labour_rate_value CHECK (rate_per_hour >= 0);
ALTER TABLE vat_rate ADD CONSTRAINT vat_rate_value CHECK (rate_percent BETWEEN 0 AND 100);
ALTER TABLE app_user
  ADD CONSTRAINT app_user_role CHECK (role IN ('owner', 'maker', 'seller', 'auditor'));
ALTER TABLE session ADD CONSTRAINT session_kind CHECK (kind IN ('browser', 'script'));
ALTER TABLE customer
  ADD CONSTRAINT customer_price_list CHECK (price_list IN ('counter', 'trade')),
  ADD CONSTRAINT customer_minimum_life CHECK (minimum_life_days >= 0);
ALTER TABLE place
  ADD CONSTRAINT place_kind CHECK (kind IN ('store', 'fridge', 'freezer', 'room')),
  ADD CONSTRAINT place_limits CHECK (min_temp_c <= max_temp_c);
ALTER TABLE item
  ADD CONSTRAINT item_kind CHECK (kind IN ('ingredient', 'packaging', 'filling', 'piece', 'box')),
  ADD CONSTRAINT item_unit CHECK (unit IN ('g', 'pc')),
  ADD CONSTRAINT item_unit_of_kind CHECK (
    (kind = 'filling' AND unit = 'g') OR (kind IN ('piece', 'box') AND unit = 'pc')
    OR kind IN ('ingredient', 'packaging')),
  ADD CONSTRAINT item_gtin CHECK (gtin ~ '^[0-9]{14}$'),
  ADD CONSTRAINT item_nominal_mass CHECK (nominal_mass_g > 0),
  ADD CONSTRAINT item_replacement_price CHECK (replacement_price >= 0);
ALTER TABLE specification
  ADD CONSTRAINT specification_state CHECK (state IN ('draft', 'approved', 'withdrawn')),
  ADD CONSTRAINT specification_approval CHECK (
    state = 'draft' OR (approved_by_id IS NOT NULL AND approved_at IS NOT NULL));
ALTER TABLE specification_allergen
  ADD CONSTRAINT specification_allergen_presence
  CHECK (presence IN ('contains', 'may_contain', 'absent', 'unknown'));
ALTER TABLE recipe_version
  ADD CONSTRAINT recipe_version_yield CHECK (yield_mass_g > 0 AND yield_pieces > 0),
  ADD CONSTRAINT recipe_version_life CHECK (shelf_life_days >= 0),
  ADD CONSTRAINT recipe_version_basis
  CHECK (shelf_life_basis IN ('measured', 'validated', 'chosen', 'estimated')),
  ADD CONSTRAINT recipe_version_date_kind CHECK (date_kind IN ('best_before', 'use_by'));
ALTER TABLE recipe_line
  ADD CONSTRAINT recipe_line_quantity CHECK (quantity > 0),
  ADD CONSTRAINT recipe_line_role CHECK (role IN
    ('base', 'infusion', 'shell', 'filling', 'cap', 'decoration', 'slot', 'packaging'));
ALTER TABLE delivery_line
  ADD CONSTRAINT delivery_line_quantity CHECK (quantity > 0),
  ADD CONSTRAINT delivery_line_price CHECK (price >= 0),
  ADD CONSTRAINT delivery_line_refusal CHECK (accepted = (refusal_reason IS NULL));
ALTER TABLE lot
  ADD CONSTRAINT lot_unit CHECK (unit IN ('g', 'pc')),
  ADD CONSTRAINT lot_one_origin CHECK (num_nonnulls(delivery_line_id, batch_id) = 1),
  ADD CONSTRAINT lot_output_role CHECK (
    (batch_id IS NULL) = (output_role IS NULL) AND output_role IN ('product', 'rework')),
  ADD CONSTRAINT lot_made CHECK (made_quantity >= 0 AND made_mass_g >= 0 AND made_cost >= 0),
  ADD CONSTRAINT lot_refused_has_none CHECK (NOT refused OR made_quantity = 0),
  ADD CONSTRAINT lot_on_hand CHECK (
    on_hand_quantity >= 0 AND on_hand_mass_g >= 0 AND on_hand_cost >= 0),
  ADD CONSTRAINT lot_empty_is_empty CHECK (
    on_hand_quantity > 0 OR (on_hand_mass_g = 0 AND on_hand_cost = 0)),
  ADD CONSTRAINT lot_whole_pieces CHECK (unit = 'g' OR made_quantity = trunc(made_quantity)),
  ADD CONSTRAINT lot_freezing CHECK (thawed_on IS NULL OR thawed_on >= frozen_on);
ALTER TABLE movement
  ADD CONSTRAINT movement_kind CHECK (kind IN
    ('received', 'drawn', 'made', 'dispatched', 'wasted', 'counted', 'sampled', 'returned')),
  ADD CONSTRAINT movement_not_nothing CHECK (quantity <> 0),
  ADD CONSTRAINT movement_signs CHECK (
    sign(mass_g) IN (0, sign(quantity)) AND sign(cost) IN (0, sign(quantity))),
  ADD CONSTRAINT movement_direction CHECK (
    reverses_id IS NOT NULL OR kind = 'counted'
    OR (kind IN ('received', 'made', 'returned')) = (quantity > 0));
ALTER TABLE hold
  ADD CONSTRAINT hold_release CHECK (
    num_nonnulls(released_at, released_by_id, release_reason) IN (0, 3));
ALTER TABLE batch
  ADD CONSTRAINT batch_kind CHECK (kind IN ('cook', 'charge', 'cast', 'pack')),
  ADD CONSTRAINT batch_state CHECK (state IN ('open', 'finished', 'abandoned')),
  ADD CONSTRAINT batch_end CHECK ((state = 'open') = (ended_at IS NULL)),
  ADD CONSTRAINT batch_abandon_reason CHECK (state <> 'abandoned' OR end_reason IS NOT NULL),
  ADD CONSTRAINT batch_tank CHECK ((kind = 'charge') = (tank_id IS NOT NULL)),
  ADD CONSTRAINT batch_recipe CHECK (kind = 'charge' OR recipe_version_id IS NOT NULL);
ALTER TABLE draw
  ADD CONSTRAINT draw_role CHECK (role IN ('base', 'infusion', 'shell', 'filling', 'cap',
    'decoration', 'slot', 'packaging', 'heel', 'charge', 'rework')),
  ADD CONSTRAINT draw_sign CHECK (
    CASE WHEN reverses_id IS NULL THEN quantity > 0 AND mass_g >= 0 AND cost >= 0
         ELSE quantity < 0 AND mass_g <= 0 AND cost <= 0 END);
ALTER TABLE batch_loss
  ADD CONSTRAINT batch_loss_kind
  CHECK (kind IN ('steam', 'held_back', 'scrapings', 'rejects', 'samples', 'other')),
  ADD CONSTRAINT batch_loss_sign CHECK (
    CASE WHEN reverses_id IS NULL THEN mass_g > 0 ELSE mass_g < 0 END);
ALTER TABLE mould_design
  ADD CONSTRAINT mould_design_cavities CHECK (rows > 0 AND columns > 0);
ALTER TABLE mould ADD CONSTRAINT mould_state CHECK (state IN ('sound', 'chipped', 'retired'));
ALTER TABLE mould_use ADD CONSTRAINT mould_use_filled CHECK (cavities_filled > 0);
ALTER TABLE mould_inspection
  ADD CONSTRAINT mould_inspection_result CHECK (result IN ('sound', 'chipped', 'retired'));
ALTER TABLE tank ADD CONSTRAINT tank_capacity CHECK (capacity_g > 0);
ALTER TABLE tank_emptying
  ADD CONSTRAINT tank_emptying_outcome CHECK (outcome IN ('wasted', 'kept', 'nothing_left')),
  ADD CONSTRAINT tank_emptying_heel CHECK (heel_g >= 0);
ALTER TABLE reading
  ADD CONSTRAINT reading_measure CHECK (measure IN
    ('temp_c', 'humidity_percent', 'water_activity', 'ph', 'brix', 'mass_g')),
  ADD CONSTRAINT reading_verdict CHECK (verdict IN ('in', 'low', 'high', 'no_limit')),
  ADD CONSTRAINT reading_subject CHECK (
    num_nonnulls(batch_id, place_id, lot_id, delivery_line_id) >= 1);
ALTER TABLE dispatch_line
  ADD CONSTRAINT dispatch_line_quantity CHECK (quantity > 0 AND mass_g >= 0 AND cost >= 0);
ALTER TABLE label_run ADD CONSTRAINT label_run_copies CHECK (copies > 0);
ALTER TABLE recall_case
  ADD CONSTRAINT recall_case_mode CHECK (mode IN ('real', 'rehearsal')),
  ADD CONSTRAINT recall_case_state CHECK (state IN ('open', 'frozen', 'closed')),
  ADD CONSTRAINT recall_case_frozen CHECK (
    (state = 'open') = (frozen_at IS NULL) AND (frozen_at IS NULL) = (frozen_scope IS NULL));
ALTER TABLE idempotent_request
  ADD CONSTRAINT idempotent_request_key CHECK (length(key) BETWEEN 8 AND 200);

CREATE INDEX hold_open ON hold (lot_id) WHERE released_at IS NULL;
CREATE INDEX lot_in_stock ON lot (item_id, use_by, best_before) WHERE on_hand_quantity > 0;

-- Numbers of codes. A number that a rolled-back request took is never used again.
CREATE SEQUENCE lot_code_seq;
CREATE SEQUENCE batch_code_seq;
CREATE SEQUENCE dispatch_code_seq;
CREATE SEQUENCE complaint_code_seq;
CREATE SEQUENCE recall_code_seq;
CREATE SEQUENCE tag_code_seq;

-- ── Append-only ─────────────────────────────────────────────────────────────────────────────────
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is append-only: put a mistake right by an opposite entry', TG_TABLE_NAME
    USING ERRCODE = 'BL001';
END $$;

DO $$
DECLARE name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['movement', 'draw', 'batch_loss', 'mould_use', 'mould_inspection',
    'tank_emptying', 'reading', 'cleaning_record', 'label_run', 'journal_entry', 'recall_action',
    'delivery', 'delivery_line', 'dispatch', 'dispatch_line', 'idempotent_request']
  LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I
      FOR EACH ROW EXECUTE FUNCTION refuse_change()', name);
    EXECUTE format('CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON %I
      FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', name);
  END LOOP;
  FOREACH name IN ARRAY ARRAY['lot', 'batch', 'hold', 'complaint', 'recall_case', 'specification',
    'mould', 'app_user']
  LOOP
    EXECUTE format('CREATE TRIGGER never_deleted BEFORE DELETE ON %I
      FOR EACH ROW EXECUTE FUNCTION refuse_change()', name);
  END LOOP;
END $$;

-- ── The ledger ──────────────────────────────────────────────────────────────────────────────────
CREATE FUNCTION workshop_day(at timestamptz) RETURNS date LANGUAGE sql STABLE AS $$
  SELECT (at AT TIME ZONE coalesce((SELECT time_zone FROM workshop WHERE id = 1), 'UTC'))::date
$$;

-- A lot starts empty; its made or received movement, written here, puts the goods on hand.
CREATE FUNCTION lot_is_born() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.batch_id IS NOT NULL
     AND (SELECT state FROM batch WHERE id = NEW.batch_id) <> 'open' THEN
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
CREATE TRIGGER lot_is_born AFTER INSERT ON lot FOR EACH ROW EXECUTE FUNCTION lot_is_born();

CREATE FUNCTION lot_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  allowed text[] := ARRAY['place_id', 'frozen_on', 'thawed_on', 'best_before', 'use_by',
    'date_reasons', 'on_hand_quantity', 'on_hand_mass_g', 'on_hand_cost'];
BEGIN
  IF TG_OP = 'INSERT' THEN
    IF NEW.on_hand_quantity <> 0 OR NEW.on_hand_mass_g <> 0 OR NEW.on_hand_cost <> 0 THEN
      RAISE EXCEPTION 'a lot starts with nothing on hand; its movement adds it'
        USING ERRCODE = 'BL002';
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
CREATE TRIGGER lot_guard BEFORE INSERT OR UPDATE ON lot
  FOR EACH ROW EXECUTE FUNCTION lot_guard();

-- Refuses to use or sell a lot that is refused, held, past its use-by, or without an approved
-- specification. Wasting, counting, sampling and returning stay possible.
CREATE FUNCTION lot_must_be_usable(which uuid, at timestamptz) RETURNS void LANGUAGE plpgsql AS $$
DECLARE l record;
BEGIN
  SELECT lot.code, lot.refused, lot.use_by, lot.specification_id, item.kind,
    EXISTS (SELECT 1 FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL) AS held
  INTO l FROM lot JOIN item ON item.id = lot.item_id WHERE lot.id = which;
  IF l.refused THEN
    RAISE EXCEPTION 'lot % was refused on arrival', l.code USING ERRCODE = 'BL004';
  ELSIF l.held THEN
    RAISE EXCEPTION 'lot % is on hold', l.code USING ERRCODE = 'BL004';
  ELSIF l.use_by < workshop_day(at) THEN
    RAISE EXCEPTION 'lot % is past its use-by date %', l.code, l.use_by USING ERRCODE = 'BL004';
  ELSIF l.kind = 'ingredient' AND l.specification_id IS NULL THEN
    RAISE EXCEPTION 'lot % has no approved specification', l.code USING ERRCODE = 'BL004';
  END IF;
END $$;

CREATE FUNCTION movement_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE first movement;
BEGIN
  IF pg_trigger_depth() < 2 AND NEW.kind IN ('received', 'made', 'drawn', 'dispatched') THEN
    RAISE EXCEPTION 'a % movement is written by its own event', NEW.kind USING ERRCODE = 'BL002';
  END IF;
  IF NEW.reverses_id IS NOT NULL THEN
    SELECT * INTO first FROM movement WHERE id = NEW.reverses_id;
    IF first.reverses_id IS NOT NULL OR (first.lot_id, first.kind, -first.quantity, -first.mass_g,
        -first.cost) IS DISTINCT FROM (NEW.lot_id, NEW.kind, NEW.quantity, NEW.mass_g, NEW.cost) THEN
      RAISE EXCEPTION 'a reversal must be the exact opposite of the movement it names'
        USING ERRCODE = 'BL008';
    END IF;
  ELSIF NEW.kind IN ('drawn', 'dispatched') THEN
    PERFORM lot_must_be_usable(NEW.lot_id, NEW.at);
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER movement_guard BEFORE INSERT ON movement
  FOR EACH ROW EXECUTE FUNCTION movement_guard();

CREATE FUNCTION movement_applies() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE lot SET on_hand_quantity = on_hand_quantity + NEW.quantity,
    on_hand_mass_g = on_hand_mass_g + NEW.mass_g,
    on_hand_cost = on_hand_cost + NEW.cost
  WHERE id = NEW.lot_id;
  RETURN NULL;
END $$;
CREATE TRIGGER movement_applies AFTER INSERT ON movement
  FOR EACH ROW EXECUTE FUNCTION movement_applies();

-- ── Draws and dispatch lines write their own movements ──────────────────────────────────────────
CREATE FUNCTION draw_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  batch_state text;
  first draw;
BEGIN
  SELECT state INTO batch_state FROM batch WHERE id = NEW.batch_id;
  IF batch_state <> 'open' AND NEW.reason IS NULL THEN
    RAISE EXCEPTION 'a closed batch takes only corrections, each with its reason'
      USING ERRCODE = 'BL007';
  END IF;
  IF NEW.reverses_id IS NOT NULL THEN
    SELECT * INTO first FROM draw WHERE id = NEW.reverses_id;
    IF first.reverses_id IS NOT NULL OR (first.batch_id, first.lot_id, -first.quantity,
        -first.mass_g, -first.cost) IS DISTINCT FROM
        (NEW.batch_id, NEW.lot_id, NEW.quantity, NEW.mass_g, NEW.cost) THEN
      RAISE EXCEPTION 'a reversal must be the exact opposite of the draw it names'
        USING ERRCODE = 'BL008';
    END IF;
  ELSIF batch_state <> 'open' AND EXISTS (
    WITH RECURSIVE ahead AS (
      SELECT id FROM lot WHERE batch_id = NEW.batch_id
      UNION
      SELECT made.id FROM ahead JOIN draw ON draw.lot_id = ahead.id
        JOIN lot made ON made.batch_id = draw.batch_id
    ) SELECT 1 FROM ahead WHERE id = NEW.lot_id) THEN
    RAISE EXCEPTION 'a lot can never be its own ancestor' USING ERRCODE = 'BL006';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER draw_guard BEFORE INSERT ON draw FOR EACH ROW EXECUTE FUNCTION draw_guard();

CREATE FUNCTION draw_moves() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO movement
    (id, lot_id, quantity, mass_g, cost, kind, batch_id, draw_id, reverses_id, reason, at, user_id)
  VALUES (gen_random_uuid(), NEW.lot_id, -NEW.quantity, -NEW.mass_g, -NEW.cost, 'drawn',
    NEW.batch_id, NEW.id,
    (SELECT id FROM movement WHERE draw_id = NEW.reverses_id), NEW.reason, NEW.at, NEW.user_id);
  RETURN NULL;
END $$;
CREATE TRIGGER draw_moves AFTER INSERT ON draw FOR EACH ROW EXECUTE FUNCTION draw_moves();

CREATE FUNCTION dispatch_line_moves() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, dispatch_line_id, at, user_id)
  SELECT gen_random_uuid(), NEW.lot_id, -NEW.quantity, -NEW.mass_g, -NEW.cost, 'dispatched',
    NEW.id, dispatch.at, dispatch.user_id
  FROM dispatch WHERE dispatch.id = NEW.dispatch_id;
  RETURN NULL;
END $$;
CREATE TRIGGER dispatch_line_moves AFTER INSERT ON dispatch_line
  FOR EACH ROW EXECUTE FUNCTION dispatch_line_moves();

-- ── Batches ─────────────────────────────────────────────────────────────────────────────────────
CREATE FUNCTION batch_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE allowed text[] := ARRAY['state', 'ended_at', 'end_reason', 'imbalance_reason',
  'labour_minutes', 'version', 'plan', 'operator_id', 'place_id'];
BEGIN
  IF OLD.state <> 'open' OR to_jsonb(NEW) - allowed <> to_jsonb(OLD) - allowed THEN
    RAISE EXCEPTION 'batch % is closed or fixed', OLD.code USING ERRCODE = 'BL007';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER batch_guard BEFORE UPDATE ON batch FOR EACH ROW EXECUTE FUNCTION batch_guard();

CREATE FUNCTION batch_freezes_recipe() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE recipe_version SET frozen_at = NEW.opened_at
  WHERE id = NEW.recipe_version_id AND frozen_at IS NULL;
  RETURN NULL;
END $$;
CREATE TRIGGER batch_freezes_recipe AFTER INSERT ON batch
  FOR EACH ROW EXECUTE FUNCTION batch_freezes_recipe();

-- Checked at commit: what was drawn is what was made and what was lost, to the milligram.
CREATE FUNCTION batch_balances() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  which uuid;
  b record;
BEGIN
  which := CASE WHEN TG_TABLE_NAME = 'batch' THEN (to_jsonb(NEW) ->> 'id')::uuid
                ELSE (to_jsonb(NEW) ->> 'batch_id')::uuid END;
  SELECT code, state, imbalance_reason,
    (SELECT coalesce(sum(mass_g), 0) FROM draw WHERE batch_id = which) AS drawn_g,
    (SELECT coalesce(sum(made_mass_g), 0) FROM lot WHERE batch_id = which) AS made_g,
    (SELECT coalesce(sum(mass_g), 0) FROM batch_loss WHERE batch_id = which) AS lost_g
  INTO b FROM batch WHERE id = which;
  IF b.state = 'open' OR b.drawn_g = b.made_g + b.lost_g THEN RETURN NULL; END IF;
  IF b.made_g + b.lost_g > b.drawn_g AND b.imbalance_reason IS NOT NULL THEN RETURN NULL; END IF;
  RAISE EXCEPTION 'batch % does not balance: % g drawn, % g made, % g lost',
    b.code, b.drawn_g, b.made_g, b.lost_g USING ERRCODE = 'BL005';
END $$;
CREATE CONSTRAINT TRIGGER batch_balances AFTER UPDATE ON batch
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION batch_balances();
CREATE CONSTRAINT TRIGGER batch_balances AFTER INSERT ON draw
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION batch_balances();
CREATE CONSTRAINT TRIGGER batch_balances AFTER INSERT ON batch_loss
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION batch_balances();

-- ── Frozen things ───────────────────────────────────────────────────────────────────────────────
CREATE FUNCTION recipe_version_guard() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.frozen_at IS NOT NULL THEN
    RAISE EXCEPTION 'recipe version % has been used and never changes', OLD.number
      USING ERRCODE = 'BL003';
  END IF;
  RETURN CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER recipe_version_guard BEFORE UPDATE OR DELETE ON recipe_version
  FOR EACH ROW EXECUTE FUNCTION recipe_version_guard();

CREATE FUNCTION recipe_line_guard() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM recipe_version
    WHERE id IN (coalesce(NEW.version_id, OLD.version_id), OLD.version_id)
      AND frozen_at IS NOT NULL) THEN
    RAISE EXCEPTION 'a recipe version that has been used never changes' USING ERRCODE = 'BL003';
  END IF;
  RETURN CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER recipe_line_guard BEFORE INSERT OR UPDATE OR DELETE ON recipe_line
  FOR EACH ROW EXECUTE FUNCTION recipe_line_guard();

CREATE FUNCTION specification_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE allowed text[] := ARRAY['state', 'withdrawn_at', 'version'];
BEGIN
  IF OLD.state <> 'draft' AND (to_jsonb(NEW) - allowed <> to_jsonb(OLD) - allowed
      OR NEW.state = 'draft' OR (OLD.state = 'withdrawn' AND NEW.state <> 'withdrawn')) THEN
    RAISE EXCEPTION 'an approved specification never changes; write a new version'
      USING ERRCODE = 'BL003';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER specification_guard BEFORE UPDATE ON specification
  FOR EACH ROW EXECUTE FUNCTION specification_guard();

CREATE FUNCTION specification_allergen_guard() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM specification
    WHERE id IN (coalesce(NEW.specification_id, OLD.specification_id), OLD.specification_id)
      AND state <> 'draft') THEN
    RAISE EXCEPTION 'an approved specification never changes; write a new version'
      USING ERRCODE = 'BL003';
  END IF;
  RETURN CASE WHEN TG_OP = 'DELETE' THEN OLD ELSE NEW END;
END $$;
CREATE TRIGGER specification_allergen_guard
  BEFORE INSERT OR UPDATE OR DELETE ON specification_allergen
  FOR EACH ROW EXECUTE FUNCTION specification_allergen_guard();

CREATE FUNCTION hold_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE allowed text[] := ARRAY['released_at', 'released_by_id', 'release_reason'];
BEGIN
  IF OLD.released_at IS NOT NULL OR to_jsonb(NEW) - allowed <> to_jsonb(OLD) - allowed THEN
    RAISE EXCEPTION 'a hold is only ever released, once' USING ERRCODE = 'BL003';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER hold_guard BEFORE UPDATE ON hold FOR EACH ROW EXECUTE FUNCTION hold_guard();

CREATE FUNCTION recall_case_guard() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.state = 'closed' OR (OLD.frozen_scope IS NOT NULL AND (NEW.frozen_scope, NEW.frozen_at)
      IS DISTINCT FROM (OLD.frozen_scope, OLD.frozen_at)) THEN
    RAISE EXCEPTION 'the scope of recall case % is frozen', OLD.code USING ERRCODE = 'BL003';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER recall_case_guard BEFORE UPDATE ON recall_case
  FOR EACH ROW EXECUTE FUNCTION recall_case_guard();

-- ── Labels ──────────────────────────────────────────────────────────────────────────────────────
-- Unknown is never absent: no label for a lot with an ancestor whose allergens are not all known.
CREATE FUNCTION label_run_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE culprit text;
BEGIN
  IF NEW.form = 'lot_tag' THEN RETURN NEW; END IF;
  PERFORM lot_must_be_usable(NEW.lot_id, NEW.at);
  WITH RECURSIVE behind AS (
    SELECT NEW.lot_id AS id
    UNION
    SELECT draw.lot_id FROM behind JOIN lot ON lot.id = behind.id
      JOIN draw ON draw.batch_id = lot.batch_id
    WHERE draw.reverses_id IS NULL
      AND NOT EXISTS (SELECT 1 FROM draw back WHERE back.reverses_id = draw.id)
  )
  SELECT lot.code INTO culprit FROM behind JOIN lot ON lot.id = behind.id
    JOIN item ON item.id = lot.item_id
  WHERE item.kind = 'ingredient' AND (lot.specification_id IS NULL OR EXISTS (
    SELECT 1 FROM specification_allergen a
    WHERE a.specification_id = lot.specification_id AND a.presence = 'unknown'))
  LIMIT 1;
  IF culprit IS NOT NULL THEN
    RAISE EXCEPTION 'lot % has an allergen that is not known', culprit USING ERRCODE = 'BL009';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER label_run_guard BEFORE INSERT ON label_run
  FOR EACH ROW EXECUTE FUNCTION label_run_guard();
