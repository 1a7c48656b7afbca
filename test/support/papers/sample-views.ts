import type {
  AllergenMatrixView,
  BatchSheetView,
  DeliveryNoteView,
  DiaryView,
  LegendCardView,
  LotTagView,
  PriceListView,
  RecallNoticeView,
  RecallView,
  TraceReportView,
} from '@api/documents';

// An invented workshop's goods: no real product, person or place.

export const lotTagView: LotTagView = {
  code: '261125-001K',
  itemName: 'Whipping cream 35 % fat',
  quantity: '5000.000',
  unit: 'g',
  date: '2026-12-05',
  dateKind: 'use_by',
  madeOn: '2026-11-25',
  received: true,
  supplierName: 'Laiterie du Vallon',
  supplierLotCode: 'LV-8841',
  placeName: 'Fridge 1',
  storageConditions: 'Keep at 2 to 4 °C',
  allergenNames: ['milk'],
  allergensUnknown: false,
  holdReason: null,
  copies: 1,
};

export const batchSheetView: BatchSheetView = {
  code: 'B-261125-00Q4',
  itemName: 'Ganache, salted butter caramel',
  recipeVersion: 3,
  openedAt: new Date('2026-11-25T07:40:00Z'),
  operatorName: 'Maud',
  placeName: 'Kitchen',
  planned: { quantity: '4200.000', unit: 'g' },
  part: { number: 2, count: 3 },
  lines: [
    ['Whipping cream 35 % fat', 'base', '1450.000', '261125-001K', '2026-12-05', true],
    ['Dark couverture 66 %', 'base', '1810.000', '261103-0047', '2027-09-30', false],
    ['Glucose syrup', 'base', '240.000', '261012-0031', '2027-05-31', false],
    ['Bergamot tea', 'infusion', '38.000', null, null, false],
    ['Butter, unsalted', 'base', '520.000', '261120-002M', '2026-12-14', false],
  ].map(([itemName, role, quantity, lotCode, lotDate, isUseBy]) => ({
    itemName: itemName as string,
    role: role as string,
    quantity: quantity as string,
    unit: 'g' as const,
    lotCode: lotCode as string | null,
    lotDate: lotDate as string | null,
    isUseBy: isUseBy as boolean,
  })),
  steps: [
    {
      title: 'Infuse',
      text: 'Bring the cream to the boil, add the tea, cover, strain after six minutes. Weigh the strained cream and top it up.',
      checks: [{ measure: 'Cream', low: '80', high: '85', unit: '°C' }],
    },
    {
      title: 'Emulsify',
      text: 'Pour over the couverture in thirds. Mix from the middle until it shines.',
      checks: [
        { measure: 'Ganache', low: '32', high: '36', unit: '°C' },
        { measure: 'pH', low: null, high: '5.6', unit: '' },
      ],
    },
    { title: 'Cover and rest', text: '', checks: [] },
  ],
  allergenNames: ['milk', 'soy'],
  allergensUnknown: false,
};

export const deliveryNoteView: DeliveryNoteView = {
  code: 'D-261125-00B2',
  sentOn: '2026-11-25',
  customer: { name: 'Hôtel des Marées', addressLines: ['1 Seafront', '10000 Portville'] },
  note: 'Leave at the kitchen door.',
  lines: [
    {
      itemName: 'Box of 12, harbour assortment',
      lotCode: '261124-0094',
      quantity: '24.000',
      unit: 'pc',
      massG: '3168.000',
      date: '2027-01-05',
      dateKind: 'best_before',
      storageConditions: 'Keep at 14 to 18 °C, dry and dark',
    },
    {
      itemName: 'Loose pieces, raspberry heart',
      lotCode: '261123-008H',
      quantity: '150.000',
      unit: 'pc',
      massG: '1650.000',
      date: '2026-12-20',
      dateKind: 'use_by',
      storageConditions: null,
    },
  ],
};

