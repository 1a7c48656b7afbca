import { Client } from 'pg';
import { type BatchInMilligrams, lotGraphInMilligrams } from '../../domain/provenance';
import { RULES } from './faults.queries';

export interface Fault {
  /** Name of the rule that is broken. */
  readonly rule: string;
  readonly meaning: string;
  /** The lot, batch or entry. */
  readonly subject: string;
  readonly detail: string;
}

interface FaultRow {
  readonly subject: string;
  readonly detail: string;
}

/** Faults are named one by one up to this many of a rule; the rest is counted. */
const MOST_OF_A_RULE = 50;

/**
 * Looks through a whole database, as of one moment, for anything that the rules of the books forbid.
 * It changes nothing. An empty list says that none of these rules is broken, and no more than that.
 */
export const verifyDatabase = async (databaseUrl: string): Promise<Fault[]> => {
  const client = new Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query('BEGIN TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY');
    const faults: Fault[] = [];
    for (const { name, meaning, sql } of RULES) {
      const { rows } = await client.query<FaultRow>(sql);
      faults.push(...rows.slice(0, MOST_OF_A_RULE).map((row) => ({ rule: name, meaning, ...row })));
      if (rows.length > MOST_OF_A_RULE) {
        const detail = `${String(rows.length - MOST_OF_A_RULE)} more`;
        faults.push({ rule: name, meaning, subject: 'and', detail });
      }
    }
    return [...faults, ...(await circleFaults(client))];
  } finally {
    await client.end();
  }
};

/** A circle, or a batch whose losses are more than its draws: the graph can't be walked. */
const circleFaults = async (client: Client): Promise<Fault[]> => {
  const { rows } = await client.query<{
    id: string;
    draws: { lot: string; mg: number }[];
    losses: { lot: string | null; kind: string; mg: number }[];
    outputs: string[];
  }>(`
    SELECT batch.code AS id,
      (SELECT coalesce(json_agg(json_build_object('lot', code, 'mg', mg)), '[]') FROM (
        SELECT lot.code, (sum(draw.mass_g) * 1000)::bigint AS mg FROM draw
        JOIN lot ON lot.id = draw.lot_id WHERE draw.batch_id = batch.id
        GROUP BY lot.code HAVING sum(draw.quantity) > 0) d) AS draws,
      (SELECT coalesce(json_agg(json_build_object('lot', lot.code, 'kind', loss.kind,
        'mg', (loss.mass_g * 1000)::bigint)), '[]') FROM batch_loss loss
        LEFT JOIN lot ON lot.id = loss.lot_id WHERE loss.batch_id = batch.id) AS losses,
      ARRAY(SELECT code FROM lot
        WHERE lot.batch_id = batch.id AND lot.taken_back_at IS NULL) AS outputs
    FROM batch`);
  const graph = lotGraphInMilligrams(
    rows.map((row): BatchInMilligrams => ({
      id: row.id,
      draws: row.draws.map(({ lot, mg }) => ({ lot, mg: BigInt(mg) })),
      losses: row.losses.map(({ lot, kind, mg }) => ({
        mg: BigInt(mg),
        volatile: kind === 'steam',
        ...(lot === null ? {} : { lot }),
      })),
      outputs: row.outputs,
    })),
  );
  if (graph.ok) return [];
  const { code, detail, facts } = graph.refusal;
  const named = facts?.['lots'] ?? facts?.['batch'] ?? facts?.['lot'];
  const subject = Array.isArray(named) ? named.join(', ') : String(named);
  return [
    { rule: code, meaning: 'Lots and batches make a graph without circles.', subject, detail },
  ];
};
