import { gramsText } from '../../domain/provenance';
import type { Subgraph } from './subgraph';
import type { DetailRows, LotRow } from './subgraph.rows';
import type { TracedLotView } from './trace.dto';
import { type Shared, sharedFields } from './trace.shares';

const sideOf = (row: LotRow, rootIds: ReadonlySet<string>): TracedLotView['side'] => {
  if (rootIds.has(row[0])) return 'root';
  return row[12] === 1 ? 'behind' : 'ahead';
};

type Received = NonNullable<DetailRows['received']>[number];

/** What a lot is and where it came from, in names. */
const originOf = (row: LotRow, rows: DetailRows, received: Received | undefined) => {
  const [itemName = '', itemKind = '', unit = ''] = rows.items?.[row[2]] ?? [];
  const [, supplier = null, supplierLotCode = null] = received ?? [];
  return { itemName, itemKind, unit, supplier, supplierLotCode };
};

const batchCode = (row: LotRow, rows: DetailRows): string | null =>
  row[3] === null ? null : (rows.batches?.[row[3]]?.[1] ?? null);

const placeName = (row: LotRow, rows: DetailRows): string | null =>
  row[11] === null ? null : (rows.places?.[row[11]] ?? null);

/** Days and codes are plain letters and figures: their order is the same in every language. */
const byAge = (a: TracedLotView, b: TracedLotView): number => {
  const [first, second] = [`${a.madeOn} ${a.code}`, `${b.madeOn} ${b.code}`];
  return first < second ? -1 : Number(first > second);
};

/** The lots of a trace, the oldest first. */
export const lotViews = (
  { rows, lots }: Subgraph<DetailRows>,
  rootIds: ReadonlySet<string>,
  shared: Shared | undefined,
): TracedLotView[] => {
  const held = new Set(rows.held ?? []);
  const received = new Map((rows.received ?? []).map((row) => [row[0], row]));
  const views = lots.map((row, number): TracedLotView => {
    const side = sideOf(row, rootIds);
    return {
      code: row[1],
      side,
      ...originOf(row, rows, received.get(number)),
      madeByBatch: batchCode(row, rows),
      place: placeName(row, rows),
      madeQuantity: row[5],
      madeMassGrams: gramsText(BigInt(row[4])),
      onHandQuantity: row[6],
      onHandMassGrams: gramsText(BigInt(row[7])),
      madeOn: row[8],
      bestBefore: row[9],
      useBy: row[10],
      held: held.has(number),
      refused: row[14],
      ...sharedFields(row, side, shared),
    };
  });
  return views.sort(byAge);
};
