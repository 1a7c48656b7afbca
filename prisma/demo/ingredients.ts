import type { DemoSpecification, Part } from './specify';
import type { SupplierKey } from './workshop';

export interface DemoIngredient {
  readonly name: string;
  readonly supplier: SupplierKey;
  /** Money per kg. */
  readonly pricePerKg: string;
  /** Grams of one delivery line. */
  readonly packG: string;
  readonly lifeDays: number;
  readonly perishable?: boolean;
  readonly warmestTempC?: string;
  readonly capsDate?: boolean;
  readonly infusionOnly?: boolean;
  readonly specification: DemoSpecification;
}

const SOY_LECITHIN: Part = {
  en: 'soya lecithins', fr: 'lécithines de soja', percent: 0.4, from: 'soy',
  additive: { class: 'emulsifier', e: 'E322' },
}; // prettier-ignore
const COCOA_MASS: Part = { en: 'cocoa mass', fr: 'pâte de cacao' };
const COCOA_BUTTER: Part = { en: 'cocoa butter', fr: 'beurre de cacao' };
const SUGAR: Part = { en: 'sugar', fr: 'sucre', flags: { sugar: true } };
const MILK_POWDER: Part = { en: 'whole milk powder', fr: 'lait entier en poudre', from: 'milk' };
const VANILLA: Part = {
  en: 'vanilla extract',
  fr: 'extrait de vanille',
  percent: 0.1,
  flags: { flavouringUse: true },
};

const share = (part: Part, percent: number): Part => ({ ...part, percent });

/** Colour in cocoa butter, for decorating moulds. */
const colouredButter = (en: string, fr: string, e: string): DemoSpecification => ({
  en: `coloured cocoa butter (${en})`,
  fr: `beurre de cacao coloré (${fr})`,
  composition: { cocoaButter: 95, other: 5 },
  saturatedPercent: 60,
  parts: [share(COCOA_BUTTER, 95), { en, fr, percent: 5, additive: { class: 'colour', e } }],
});

const cocoa: readonly DemoIngredient[] = [
  {
    name: 'Dark couverture 64 %', supplier: 'cocoa', pricePerKg: '11.80', packG: '10000', lifeDays: 540,
    specification: {
      en: 'dark chocolate', fr: 'chocolat noir', chocolate: 'couverture', composition: 'dark-chocolate-60-69',
      saturatedPercent: 60, mayContain: ['milk', 'hazelnut', 'almond'], flags: { definedInUnionLaw: true },
      parts: [share(COCOA_MASS, 54), share(SUGAR, 35.5), share(COCOA_BUTTER, 10), SOY_LECITHIN, VANILLA],
    },
  },
  {
    name: 'Milk couverture 38 %', supplier: 'cocoa', pricePerKg: '12.40', packG: '10000', lifeDays: 480,
    specification: {
      en: 'milk chocolate', fr: 'chocolat au lait', chocolate: 'milk_couverture',
      composition: {
        water: 0.9, cocoaButter: 30, milkFat: 6.2, sucrose: 38.5, lactose: 8.6, protein: 8, fibre: 2.6,
        ash: 1.9, salt: 0.25, other: 3.05, fatFreeCocoa: 8, milkSolids: 23, dairyAsh: 1.3,
      },
      saturatedPercent: 61, mayContain: ['hazelnut', 'almond'], flags: { definedInUnionLaw: true },
      proteinPercent: { milk: 6 },
      parts: [share(SUGAR, 38.5), share(COCOA_BUTTER, 26), share(MILK_POWDER, 23), share(COCOA_MASS, 12), SOY_LECITHIN, VANILLA],
    },
  },
  {
    name: 'White couverture 31 %', supplier: 'cocoa', pricePerKg: '12.10', packG: '5000', lifeDays: 360,
    specification: {
      en: 'white chocolate', fr: 'chocolat blanc', chocolate: 'white_chocolate',
      composition: {
        water: 0.9, cocoaButter: 31, milkFat: 6.2, sucrose: 43.9, lactose: 9.3, protein: 6.8,
        ash: 1.5, salt: 0.25, other: 0.4, milkSolids: 23.5, dairyAsh: 1.5,
      },
      saturatedPercent: 61, mayContain: ['hazelnut', 'almond'], flags: { definedInUnionLaw: true },
      proteinPercent: { milk: 6.5 },
      parts: [share(SUGAR, 44), share(COCOA_BUTTER, 31.5), share(MILK_POWDER, 24), SOY_LECITHIN, VANILLA],
    },
  },
  {
    name: 'Cocoa butter', supplier: 'cocoa', pricePerKg: '19.50', packG: '2000', lifeDays: 540,
    specification: { ...COCOA_BUTTER, composition: 'cocoa-butter', saturatedPercent: 60 },
  },
  {
    name: 'Coloured cocoa butter, red', supplier: 'cocoa', pricePerKg: '68.00', packG: '500', lifeDays: 360, capsDate: false,
    specification: colouredButter('carmines', 'carmins', 'E120'),
  },
  {
    name: 'Coloured cocoa butter, ochre', supplier: 'cocoa', pricePerKg: '64.00', packG: '500', lifeDays: 360, capsDate: false,
    specification: colouredButter('iron oxides', 'oxydes de fer', 'E172'),
  },
]; // prettier-ignore

