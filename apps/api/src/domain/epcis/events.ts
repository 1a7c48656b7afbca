import type { LotQuantity, TraceFact } from './facts';
import { lotUri, ownUri, type Naming } from './identifiers';

interface QuantityElement {
  readonly epcClass: string;
  readonly quantity?: number;
  readonly uom?: 'GRM';
}

export type EpcisEvent = Readonly<Record<string, unknown>> & { readonly type: string };

/**
 * EPCIS takes quantities as JSON numbers. A quantity of the ledger has at most 14 digits, which a
 * double holds and prints without loss.
 */
const quantityElement = (naming: Naming, { lot, gtin, quantity, unit }: LotQuantity) =>
  ({
    epcClass: lotUri(naming, lot, gtin),
    quantity: quantity.toNumber(),
    ...(unit === 'g' ? { uom: 'GRM' } : {}),
  }) satisfies QuantityElement;

const elements = (naming: Naming, lots: readonly LotQuantity[]): QuantityElement[] =>
  lots.filter((lot) => lot.quantity.greaterThan(0)).map((lot) => quantityElement(naming, lot));

const common = (naming: Naming, fact: TraceFact) => ({
  eventID: `${naming.baseUri}/events/${fact.id}`,
  eventTime: fact.at,
  eventTimeZoneOffset: fact.offset,
  ...(fact.recordedAt === undefined ? {} : { recordTime: fact.recordedAt }),
  ...(fact.place === undefined
    ? {}
    : {
        readPoint: { id: ownUri(naming, 'places', fact.place) },
        bizLocation: { id: ownUri(naming, 'places', fact.place) },
      }),
});

const bestBefore = (day: string | undefined) =>
  day === undefined ? {} : { 'cbvmda:bestBeforeDate': day };

const received = (naming: Naming, fact: Extract<TraceFact, { kind: 'received' }>): EpcisEvent => ({
  type: 'ObjectEvent',
  ...common(naming, fact),
  action: 'OBSERVE',
  bizStep: 'receiving',
  disposition: 'in_progress',
  quantityList: elements(naming, fact.lots),
  bizTransactionList: [
    { type: 'recadv', bizTransaction: ownUri(naming, 'deliveries', fact.delivery) },
  ],
  sourceList: [{ type: 'possessing_party', source: ownUri(naming, 'suppliers', fact.supplier) }],
  ...(fact.supplierLot === undefined ? {} : { 'workshop:supplierLot': fact.supplierLot }),
  ...(fact.bestBefore === undefined ? {} : { 'workshop:bestBeforeDate': fact.bestBefore }),
});

const made = (naming: Naming, fact: Extract<TraceFact, { kind: 'made' }>): EpcisEvent => {
  const [first] = fact.outputs;
  return {
    type: 'TransformationEvent',
    ...common(naming, fact),
    transformationID: ownUri(naming, 'batches', fact.batch),
    bizStep: fact.step === 'making' ? 'commissioning' : ownUri(naming, 'steps', 'charging-a-tank'),
    disposition: 'active',
    inputQuantityList: elements(naming, fact.inputs),
    outputQuantityList: elements(naming, fact.outputs),
    ...(first === undefined
      ? {}
      : { ilmd: { 'cbvmda:lotNumber': first.lot, ...bestBefore(fact.bestBefore) } }),
  };
};

/** The box lot's own identifier is the parent, so that the shipping of that lot links to it. */
const packed = (naming: Naming, fact: Extract<TraceFact, { kind: 'packed' }>): EpcisEvent => ({
  type: 'AggregationEvent',
  ...common(naming, fact),
  action: 'ADD',
  bizStep: 'packing',
  disposition: 'in_progress',
  parentID: lotUri(naming, fact.box.lot, fact.box.gtin),
  childQuantityList:
    fact.contentsShared === true
      ? fact.contents.map(({ lot, gtin }) => ({ epcClass: lotUri(naming, lot, gtin) }))
      : elements(naming, fact.contents),
  'workshop:boxes': fact.box.quantity.toNumber(),
  'workshop:batch': ownUri(naming, 'batches', fact.batch),
});

const shipped = (naming: Naming, fact: Extract<TraceFact, { kind: 'shipped' }>): EpcisEvent => ({
  type: 'ObjectEvent',
  ...common(naming, fact),
  action: 'OBSERVE',
  bizStep: fact.customer === undefined ? 'retail_selling' : 'shipping',
  disposition: fact.customer === undefined ? 'retail_sold' : 'in_transit',
  quantityList: elements(naming, fact.lots),
  bizTransactionList: [
    { type: 'desadv', bizTransaction: ownUri(naming, 'dispatches', fact.dispatch) },
  ],
  ...(fact.customer === undefined
    ? {}
    : {
        destinationList: [
          { type: 'possessing_party', destination: ownUri(naming, 'customers', fact.customer) },
        ],
      }),
});

const destroyed = (
  naming: Naming,
  fact: Extract<TraceFact, { kind: 'destroyed' }>,
): EpcisEvent => ({
  type: 'ObjectEvent',
  ...common(naming, fact),
  action: 'OBSERVE',
  bizStep: 'destroying',
  disposition: 'destroyed',
  quantityList: elements(naming, fact.lots),
});

/** One EPCIS 2.0 event for one recorded fact, as plain JSON. */
export const epcisEvent = (naming: Naming, fact: TraceFact): EpcisEvent => {
  switch (fact.kind) {
    case 'received':
      return received(naming, fact);
    case 'made':
      return made(naming, fact);
    case 'packed':
      return packed(naming, fact);
    case 'shipped':
      return shipped(naming, fact);
    case 'destroyed':
      return destroyed(naming, fact);
  }
};
