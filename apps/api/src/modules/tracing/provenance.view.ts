import { fromMilligrams, type LotGraph, makeUp, provenance } from '../../domain/provenance';
import type { ProvenanceView } from './provenance.dto';
import type { Subgraph } from './subgraph';
import type { DetailRows } from './subgraph.rows';

export const provenanceView = (
  { rows, lots }: Subgraph<DetailRows>,
  graph: LotGraph,
  code: string,
): ProvenanceView => {
  const numberOf = new Map(lots.map((row, number) => [row[1], number]));
  const received = new Map((rows.received ?? []).map((row) => [row[0], row]));
  const massG = fromMilligrams(BigInt(lots[numberOf.get(code) ?? 0]?.[4] ?? 0));
  const printed = new Map(makeUp(graph, code, massG).map((part) => [part.lot, part.massG]));
  return {
    lot: code,
    massGrams: massG.toFixed(3),
    contributions: provenance(graph, code, massG).map((row) => {
      const number = numberOf.get(row.lot) ?? -1;
      const origin = received.get(number);
      return {
        lot: row.lot,
        itemName: rows.items?.[lots[number]?.[2] ?? '']?.[0] ?? '',
        received: row.received,
        supplier: origin?.[1] ?? null,
        supplierLotCode: origin?.[2] ?? null,
        massGrams: row.massG.toFixed(3),
        ingoingGrams: row.ingoingG.toFixed(3),
        massRatio: row.massRatio.toFixed(9),
        printedGrams: printed.get(row.lot)?.toFixed(3) ?? null,
      };
    }),
  };
};
