-- A booking changes what is on hand of a lot. An index that names that column in its condition makes
-- each booking write the lot anew into every index, and bookings of other lots that stand on the same
-- index page then look like conflicts. The index by item and date serves the same questions.
DROP INDEX lot_in_stock;
-- Room on each page for the new version of a lot's row beside the old one.
ALTER TABLE lot SET (fillfactor = 70);

-- Looking for the circle at each draw into an open batch made bookings wait for each other. Instead a
-- lot can't be drawn before the batch that makes it is closed; and a draw into a closed batch, which
-- is a correction, looks for the circle. Together they leave no way to close one.
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
    RETURN NEW;
  END IF;
  IF (SELECT state FROM batch WHERE id = (SELECT batch_id FROM lot WHERE id = NEW.lot_id)) = 'open'
  THEN
    RAISE EXCEPTION 'a lot can be drawn once the batch that makes it is closed'
      USING ERRCODE = 'BL007';
  END IF;
  IF batch_state <> 'open' AND EXISTS (
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