export const recallView: RecallView = {
  code: 'R-261125-0012',
  mode: 'rehearsal',
  reason: 'Supplier warning: pieces of metal in cream, lot LV-8841',
  openedAt: new Date('2026-11-25T12:10:00Z'),
  askedAt: new Date('2026-11-25T12:12:00Z'),
  lots: [
    {
      code: '261124-0094',
      itemName: 'Box of 12, harbour assortment',
      quantity: '60.000',
      unit: 'pc',
      date: '2027-01-05',
      dateKind: 'best_before',
    },
    {
      code: '261123-008H',
      itemName: 'Raspberry heart',
      quantity: '420.000',
      unit: 'pc',
      date: '2026-12-20',
      dateKind: 'use_by',
    },
  ],
  customers: [
    {
      name: 'Hôtel des Marées',
      addressLines: ['1 Seafront', '10000 Portville'],
      phone: '+00 2 22 33 44',
      email: 'kitchen@marees.example',
      told: false,
      sales: [
        {
          dispatchCode: 'D-261125-00B2',
          sentOn: '2026-11-25',
          lotCode: '261124-0094',
          itemName: 'Box of 12, harbour assortment',
          quantity: '24.000',
          unit: 'pc',
          learnedLater: false,
        },
        {
          dispatchCode: 'D-261125-00B2',
          sentOn: '2026-11-25',
          lotCode: '261123-008H',
          itemName: 'Raspberry heart',
          quantity: '150.000',
          unit: 'pc',
          learnedLater: false,
        },
      ],
    },
    {
      name: 'Épicerie du Pont',
      addressLines: ['12 Bridge Street', '10010 Amont'],
      phone: null,
      email: 'pont@epicerie.example',
      told: false,
      sales: [
        {
          dispatchCode: 'D-261124-009Z',
          sentOn: '2026-11-24',
          lotCode: '261124-0094',
          itemName: 'Box of 12, harbour assortment',
          quantity: '12.000',
          unit: 'pc',
          learnedLater: false,
        },
      ],
    },
  ],
  counter: [
    {
      dispatchCode: 'D-261125-00C1',
      sentOn: '2026-11-25',
      lotCode: '261123-008H',
      itemName: 'Raspberry heart',
      quantity: '61.000',
      unit: 'pc',
      learnedLater: false,
    },
  ],
  onHand: [
    {
      lotCode: '261124-0094',
      itemName: 'Box of 12, harbour assortment',
      quantity: '24.000',
      unit: 'pc',
      placeName: 'Shop',
      held: true,
      learnedLater: false,
    },
    {
      lotCode: '261123-008H',
      itemName: 'Raspberry heart',
      quantity: '205.000',
      unit: 'pc',
      placeName: 'Cold room',
      held: false,
      learnedLater: true,
    },
  ],
  changes: [{ lotCode: '261123-008H', change: 'now-in-scope', fields: [] }],
  ended: [{ what: 'sampled', lotCode: '261123-008H', quantity: '4.000', unit: 'pc' }],
};

export const recallNoticeView: RecallNoticeView = {
  code: 'R-261125-0012',
  mode: 'real',
  reason: 'Small pieces of metal may be in the filling. They can hurt mouth and throat.',
  advice:
    'Don’t eat these chocolates. Bring them back to the shop; you get your money back without a receipt.',
  products: [
    {
      itemName: 'Box of 12, harbour assortment',
      lotMark: 'L261124-0094',
      date: '2027-01-05',
      dateKind: 'best_before',
    },
    {
      itemName: 'Raspberry heart, loose',
      lotMark: 'L261123-008H',
      date: '2026-12-20',
      dateKind: 'use_by',
    },
  ],
};

const traceLot = (
  code: string,
  itemName: string,
  shared: string | null,
  more: object = {},
): TraceReportView['roots'][number] => ({
  code,
  itemName,
  madeOn: '2026-11-24',
  made: '4200.000',
  onHand: '310.500',
  unit: 'g',
  supplierLot: null,
  batchCode: 'B-261124-00P1',
  sharedMassG: shared,
  held: false,
  ...more,
});

export const traceView: TraceReportView = {
  subject: '261125-001K Whipping cream 35 % fat',
  subjectCode: '261125-001K',
  askedAt: new Date('2026-11-25T12:12:00Z'),
  roots: [
    traceLot('261125-001K', 'Whipping cream 35 % fat', '5000.000', {
      supplierLot: 'Laiterie du Vallon, LV-8841',
      batchCode: null,
      held: true,
    }),
  ],
  behind: [],
  ahead: [
    traceLot('261125-002X', 'Ganache, salted butter caramel', '1450.000'),
    traceLot('261125-0031', 'Raspberry heart', '512.250', {
      unit: 'pc',
      made: '420.000',
      onHand: '205.000',
    }),
    traceLot('261125-0042', 'Dark couverture in tank 1', null),
  ],
  sent: recallView.customers
    .flatMap(({ name, sales }) => sales.map((sale) => ({ ...sale, customerName: name })))
    .concat(
      recallView.counter.map((sale) => ({ ...sale, customerName: null as unknown as string })),
    ),
  throughTank: true,
  balance: {
    unit: 'g',
    sources: [{ kind: 'received', note: '261124-0031', quantity: '5000.000', percent: '100.00' }],
    ends: [
      { kind: 'dispatched', note: null, quantity: '1450.000', percent: '29.00' },
      { kind: 'loss', note: 'scrapings', quantity: '239.500', percent: '4.79' },
      { kind: 'on-hand', note: null, quantity: '3310.500', percent: '66.21' },
    ],
    sourceQuantity: '5000.000',
    unexplainedQuantity: '0.000',
    accountedPercent: '100.00',
  },
};

