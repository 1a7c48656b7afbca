-- What the trace walks. Reversals are few: a partial index makes asking for one nearly free.
CREATE INDEX draw_reversal ON draw (reverses_id) WHERE reverses_id IS NOT NULL;

-- Photographs of a complaint. The media type is what the bytes are, not what the sender said.
CREATE TABLE complaint_photo (
  id uuid PRIMARY KEY,
  complaint_id uuid NOT NULL REFERENCES complaint (id) ON DELETE RESTRICT ON UPDATE CASCADE,
  name text NOT NULL,
  media_type text NOT NULL,
  sha256 text NOT NULL,
  bytes bytea NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT now(),
  user_id uuid NOT NULL,
  CONSTRAINT complaint_photo_type CHECK (media_type IN ('image/jpeg', 'image/png', 'image/webp')),
  CONSTRAINT complaint_photo_size CHECK (octet_length(bytes) BETWEEN 1 AND 8388608)
);
CREATE INDEX complaint_photo_complaint_id_idx ON complaint_photo (complaint_id);
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON complaint_photo
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON complaint_photo
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

ALTER TABLE complaint ADD CONSTRAINT complaint_kind CHECK (kind IN
  ('foreign_body', 'illness', 'allergic_reaction', 'taste', 'look', 'packaging', 'other'));
ALTER TABLE recall_action ADD CONSTRAINT recall_action_kind CHECK (kind IN
  ('opened', 'frozen', 'held', 'list_printed', 'notice_printed', 'customer_told', 'recovered',
   'note', 'closed'));
