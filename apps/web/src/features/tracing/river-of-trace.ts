import type { components } from '../../api/schema';
import { addExact } from '../../shared/formats/exact';
import type { River, RiverFlow, RiverNode } from '../../shared/pictures/river';

type Trace = components['schemas']['TraceView'];
type TracedLot = components['schemas']['TracedLotView'];

export interface Names {
  readonly supplier: (name: string) => string;
  readonly counter: string;
}

/** The part of a lot that the question is about; the whole of it when the shares are not known. */
const partOf = ({ sharedMassGrams, madeMassGrams }: TracedLot): number =>
  sharedMassGrams === null || Number(madeMassGrams) === 0
    ? 1
    : Math.min(1, Number(sharedMassGrams) / Number(madeMassGrams));

/**
 * Grams in question that a lot sent into each lot of a batch: the batch's outputs share what was
 * drawn by their weight, as the service shares it. Behind, it is what ended in the lots asked about;
 * ahead, what came from them. Else a sack of sugar would hide the box that took a spoon of it. Only
 * the picture uses these numbers; every figure in the registers comes from the service.
 */
const inQuestion = (grams: string, from: TracedLot, made: readonly TracedLot[], to: TracedLot) => {
  const whole = made.reduce((sum, lot) => sum + Number(lot.madeMassGrams), 0);
  if (whole === 0 || (to.side === 'ahead' && from.side === 'behind')) return '0';
  const part = to.side === 'ahead' ? partOf(from) : partOf(to);
  return ((part * Number(grams) * Number(to.madeMassGrams)) / whole).toFixed(3);
};

const betweenLots = (trace: Trace): RiverFlow[] => {
  const known = new Map(trace.lots.map((lot) => [lot.code, lot]));
  const outputs = new Map<string, TracedLot[]>();
  for (const lot of trace.lots) {
    if (lot.madeByBatch === null) continue;
    outputs.set(lot.madeByBatch, [...(outputs.get(lot.madeByBatch) ?? []), lot]);
  }
  return trace.flows.flatMap(({ batch, lot, massGrams }) => {
    const from = known.get(lot);
    if (from === undefined) return [];
    const made = outputs.get(batch) ?? [];
    return made.map((output) => ({
      from: lot,
      to: output.code,
      grams: inQuestion(massGrams, from, made, output),
    }));
  });
};

const fromSuppliers = (trace: Trace): RiverFlow[] =>
  trace.lots.flatMap((lot) =>
    lot.supplier === null || lot.refused
      ? []
      : [
          {
            from: `supplier:${lot.supplier}`,
            to: lot.code,
            grams: lot.sharedMassGrams ?? lot.madeMassGrams,
          },
        ],
  );

const toCustomers = (trace: Trace): RiverFlow[] => {
  const sums = new Map<string, RiverFlow>();
  for (const { lot, customer, massGrams, sharedMassGrams } of trace.dispatches) {
    const to = `customer:${customer ?? ''}`;
    const key = `${lot} ${to}`;
    const before = sums.get(key)?.grams ?? '0';
    sums.set(key, { from: lot, to, grams: addExact(before, sharedMassGrams ?? massGrams) });
  }
  return [...sums.values()];
};

/** A trace as a river: suppliers, lots and customers, and the grams between them. */
export const riverOf = (trace: Trace, names: Names): River => {
  const flows = [...fromSuppliers(trace), ...betweenLots(trace), ...toCustomers(trace)].filter(
    ({ grams }) => Number(grams) > 0,
  );
  const used = new Set(flows.flatMap(({ from, to }) => [from, to]));
  const lots = trace.lots.map((lot): RiverNode => ({
    key: lot.code,
    name: `${lot.itemName}\n${lot.code}`,
    kind: lot.itemKind,
  }));
  const suppliers = new Set(trace.lots.flatMap(({ supplier }) => supplier ?? []));
  const customers = new Set(trace.dispatches.map(({ customer }) => customer ?? ''));
  const ends = [
    ...[...suppliers].map((name) => ({
      key: `supplier:${name}`,
      name: names.supplier(name),
      kind: 'supplier',
    })),
    ...[...customers].map((name) => ({
      key: `customer:${name}`,
      name: name === '' ? names.counter : name,
      kind: 'customer',
    })),
  ];
  return { nodes: [...lots, ...ends].filter(({ key }) => used.has(key)), flows };
};