export const diaryView: DiaryView = {
  from: '2026-11-24',
  to: '2026-11-25',
  days: [
    {
      day: '2026-11-24',
      entries: [
        {
          time: '07:02',
          kind: 'reading',
          subject: 'Fridge 1',
          what: '3.2 °C (limits 1 to 4)',
          attention: false,
          userName: 'Maud',
        },
        {
          time: '14:40',
          kind: 'reading',
          subject: 'Fridge 1',
          what: '7.9 °C, above 4: door left open; goods moved to fridge 2',
          attention: true,
          userName: 'Maud',
        },
        {
          time: '18:15',
          kind: 'cleaning',
          subject: 'Tank 1',
          what: 'wiped, scraper changed',
          attention: false,
          userName: 'Ines',
        },
      ],
    },
    {
      day: '2026-11-25',
      entries: [
        {
          time: '08:00',
          kind: 'mould',
          subject: 'M-0042 half sphere',
          what: 'chipped: corner of cavity 7',
          attention: true,
          userName: 'Ines',
        },
        {
          time: '08:03',
          kind: 'hold',
          subject: '261123-008H Raspberry heart',
          what: 'mould M-0042 chipped',
          attention: true,
          userName: 'Ines',
        },
      ],
    },
  ],
};

export const priceListView: PriceListView = {
  kind: 'counter',
  validFrom: '2026-12-01',
  currency: 'EUR',
  groups: [
    {
      name: 'Boxes',
      rows: [
        {
          name: 'Box of 6, quay',
          content: '6 pieces, 66 g',
          price: '9.50',
          pricePerKg: '143.94',
          vatPercent: '20',
        },
        {
          name: 'Box of 12, harbour assortment',
          content: '12 pieces, 132 g',
          price: '17.90',
          pricePerKg: '135.61',
          vatPercent: '20',
        },
      ],
    },
    {
      name: 'Loose',
      rows: [
        {
          name: 'All pieces',
          content: 'by weight',
          price: '98.00',
          pricePerKg: null,
          vatPercent: '5.5',
        },
      ],
    },
  ],
};

const ALLERGENS = [
  'wheat',
  'barley',
  'egg',
  'peanut',
  'soy',
  'milk',
  'almond',
  'hazelnut',
  'walnut',
  'cashew',
  'pistachio',
  'macadamia nut',
  'sesame',
  'sulphites',
];

export const allergenMatrixView: AllergenMatrixView = {
  day: '2026-11-25',
  allergens: ALLERGENS.map((name) => ({ code: name, name })),
  rows: [
    'Raspberry heart',
    'Salted caramel dome',
    'Hazelnut praline square with feuilletine',
    'Lime and basil',
    'Honey and pollen bar',
  ].map((name, row) => ({
    name,
    presence: Object.fromEntries(
      ALLERGENS.slice(0, row === 4 ? 12 : 14).map((code, column) => {
        const turn = (row * 7 + column * 3) % 9;
        return [code, turn === 0 ? 'contains' : turn === 4 ? 'may_contain' : 'absent'] as const;
      }),
    ),
  })),
};

export const legendCardView: LegendCardView = {
  boxName: 'Harbour assortment',
  rows: 3,
  columns: 4,
  slots: [1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6],
  pieces: [
    {
      number: 1,
      name: 'Raspberry heart',
      description: 'Raspberry jelly, dark chocolate 66 %',
      contains: ['soy'],
      mayContain: ['milk', 'nuts'],
      allergensUnknown: false,
    },
    {
      number: 2,
      name: 'Salted caramel dome',
      description: 'Soft caramel with sea salt',
      contains: ['milk', 'soy'],
      mayContain: ['nuts'],
      allergensUnknown: false,
    },
    {
      number: 3,
      name: 'Hazelnut square',
      description: 'Praline with crisp wafer',
      contains: ['hazelnut', 'wheat', 'milk'],
      mayContain: ['almond'],
      allergensUnknown: false,
    },
    {
      number: 4,
      name: 'Lime and basil',
      description: null,
      contains: ['milk'],
      mayContain: [],
      allergensUnknown: false,
    },
    {
      number: 5,
      name: 'Honey bar',
      description: 'Chestnut honey ganache',
      contains: ['milk'],
      mayContain: ['egg'],
      allergensUnknown: false,
    },
    {
      number: 6,
      name: 'Coffee cup',
      description: 'Espresso ganache',
      contains: ['milk', 'soy'],
      mayContain: [],
      allergensUnknown: false,
    },
  ],
  lotMark: 'L261124-0094',
  workshopName: 'Atelier Lunebleue',
};
