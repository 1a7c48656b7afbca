-- One making in several pots or goes: each is a batch with its own draws, readings, losses and lot,
-- so that one can be abandoned or held while the others go on. The first batch is the head; the
-- others are its parts, of the same recipe version, and have no parts of their own.
ALTER TABLE batch
  ADD COLUMN part_of_id uuid,
  ADD CONSTRAINT batch_part_of_id_fkey FOREIGN KEY (part_of_id) REFERENCES batch (id)
    ON DELETE RESTRICT ON UPDATE CASCADE,
  ADD CONSTRAINT batch_part CHECK (
    part_of_id IS NULL OR (part_of_id <> id AND kind IN ('cook', 'cast')));
CREATE INDEX batch_part_of_id_idx ON batch (part_of_id);

-- What a batch is part of is fixed when it is opened: batch_guard lets nobody change it after.
CREATE FUNCTION batch_part_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE head record;
BEGIN
  SELECT code, kind, state, recipe_version_id, part_of_id INTO head
  FROM batch WHERE id = NEW.part_of_id;
  IF head.part_of_id IS NOT NULL THEN
    RAISE EXCEPTION 'batch % is itself a part', head.code USING ERRCODE = 'BL007';
  ELSIF head.state <> 'open' THEN
    RAISE EXCEPTION 'batch % is closed or fixed', head.code USING ERRCODE = 'BL007';
  ELSIF (head.kind, head.recipe_version_id) IS DISTINCT FROM (NEW.kind, NEW.recipe_version_id) THEN
    RAISE EXCEPTION 'a part is made by the recipe version of batch %', head.code
      USING ERRCODE = 'BL007';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER batch_part_guard BEFORE INSERT ON batch FOR EACH ROW
  WHEN (NEW.part_of_id IS NOT NULL) EXECUTE FUNCTION batch_part_guard();

-- What was reserved for a head is there for its parts too: they draw from it, and it gets less by it.
CREATE OR REPLACE FUNCTION reserved_of_lot(which uuid, for_batch uuid, moment timestamptz)
RETURNS numeric LANGUAGE sql STABLE AS $$
  SELECT coalesce(sum(greatest(0, held.quantity - coalesce((
    SELECT sum(draw.quantity) FROM draw
    WHERE draw.lot_id = which AND (draw.batch_id = held.batch_id
      OR draw.batch_id IN (SELECT id FROM batch part WHERE part.part_of_id = held.batch_id))), 0))), 0)
  FROM (
    SELECT r.batch_id, sum(r.quantity) AS quantity
    FROM reservation r JOIN batch ON batch.id = r.batch_id
    WHERE r.lot_id = which AND r.released_at IS NULL AND r.expires_at > moment
      AND batch.state = 'open' AND r.batch_id IS DISTINCT FROM for_batch
      AND r.batch_id IS DISTINCT FROM (SELECT part_of_id FROM batch WHERE id = for_batch)
    GROUP BY r.batch_id) held
$$;