const dairy: readonly DemoIngredient[] = [
  {
    name: 'Cream 35 %', supplier: 'dairy', pricePerKg: '4.60', packG: '2500', lifeDays: 21, perishable: true, warmestTempC: '6.00', capsDate: false,
    specification: { en: 'cream', fr: 'crème', from: 'milk', composition: 'cream-35', saturatedPercent: 65, proteinPercent: { milk: 2.2 } },
  },
  {
    name: 'Butter, unsalted', supplier: 'dairy', pricePerKg: '9.20', packG: '2500', lifeDays: 60, perishable: true, warmestTempC: '6.00', capsDate: false,
    specification: { en: 'butter', fr: 'beurre', from: 'milk', composition: 'butter-unsalted', saturatedPercent: 65, proteinPercent: { milk: 0.85 } },
  },
  {
    name: 'Sweetened condensed milk', supplier: 'dairy', pricePerKg: '3.90', packG: '2000', lifeDays: 240,
    specification: {
      en: 'sweetened condensed milk', fr: 'lait concentré sucré', composition: 'condensed-milk-sweetened', saturatedPercent: 63,
      parts: [{ en: 'milk', fr: 'lait', percent: 56, from: 'milk' }, share(SUGAR, 44)], proteinPercent: { milk: 7.7 },
    },
  },
]; // prettier-ignore

const nuts: readonly DemoIngredient[] = [
  {
    name: 'Hazelnuts, roasted', supplier: 'nuts', pricePerKg: '17.80', packG: '5000', lifeDays: 180,
    specification: { en: 'hazelnuts', fr: 'noisettes', from: 'hazelnut', composition: 'hazelnut-roasted', saturatedPercent: 8, mayContain: ['almond', 'pistachio'], flags: { characterises: true }, proteinPercent: { hazelnut: 14.4 } },
  },
  {
    name: 'Almonds, blanched', supplier: 'nuts', pricePerKg: '13.90', packG: '5000', lifeDays: 240,
    specification: { en: 'almonds', fr: 'amandes', from: 'almond', composition: 'almond-blanched', saturatedPercent: 8, mayContain: ['hazelnut', 'pistachio'], flags: { characterises: true }, proteinPercent: { almond: 21.4 } },
  },
  {
    name: 'Pistachio paste', supplier: 'nuts', pricePerKg: '44.00', packG: '1000', lifeDays: 180,
    specification: { en: 'pistachios', fr: 'pistaches', from: 'pistachio', composition: 'pistachio-roasted', saturatedPercent: 12, mayContain: ['hazelnut', 'almond'], flags: { characterises: true }, proteinPercent: { pistachio: 18.4 } },
  },
  {
    name: 'Hazelnut brittle', supplier: 'nuts', pricePerKg: '16.20', packG: '2000', lifeDays: 150,
    specification: {
      en: 'hazelnut brittle', fr: 'nougatine de noisettes', composition: { water: 1, nutFat: 24, sucrose: 62, protein: 6, fibre: 4, ash: 1, other: 2 }, saturatedPercent: 8, mayContain: ['almond'], unknown: ['sesame'],
      parts: [share(SUGAR, 62), { en: 'hazelnuts', fr: 'noisettes', percent: 38, from: 'hazelnut' }],
    },
  },
]; // prettier-ignore

const sugar: readonly DemoIngredient[] = [
  {
    name: 'Sugar', supplier: 'sugar', pricePerKg: '1.35', packG: '25000', lifeDays: 900, capsDate: false,
    specification: { ...SUGAR, composition: 'sucrose' },
  },
  {
    name: 'Glucose syrup DE 40', supplier: 'sugar', pricePerKg: '2.10', packG: '5000', lifeDays: 365,
    specification: { en: 'glucose syrup', fr: 'sirop de glucose', from: 'wheat', exclusion: 'wheat_glucose_syrup', composition: 'glucose-syrup-de-40', flags: { sugar: true } },
  },
  {
    name: 'Invert sugar syrup', supplier: 'sugar', pricePerKg: '3.40', packG: '5000', lifeDays: 300,
    specification: { en: 'invert sugar syrup', fr: 'sirop de sucre inverti', composition: 'invert-sugar', flags: { sugar: true } },
  },
  {
    name: 'Sorbitol powder', supplier: 'sugar', pricePerKg: '5.20', packG: '2000', lifeDays: 700,
    specification: { en: 'sorbitols', fr: 'sorbitols', additive: { class: 'humectant', e: 'E420' }, composition: 'sorbitol-powder', flags: { polyol: true } },
  },
  {
    name: 'Dextrose monohydrate', supplier: 'sugar', pricePerKg: '2.60', packG: '2000', lifeDays: 700,
    specification: { en: 'dextrose', fr: 'dextrose', composition: 'dextrose-monohydrate', flags: { sugar: true } },
  },
  {
    name: 'Sea salt, fine', supplier: 'sugar', pricePerKg: '2.90', packG: '1000', lifeDays: 1500, capsDate: false,
    specification: { en: 'salt', fr: 'sel', composition: { water: 0.03, salt: 99.9 } },
  },
]; // prettier-ignore

