import type { IngoingLot } from '@api/domain/declaration';
import type { LabelAsk, LabelSettings, MarketCode } from '@api/domain/label';
import { MARKETS } from '@api/domain/market';
import { Decimal } from '@api/domain/units';
import { Temporal } from 'temporal-polyfill';

const d = (value: string | number): Decimal => new Decimal(value);

export const settings = (more: Partial<LabelSettings> = {}): LabelSettings => ({
  names: { en: 'Hazelnut ganache chocolates' },
  legalName: { kind: 'confectionery' },
  listForm: 'nested',
  additiveForm: 'name',
  quantifiedItemIds: new Set(),
  groups: { kinds: new Set(), oilsVary: false },
  interchangeable: [],
  largestSurfaceCm2: d(120),
  panelAreaCm2: d(100),
  pack: { netG: d(125), form: 'loose', count: null, largeUnit: 'kg' },
  eMarkEarned: false,
  dateForm: 'full',
  storage: { en: 'Store at 15–18 °C' },
  origin: null,
  primaryOrigin: { state: 'unset', text: null },
  protectiveAtmosphere: false,
  nutrition: {
    always: false,
    portionG: null,
    referenceIntakes: false,
    fibre: false,
    naturalSaltOnly: false,
    makesClaim: false,
    smallLocalMaker: true,
    usSmallBusiness: true,
    candyKind: 'candy',
    pieceG: null,
    preferMorePieces: false,
  },
  ...more,
});

/** A label to be composed from lots; the finished weight is what went in unless stated. */
export const ask = (
  lots: readonly IngoingLot[],
  market: MarketCode = 'EU',
  more: Partial<LabelAsk> = {},
): LabelAsk => ({
  market: MARKETS[market],
  languages: ['en'],
  mix: { lots, finishedG: lots.reduce((total, entry) => total.plus(entry.ingoingG), d(0)) },
  settings: settings(),
  operator: { name: 'Invented Workshop', addressLines: ['1 Example Lane', '1000 Nowhere'] },
  lotCode: '2026-331-A',
  madeOn: Temporal.PlainDate.from('2026-11-25'),
  last: Temporal.PlainDate.from('2027-01-20'),
  dateKind: 'best_before',
  today: Temporal.PlainDate.from('2026-11-26'),
  shellG: null,
  contacts: { lines: [], sittingG: d(30), decisions: [] },
  price: null,
  ...more,
});
