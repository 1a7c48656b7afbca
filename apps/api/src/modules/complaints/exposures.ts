import type { Exposure } from '../../domain/complaint-causes';
import type { Subgraph } from '../tracing';
import type { ComparableLot, MouldOfBatch, PlaceOfLot } from './common-causes.queries';

type Kind = 'lot' | 'mould' | 'tank' | 'person' | 'place';

/** A cause as one text, so that sets of causes are sets of texts. */
export const causeKey = (kind: Kind, name: string): string => `${kind}:${name}`;

export const causeOf = (key: string): { kind: Kind; name: string } => {
  const colon = key.indexOf(':');
  return { kind: key.slice(0, colon) as Kind, name: key.slice(colon + 1) };
};

interface Named {
  readonly moulds: readonly MouldOfBatch[];
  readonly stays: readonly PlaceOfLot[];
  readonly people: ReadonlyMap<string, string>;
  readonly tanks: ReadonlyMap<string, string>;
  readonly places: ReadonlyMap<string, string>;
}

/** The places where each lot itself ever stood, by the code of the lot. */
const placesOfLots = (lots: Subgraph['lots'], named: Named): Map<string, Set<string>> => {
  const codeOf = new Map(lots.map((row) => [row[0], row[1]]));
  const causes = new Map<string, Set<string>>(lots.map((row) => [row[1], new Set()]));
  for (const { lotId, placeId } of named.stays) {
    const place = named.places.get(placeId);
    if (place !== undefined) causes.get(codeOf.get(lotId) ?? '')?.add(causeKey('place', place));
  }
  return causes;
};

/** Who made each batch, where, from which tank and in which moulds, by the code of the batch. */
const causesOfBatches = (rows: Subgraph['rows'], named: Named): Map<string, Set<string>> => {
  const mouldsOf = new Map<string, string[]>();
  for (const { batchId, tag } of named.moulds) {
    mouldsOf.set(batchId, [...(mouldsOf.get(batchId) ?? []), tag]);
  }
  return new Map(
    (rows.batches ?? []).map((row) => {
      const causes = new Set<string>();
      const add = (kind: Kind, name: string | undefined): void => {
        if (name !== undefined) causes.add(causeKey(kind, name));
      };
      add('person', named.people.get(row[6]));
      add('tank', named.tanks.get(row[7] ?? ''));
      add('place', named.places.get(row[8] ?? ''));
      for (const tag of mouldsOf.get(row[0]) ?? []) add('mould', tag);
      return [row[1], causes] as const;
    }),
  );
};

/**
 * Everything behind each lot of a graph: lots, and the moulds, tanks, people and places of their
 * making. Built once in the order of making, so shared ancestors are shared work.
 */
export const causesBehind = (
  { rows, lots, graph }: Subgraph,
  named: Named,
): ReadonlyMap<string, ReadonlySet<string>> => {
  const behind = placesOfLots(lots, named);
  const batchCauses = causesOfBatches(rows, named);
  for (const batch of graph.ok ? graph.value.batches : []) {
    const causes = new Set(batchCauses.get(batch.id));
    for (const drawn of batch.lots) {
      causes.add(causeKey('lot', drawn));
      for (const cause of behind.get(drawn) ?? []) causes.add(cause);
    }
    for (const made of batch.outputs) {
      const own = behind.get(made);
      if (own) for (const cause of causes) own.add(cause);
    }
  }
  return behind;
};

/** The units of each comparable lot that went out, with all that was, or may have been, in them. */
export const exposuresOf = (
  comparable: readonly ComparableLot[],
  complaintsOf: ReadonlyMap<string, number>,
  behind: ReadonlyMap<string, ReadonlySet<string>>,
): Exposure[] =>
  comparable.map((lot) => {
    const complaints = complaintsOf.get(lot.code) ?? 0;
    return {
      unit: lot.code,
      complaints,
      others: Math.max(0, Math.round(Number(lot.sent)) - complaints),
      causes: new Set([causeKey('lot', lot.code), ...(behind.get(lot.code) ?? [])]),
    };
  });
