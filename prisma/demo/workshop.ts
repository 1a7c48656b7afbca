// An invented workshop with invented suppliers and customers. Any likeness is chance.

export const WORKSHOP = {
  name: 'Zellemoor Chocolate Workshop',
  addressLines: ['3 Tanners’ Yard', '0000 Zellemoor'],
  phone: '+00 000 000 001',
  email: 'bench@zellemoor.example',
  market: 'EU',
  languages: ['en', 'fr'],
  currency: 'EUR',
  timeZone: 'Europe/Brussels',
  overheadRule: 'per_hour',
  overheadValue: '9.5000',
};

/** Passwords of the demo; the first start prints them. */
export const PEOPLE = [
  { name: 'Odile', role: 'owner', password: 'demo-owner-odile', pin: '1111' },
  { name: 'Matthis', role: 'maker', password: 'demo-maker-matthis', pin: '2222' },
  { name: 'Sanne', role: 'seller', password: 'demo-seller-sanne', pin: '3333' },
  { name: 'Inspector', role: 'auditor', password: 'demo-auditor-visit', pin: '4444' },
] as const;

export const LABOUR_RATES = [
  { role: 'maker', ratePerHour: '24.5000' },
  { role: 'packer', ratePerHour: '18.0000' },
];

/** Invented for the demo: rates of VAT hang on the product and the country, and change. */
export const VAT_RATES = [
  { productClass: 'filled chocolates', ratePercent: '6.000' },
  { productClass: 'confectionery', ratePercent: '21.000' },
];

export const PLACES = [
  {
    name: 'Dry store',
    kind: 'store',
    minTempC: '12.00',
    maxTempC: '20.00',
    maxHumidityPercent: '60.00',
    readingEveryHours: 24,
  },
  { name: 'Fridge', kind: 'fridge', minTempC: '1.00', maxTempC: '5.00', readingEveryHours: 12 },
  {
    name: 'Finished goods',
    kind: 'room',
    minTempC: '14.00',
    maxTempC: '18.00',
    maxHumidityPercent: '55.00',
    readingEveryHours: 24,
  },
  {
    name: 'Workroom',
    kind: 'room',
    minTempC: '17.00',
    maxTempC: '22.00',
    maxHumidityPercent: '55.00',
    readingEveryHours: 24,
  },
] as const;

export const SUPPLIERS = {
  cocoa: {
    name: 'Quenmark Cocoa Traders',
    addressLines: ['Dock 4', 'Quenmark'],
    email: 'orders@quenmark.example',
  },
  dairy: {
    name: 'Hollowbrook Dairy',
    addressLines: ['Mill Lane 1', 'Hollowbrook'],
    email: 'milk@hollowbrook.example',
  },
  nuts: {
    name: 'Orrinfield Nut Mill',
    addressLines: ['Orchard Row 9', 'Orrinfield'],
    email: 'mill@orrinfield.example',
  },
  sugar: {
    name: 'Sallowtree Sugar & Syrup',
    addressLines: ['Refinery Road 2', 'Sallowtree'],
    email: 'desk@sallowtree.example',
  },
  fruit: {
    name: 'Brackenholt Fruit',
    addressLines: ['Orchard Hill', 'Brackenholt'],
    email: 'fruit@brackenholt.example',
  },
  spirits: {
    name: 'Marrowby Spirits & Leaves',
    addressLines: ['Still Street 7', 'Marrowby'],
    email: 'still@marrowby.example',
  },
  packaging: {
    name: 'Ferrowick Boxes',
    addressLines: ['Board Works', 'Ferrowick'],
    email: 'boxes@ferrowick.example',
  },
} as const;
export type SupplierKey = keyof typeof SUPPLIERS;

export const CUSTOMERS = {
  hotel: {
    name: 'Hotel Tidewater',
    addressLines: ['Quay 12', 'Zellemoor'],
    phone: '+00 000 000 011',
    priceList: 'trade',
    minimumLifeDays: 7,
  },
  grocer: {
    name: 'Corner Grocer Ambrel',
    addressLines: ['Market Square 3', 'Zellemoor'],
    phone: '+00 000 000 012',
    priceList: 'trade',
    minimumLifeDays: 7,
  },
  restaurant: {
    name: 'Restaurant The Heron Ladder',
    addressLines: ['Weir Street 5', 'Ostrel'],
    phone: '+00 000 000 013',
    priceList: 'trade',
    minimumLifeDays: 5,
  },
  office: {
    name: 'Notary Office Pellingrove',
    addressLines: ['Court Lane 8', 'Ostrel'],
    phone: '+00 000 000 014',
    priceList: 'trade',
    minimumLifeDays: 7,
  },
} as const;
export type CustomerKey = keyof typeof CUSTOMERS;

export const MOULD_DESIGNS = {
  dome: {
    trays: 8,
    design: {
      name: 'Dome 30 mm',
      shape: 'hemisphere',
      rows: 4,
      columns: 6,
      cavityVolumeMl: '7.0686',
      pieceMassGrams: '8.600',
    },
  },
  square: {
    trays: 6,
    design: {
      name: 'Square 24 mm',
      shape: 'block',
      rows: 4,
      columns: 7,
      cavityVolumeMl: '7.8000',
      pieceMassGrams: '9.400',
    },
  },
  heart: {
    trays: 6,
    design: {
      name: 'Heart 32 mm',
      shape: 'other',
      rows: 3,
      columns: 8,
      cavityVolumeMl: '8.1000',
      pieceMassGrams: '9.800',
    },
  },
} as const;
export type MouldDesignKey = keyof typeof MOULD_DESIGNS;
