-- A lot that was made here (a tank's charge, rework) has no supplier's specification of its own: what
-- is known of it is known of the lots inside it. Only what was received needs one.
CREATE OR REPLACE FUNCTION lot_must_be_usable(which uuid, at timestamptz) RETURNS void
LANGUAGE plpgsql AS $$
DECLARE l record;
BEGIN
  SELECT lot.code, lot.refused, lot.use_by, lot.specification_id, lot.batch_id, item.kind,
    EXISTS (SELECT 1 FROM hold WHERE hold.lot_id = lot.id AND released_at IS NULL) AS held
  INTO l FROM lot JOIN item ON item.id = lot.item_id WHERE lot.id = which;
  IF l.refused THEN
    RAISE EXCEPTION 'lot % was refused on arrival', l.code USING ERRCODE = 'BL004';
  ELSIF l.held THEN
    RAISE EXCEPTION 'lot % is on hold', l.code USING ERRCODE = 'BL004';
  ELSIF l.use_by < workshop_day(at) THEN
    RAISE EXCEPTION 'lot % is past its use-by date %', l.code, l.use_by USING ERRCODE = 'BL004';
  ELSIF l.kind = 'ingredient' AND l.specification_id IS NULL AND l.batch_id IS NULL THEN
    RAISE EXCEPTION 'lot % has no approved specification', l.code USING ERRCODE = 'BL004';
  END IF;
END $$;

-- Unknown is never absent: no label for a lot with an ancestor whose allergens are not all known.
CREATE OR REPLACE FUNCTION label_run_guard() RETURNS trigger LANGUAGE plpgsql AS $$
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
  WHERE item.kind = 'ingredient' AND lot.batch_id IS NULL AND (lot.specification_id IS NULL
    OR EXISTS (SELECT 1 FROM specification_allergen a
      WHERE a.specification_id = lot.specification_id AND a.presence = 'unknown'))
  LIMIT 1;
  IF culprit IS NOT NULL THEN
    RAISE EXCEPTION 'lot % has an allergen that is not known', culprit USING ERRCODE = 'BL009';
  END IF;
  RETURN NEW;
END $$;

-- The circle is looked for at every draw into a batch that has made a lot, open or not. A draw that
-- was reversed is no way forward.
CREATE OR REPLACE FUNCTION draw_guard() RETURNS trigger LANGUAGE plpgsql AS $$
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
  ELSIF EXISTS (
    WITH RECURSIVE ahead AS (
      SELECT id FROM lot WHERE batch_id = NEW.batch_id
      UNION
      SELECT made.id FROM ahead JOIN draw ON draw.lot_id = ahead.id
        JOIN lot made ON made.batch_id = draw.batch_id
      WHERE draw.reverses_id IS NULL
        AND NOT EXISTS (SELECT 1 FROM draw back WHERE back.reverses_id = draw.id)
    ) SELECT 1 FROM ahead WHERE id = NEW.lot_id) THEN
    RAISE EXCEPTION 'a lot can never be its own ancestor' USING ERRCODE = 'BL006';
  END IF;
  RETURN NEW;
END $$;
