import type { MouldDesignKey } from './workshop';

export interface DemoLine {
  readonly item: string;
  /** Grams, or pieces for what is kept by the piece. */
  readonly quantity: string;
  readonly role: string;
}

export interface DemoFilling {
  readonly name: string;
  readonly lines: readonly DemoLine[];
  readonly yieldMassG: string;
  readonly lifeDays: number;
  readonly minutes: string;
  /** Grams of steam and of scrapings that a batch of these lines loses. */
  readonly steamG?: string;
  readonly heldBackG?: string;
  readonly scrapingsG: string;
  readonly dateKind?: 'best_before' | 'use_by';
  /** Days that it keeps out of the freezer; left out, it is not frozen. */
  readonly lifeAfterThawDays?: number;
  /** What changed in this version, and why. */
  readonly note?: string;
}

const base = (item: string, quantity: string): DemoLine => ({ item, quantity, role: 'base' });

/** Eight fillings: five ganaches, two nut fillings, a caramel and a jelly. */
export const FILLINGS: readonly DemoFilling[] = [
  {
    name: 'Dark ganache', yieldMassG: '3060.000', lifeDays: 35, minutes: '50', steamG: '22.000', scrapingsG: '48.000',
    lines: [base('Cream 35 %', '1000'), base('Dark couverture 64 %', '1500'), base('Glucose syrup DE 40', '200'), base('Invert sugar syrup', '150'), base('Sorbitol powder', '80'), base('Butter, unsalted', '200')],
  },
  {
    name: 'Smoked tea ganache', yieldMassG: '2900.000', lifeDays: 35, minutes: '65', steamG: '28.000', heldBackG: '88.000', scrapingsG: '44.000',
    lines: [base('Cream 35 %', '1116'), { item: 'Smoked black tea', quantity: '40', role: 'infusion' }, base('Milk couverture 38 %', '1500'), base('Invert sugar syrup', '180'), base('Sorbitol powder', '90'), base('Butter, unsalted', '174')],
  },
  {
    name: 'Raspberry ganache', yieldMassG: '2850.000', lifeDays: 42, minutes: '55', steamG: '60.000', scrapingsG: '40.000',
    lines: [base('Raspberry purée', '700'), base('Dark couverture 64 %', '1300'), base('Sugar', '350'), base('Glucose syrup DE 40', '250'), base('Invert sugar syrup', '150'), base('Butter, unsalted', '200')],
  },
  {
    name: 'Spirit ganache', yieldMassG: '2960.000', lifeDays: 42, minutes: '50', steamG: '20.000', scrapingsG: '45.000',
    lines: [base('Cream 35 %', '800'), base('Dark couverture 64 %', '1500'), base('Invert sugar syrup', '200'), base('Sorbitol powder', '100'), base('Butter, unsalted', '225'), base('Cane spirit 40 %', '200')],
  },
  {
    name: 'Hazelnut praline', yieldMassG: '2960.000', lifeDays: 120, minutes: '80', scrapingsG: '40.000',
    lines: [base('Hazelnuts, roasted', '1300'), base('Sugar', '1000'), base('Milk couverture 38 %', '500'), base('Cocoa butter', '190'), base('Sea salt, fine', '10')],
  },
  {
    name: 'Pistachio and almond praline', yieldMassG: '2460.000', lifeDays: 90, lifeAfterThawDays: 60, minutes: '80', scrapingsG: '40.000',
    lines: [base('Pistachio paste', '700'), base('Almonds, blanched', '700'), base('Sugar', '600'), base('White couverture 31 %', '400'), base('Cocoa butter', '100')],
  },
  {
    name: 'Salted caramel', yieldMassG: '2490.000', lifeDays: 60, minutes: '70', steamG: '360.000', scrapingsG: '50.000',
    lines: [base('Sugar', '1000'), base('Glucose syrup DE 40', '400'), base('Cream 35 %', '1000'), base('Butter, unsalted', '450'), base('Sea salt, fine', '30'), base('Vanilla extract', '20')],
  },
  {
    name: 'Passion-fruit jelly', yieldMassG: '2330.000', lifeDays: 90, minutes: '60', steamG: '450.000', scrapingsG: '40.000',
    lines: [base('Passion-fruit purée', '600'), base('Mango purée', '400'), base('Sugar', '1300'), base('Glucose syrup DE 40', '450'), base('Pectin', '40'), base('Citric acid', '30')],
  },
]; // prettier-ignore