const fruit: readonly DemoIngredient[] = [
  {
    name: 'Raspberry purée', supplier: 'fruit', pricePerKg: '9.40', packG: '5000', lifeDays: 300, perishable: true, warmestTempC: '-12.00', capsDate: false,
    specification: { en: 'raspberry purée', fr: 'purée de framboise', composition: 'raspberry', flags: { characterises: true } },
  },
  {
    name: 'Passion-fruit purée', supplier: 'fruit', pricePerKg: '12.70', packG: '2000', lifeDays: 300, perishable: true, warmestTempC: '-12.00', capsDate: false,
    specification: { en: 'passion-fruit purée', fr: 'purée de fruit de la passion', composition: 'passion-fruit', flags: { characterises: true } },
  },
  {
    name: 'Mango purée', supplier: 'fruit', pricePerKg: '8.20', packG: '2000', lifeDays: 300, perishable: true, warmestTempC: '-12.00', capsDate: false,
    specification: { en: 'mango purée', fr: 'purée de mangue', composition: 'mango' },
  },
  {
    name: 'Pectin', supplier: 'fruit', pricePerKg: '38.00', packG: '1000', lifeDays: 540, capsDate: false,
    specification: { en: 'pectins', fr: 'pectines', additive: { class: 'gelling_agent', e: 'E440' }, composition: { water: 10, fibre: 88, ash: 2 } },
  },
  {
    name: 'Citric acid', supplier: 'fruit', pricePerKg: '6.00', packG: '500', lifeDays: 900, capsDate: false,
    specification: { en: 'citric acid', fr: 'acide citrique', additive: { class: 'acid', e: 'E330' }, composition: { organicAcids: 100 } },
  },
  {
    name: 'Candied orange peel', supplier: 'fruit', pricePerKg: '11.30', packG: '2000', lifeDays: 300, 
    specification: {
      en: 'candied orange peel', fr: 'écorces d’orange confites', composition: { water: 17, sucrose: 38, glucose: 18, fructose: 16, higherSaccharides: 8, fibre: 2.5, protein: 0.5 }, sulphiteMgPerKg: 6, flags: { characterises: true },
      parts: [{ en: 'orange peel', fr: 'écorce d’orange', percent: 50 }, share(SUGAR, 30), { en: 'glucose syrup', fr: 'sirop de glucose', percent: 20, from: 'wheat', exclusion: 'wheat_glucose_syrup', flags: { sugar: true } }],
    },
  },
]; // prettier-ignore

const spirits: readonly DemoIngredient[] = [
  {
    name: 'Cane spirit 40 %', supplier: 'spirits', pricePerKg: '21.00', packG: '1000', lifeDays: 3650, capsDate: false,
    specification: { en: 'cane spirit', fr: 'eau-de-vie de canne', composition: 'spirit-40', flags: { volatile: true } },
  },
  {
    name: 'Smoked black tea', supplier: 'spirits', pricePerKg: '46.00', packG: '500', lifeDays: 540, infusionOnly: true, capsDate: false,
    specification: { en: 'black tea', fr: 'thé noir', composition: 'tea-leaf', flags: { flavouringUse: true } },
  },
  {
    name: 'Vanilla extract', supplier: 'spirits', pricePerKg: '190.00', packG: '250', lifeDays: 900, capsDate: false,
    specification: { en: 'vanilla extract', fr: 'extrait de vanille', composition: { water: 60, alcohol: 30, sucrose: 8, other: 2 }, flags: { flavouringUse: true, volatile: true } },
  },
]; // prettier-ignore

/** Thirty-odd ingredients of six suppliers. */
export const INGREDIENTS: readonly DemoIngredient[] = [
  ...cocoa,
  ...dairy,
  ...nuts,
  ...sugar,
  ...fruit,
  ...spirits,
];

export interface DemoPackaging {
  readonly name: string;
  readonly pricePerPiece: string;
  readonly pack: string;
}

export const PACKAGING: readonly DemoPackaging[] = [
  { name: 'Box for 9, board', pricePerPiece: '0.6200', pack: '400' },
  { name: 'Box for 16, board', pricePerPiece: '0.8800', pack: '400' },
  { name: 'Pad', pricePerPiece: '0.0600', pack: '1000' },
  { name: 'Ribbon, cut', pricePerPiece: '0.1100', pack: '1000' },
];
