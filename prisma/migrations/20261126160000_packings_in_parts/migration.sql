-- A packing that is split where a lot of pieces changes is one making in several batches as well: its
-- runs of boxes are parts of the first. Only what a tank was charged with is never made in parts.
ALTER TABLE batch
  DROP CONSTRAINT batch_part,
  ADD CONSTRAINT batch_part CHECK (
    part_of_id IS NULL OR (part_of_id <> id AND kind IN ('cook', 'cast', 'pack')));

-- A run is split off from an open batch, whether or not the first run is finished by then.
CREATE OR REPLACE FUNCTION batch_part_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE head record;
BEGIN
  SELECT code, kind, state, recipe_version_id, part_of_id INTO head
  FROM batch WHERE id = NEW.part_of_id;
  IF head.part_of_id IS NOT NULL THEN
    RAISE EXCEPTION 'batch % is itself a part', head.code USING ERRCODE = 'BL007';
  ELSIF head.state <> 'open' AND NEW.kind <> 'pack' THEN
    RAISE EXCEPTION 'batch % is closed or fixed', head.code USING ERRCODE = 'BL007';
  ELSIF (head.kind, head.recipe_version_id) IS DISTINCT FROM (NEW.kind, NEW.recipe_version_id) THEN
    RAISE EXCEPTION 'a part is made by the recipe version of batch %', head.code
      USING ERRCODE = 'BL007';
  END IF;
  RETURN NEW;
END $$;

-- What open batches keep of a lot still: what they reserved less what they and their parts drew.
CREATE FUNCTION kept_of_lot(which uuid, moment timestamptz)
RETURNS TABLE (batch_id uuid, quantity numeric) LANGUAGE sql STABLE AS $$
  SELECT held.batch_id, greatest(0, held.quantity - coalesce((
    SELECT sum(draw.quantity) FROM draw
    WHERE draw.lot_id = which AND (draw.batch_id = held.batch_id
      OR draw.batch_id IN (SELECT id FROM batch part WHERE part.part_of_id = held.batch_id))), 0))
  FROM (
    SELECT r.batch_id, sum(r.quantity) AS quantity
    FROM reservation r JOIN batch ON batch.id = r.batch_id
    WHERE r.lot_id = which AND r.released_at IS NULL AND r.expires_at > moment
      AND batch.state = 'open'
    GROUP BY r.batch_id) held
$$;

CREATE OR REPLACE FUNCTION reserved_of_lot(which uuid, for_batch uuid, moment timestamptz)
RETURNS numeric LANGUAGE sql STABLE AS $$
  SELECT coalesce(sum(kept.quantity), 0) FROM kept_of_lot(which, moment) kept
  WHERE kept.batch_id IS DISTINCT FROM for_batch
    AND kept.batch_id IS DISTINCT FROM (SELECT part_of_id FROM batch WHERE id = for_batch)
$$;