/** The version that follows the first, written when its water activity had been measured twice. */
export const SECOND_VERSIONS: readonly DemoFilling[] = [
  {
    name: 'Raspberry ganache', yieldMassG: '2810.000', lifeDays: 42, minutes: '55', steamG: '60.000', scrapingsG: '40.000',
    note: 'Measured 0.86 twice: less purée and sugar, sorbitol added. Measure again before the first box.',
    lines: [base('Raspberry purée', '620'), base('Dark couverture 64 %', '1340'), base('Sugar', '230'), base('Glucose syrup DE 40', '250'), base('Invert sugar syrup', '170'), base('Sorbitol powder', '100'), base('Butter, unsalted', '200')],
  },
]; // prettier-ignore

export interface DemoPiece {
  readonly name: string;
  readonly design: MouldDesignKey;
  readonly chocolate: 'dark' | 'milk';
  readonly filling: string;
  readonly colour?: string;
  /** Grams a piece of shell, filling, cap and colour. */
  readonly shellG: string;
  readonly fillingG: string;
  readonly capG: string;
  readonly colourG?: string;
  readonly lifeDays: number;
}

/** Six pieces. */
export const PIECES: readonly DemoPiece[] = [
  { name: 'Dark dome', design: 'dome', chocolate: 'dark', filling: 'Dark ganache', shellG: '2.860', fillingG: '4.700', capG: '1.040', lifeDays: 35 },
  { name: 'Spirit dome', design: 'dome', chocolate: 'dark', filling: 'Spirit ganache', colour: 'Coloured cocoa butter, ochre', colourG: '0.050', shellG: '2.860', fillingG: '4.650', capG: '1.040', lifeDays: 42 },
  { name: 'Tea square', design: 'square', chocolate: 'milk', filling: 'Smoked tea ganache', shellG: '3.100', fillingG: '5.100', capG: '1.200', lifeDays: 35 },
  { name: 'Caramel square', design: 'square', chocolate: 'dark', filling: 'Salted caramel', shellG: '3.200', fillingG: '5.000', capG: '1.200', lifeDays: 60 },
  { name: 'Raspberry heart', design: 'heart', chocolate: 'dark', filling: 'Raspberry ganache', colour: 'Coloured cocoa butter, red', colourG: '0.080', shellG: '3.200', fillingG: '5.300', capG: '1.220', lifeDays: 42 },
  { name: 'Hazelnut heart', design: 'heart', chocolate: 'milk', filling: 'Hazelnut praline', shellG: '3.300', fillingG: '5.300', capG: '1.200', lifeDays: 110 },
]; // prettier-ignore

export interface DemoBox {
  readonly name: string;
  readonly slots: readonly (readonly [piece: string, count: number])[];
  readonly packaging: readonly string[];
  readonly nominalMassG: string;
  readonly minutes: string;
}

/** Three boxes. */
export const BOXES: readonly DemoBox[] = [
  {
    name: 'Box of nine, assorted', nominalMassG: '80.000', minutes: '3',
    slots: [['Dark dome', 3], ['Raspberry heart', 2], ['Caramel square', 2], ['Hazelnut heart', 2]],
    packaging: ['Box for 9, board', 'Pad', 'Ribbon, cut'],
  },
  {
    name: 'Box of sixteen, assorted', nominalMassG: '144.000', minutes: '5',
    slots: [['Dark dome', 3], ['Spirit dome', 2], ['Tea square', 3], ['Caramel square', 3], ['Raspberry heart', 3], ['Hazelnut heart', 2]],
    packaging: ['Box for 16, board', 'Pad', 'Ribbon, cut'],
  },
  {
    name: 'Box of nine hazelnut hearts', nominalMassG: '86.000', minutes: '3',
    slots: [['Hazelnut heart', 9]], packaging: ['Box for 9, board', 'Pad', 'Ribbon, cut'],
  },
]; // prettier-ignore
