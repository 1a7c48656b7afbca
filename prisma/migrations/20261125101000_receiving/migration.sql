-- Warmest temperature at which an item is taken in, and a lot that gets its specification later:
-- it waits on hold until the supplier has answered, then pins what was approved.
ALTER TABLE item ADD COLUMN warmest_temp_c DECIMAL(6,2);

CREATE OR REPLACE FUNCTION lot_guard() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  allowed text[] := ARRAY['place_id', 'frozen_on', 'thawed_on', 'best_before', 'use_by',
    'date_reasons', 'specification_id', 'on_hand_quantity', 'on_hand_mass_g', 'on_hand_cost'];
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
  IF NEW.specification_id IS DISTINCT FROM OLD.specification_id AND NOT EXISTS (
    SELECT 1 FROM specification s JOIN delivery_line line ON line.id = NEW.delivery_line_id
      JOIN delivery ON delivery.id = line.delivery_id
    WHERE s.id = NEW.specification_id AND s.item_id = NEW.item_id
      AND s.supplier_id = delivery.supplier_id AND s.state = 'approved') THEN
    RAISE EXCEPTION 'lot % takes only an approved specification of its own supplier', OLD.code
      USING ERRCODE = 'BL003';
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
