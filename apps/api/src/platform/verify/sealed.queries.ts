import type { Rule } from './rule';

/** What was frozen, printed or noted stays as it was. */
export const sealed: Rule[] = [
  {
    name: 'frozen',
    meaning: 'A version in use, an approved specification and a frozen scope never change.',
    sql: `SELECT kind || ' ' || subject_id AS subject, 'its content differs from its seal' AS detail
      FROM frozen_content WHERE sha256 IS DISTINCT FROM frozen_sha256(kind, subject_id)`,
  },
  {
    name: 'unfrozen',
    meaning: 'What was used or approved is frozen, with a seal.',
    sql: `SELECT 'recipe_version ' || version.id AS subject, 'used by a batch, not frozen' AS detail
      FROM recipe_version version
      WHERE EXISTS (SELECT 1 FROM batch WHERE recipe_version_id = version.id)
        AND (version.frozen_at IS NULL OR NOT EXISTS (SELECT 1 FROM frozen_content f
          WHERE f.kind = 'recipe_version' AND f.subject_id = version.id))
      UNION ALL SELECT 'specification ' || s.id, 'approved without a seal' FROM specification s
      WHERE s.state <> 'draft' AND NOT EXISTS (SELECT 1 FROM frozen_content f
        WHERE f.kind = 'specification' AND f.subject_id = s.id)
      UNION ALL SELECT 'recall_case ' || r.id, 'its scope is frozen without a seal'
      FROM recall_case r WHERE r.state <> 'open' AND NOT EXISTS (SELECT 1 FROM frozen_content f
        WHERE f.kind = 'recall_case' AND f.subject_id = r.id)`,
  },
  {
    name: 'printed',
    meaning: 'What was printed, and a photograph that was kept, are the same bytes as then.',
    sql: `SELECT 'label run ' || id AS subject, 'the PDF differs from its sum' AS detail FROM label_run
      WHERE encode(sha256(pdf), 'hex') <> pdf_sha256
      UNION ALL SELECT 'photograph ' || id, 'the picture differs from its sum' FROM complaint_photo
      WHERE encode(sha256(bytes), 'hex') <> sha256`,
  },
  {
    name: 'journal',
    meaning: 'Every booking has a journal entry of its moment and its person.',
    sql: `SELECT kind || ' ' || id AS subject, format('at %s by %s', at, user_id) AS detail FROM (
        SELECT 'movement' AS kind, id, at, user_id FROM movement
        UNION ALL SELECT 'recall action', id, at, user_id FROM recall_action
        UNION ALL SELECT 'complaint', id, at, user_id FROM complaint
        UNION ALL SELECT 'hold', id, placed_at, placed_by_id FROM hold) booked
      WHERE NOT EXISTS (SELECT 1 FROM journal_entry entry
        WHERE entry.at = booked.at AND entry.user_id = booked.user_id)`,
  },
];
