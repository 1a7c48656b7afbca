-- What was frozen is sealed: `npm run verify` compares the seal with what is there now.
CREATE TABLE frozen_content (
  kind text NOT NULL,
  subject_id uuid NOT NULL,
  sha256 text NOT NULL,
  at timestamptz(6) NOT NULL DEFAULT now(),
  CONSTRAINT frozen_content_pkey PRIMARY KEY (kind, subject_id),
  CONSTRAINT frozen_content_kind CHECK (kind IN ('recipe_version', 'specification', 'recall_case'))
);
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON frozen_content
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON frozen_content
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- sha256 of the content that may never change again, as jsonb prints it: keys in one order.
CREATE FUNCTION frozen_sha256(kind text, subject uuid) RETURNS text LANGUAGE sql STABLE AS $$
  SELECT encode(sha256(convert_to(content::text, 'UTF8')), 'hex') FROM (
    SELECT to_jsonb(v) || jsonb_build_object('lines', (
        SELECT jsonb_agg(to_jsonb(l) ORDER BY l.position) FROM recipe_line l
        WHERE l.version_id = v.id)) AS content
      FROM recipe_version v WHERE kind = 'recipe_version' AND v.id = subject
    UNION ALL
    SELECT to_jsonb(s) - ARRAY['state', 'withdrawn_at', 'version']
        || jsonb_build_object('allergens', (
          SELECT jsonb_agg(to_jsonb(a) ORDER BY a.allergen) FROM specification_allergen a
          WHERE a.specification_id = s.id))
      FROM specification s WHERE kind = 'specification' AND s.id = subject
    UNION ALL
    SELECT jsonb_build_object('scope', r.frozen_scope, 'at', r.frozen_at, 'roots', r.roots)
      FROM recall_case r WHERE kind = 'recall_case' AND r.id = subject) whole
$$;

CREATE FUNCTION seal_frozen() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  INSERT INTO frozen_content (kind, subject_id, sha256)
  VALUES (TG_TABLE_NAME, NEW.id, frozen_sha256(TG_TABLE_NAME, NEW.id))
  ON CONFLICT DO NOTHING;
  RETURN NULL;
END $$;
-- Deferred to the commit: a specification may be written as approved before its allergens are.
CREATE CONSTRAINT TRIGGER seal_frozen AFTER INSERT OR UPDATE ON recipe_version
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW
  WHEN (NEW.frozen_at IS NOT NULL) EXECUTE FUNCTION seal_frozen();
CREATE CONSTRAINT TRIGGER seal_frozen AFTER INSERT OR UPDATE ON specification
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW
  WHEN (NEW.state <> 'draft') EXECUTE FUNCTION seal_frozen();
CREATE CONSTRAINT TRIGGER seal_frozen AFTER INSERT OR UPDATE ON recall_case
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW
  WHEN (NEW.frozen_at IS NOT NULL) EXECUTE FUNCTION seal_frozen();

INSERT INTO frozen_content (kind, subject_id, sha256)
SELECT 'recipe_version', id, frozen_sha256('recipe_version', id) FROM recipe_version
  WHERE frozen_at IS NOT NULL
UNION ALL SELECT 'specification', id, frozen_sha256('specification', id) FROM specification
  WHERE state <> 'draft'
UNION ALL SELECT 'recall_case', id, frozen_sha256('recall_case', id) FROM recall_case
  WHERE frozen_at IS NOT NULL;
