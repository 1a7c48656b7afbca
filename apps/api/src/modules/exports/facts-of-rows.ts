import { Temporal } from 'temporal-polyfill';
import type { LotQuantity, TraceFact } from '../../domain/epcis';
import { Decimal } from '../../domain/units';
import type { FactRow, LotJson } from './trace-facts.queries';

const lotOf = ({ lot, gtin, quantity, unit }: LotJson): LotQuantity => ({
  lot,
  unit,
  quantity: new Decimal(quantity),
  ...(gtin === null ? {} : { gtin }),
});

/** The workshop's offset at a moment, as +hh:mm. */
const offsetAt = (at: Date, timeZone: string): string =>
  Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(timeZone).offset;

/**
 * One fact for each row; a packing that made several box lots gives one for each, and none of them
 * says how much of the contents is in it: EPCIS has no shares.
 */
export const factsOfRow = (row: FactRow, timeZone: string): TraceFact[] => {
  const common = {
    id: row.id,
    at: row.at.toISOString(),
    offset: offsetAt(row.at, timeZone),
    ...(row.place === null ? {} : { place: row.place }),
  };
  const inputs = row.inputs.map(lotOf);
  const outputs = row.outputs.map(lotOf);
  const dated = row.bestBefore === null ? {} : { bestBefore: row.bestBefore };
  switch (row.kind) {
    case 'received':
      return [
        {
          ...common,
          ...dated,
          kind: 'received',
          delivery: row.document,
          supplier: row.party ?? '',
          lots: outputs,
          ...(row.supplierLot === null ? {} : { supplierLot: row.supplierLot }),
        },
      ];
    case 'made': {
      const step = row.batchKind === 'charge' ? 'charging' : 'making';
      return [{ ...common, ...dated, kind: 'made', batch: row.document, step, inputs, outputs }];
    }
    case 'packed':
      return outputs.map((box, index) => ({
        ...common,
        id: index === 0 ? row.id : `${row.id}-${String(index + 1)}`,
        kind: 'packed',
        batch: row.document,
        box,
        contents: inputs,
        ...(outputs.length > 1 ? { contentsShared: true } : {}),
      }));
    case 'shipped':
      return [
        {
          ...common,
          kind: 'shipped',
          dispatch: row.document,
          lots: outputs,
          ...(row.party === null ? {} : { customer: row.party }),
        },
      ];
    case 'destroyed':
      return [{ ...common, kind: 'destroyed', lots: outputs }];
  }
};
