import type { ChocolateKind } from '../specification';

export type Measure =
  | 'total dry cocoa'
  | 'cocoa butter'
  | 'dry fat-free cocoa'
  | 'dry milk solids'
  | 'milk fat'
  | 'cocoa butter and milk fat together'
  | 'hazelnuts'
  | 'all nuts';

interface Bound {
  readonly measure: Measure;
  readonly least?: string;
  readonly most?: string;
}

const least = (measure: Measure, value: string): Bound => ({ measure, least: value });
const most = (measure: Measure, value: string): Bound => ({ measure, most: value });

const MILK = [
  least('total dry cocoa', '25'),
  least('dry fat-free cocoa', '2.5'),
  least('dry milk solids', '14'),
];
const MILK_FATS = [least('milk fat', '3.5'), least('cocoa butter and milk fat together', '25')];

/**
 * Directive 2000/36/EC, Annex I Part A, points 2 to 6 (read in full in the French decree 76-692 and
 * in SI 2003/1659, Schedule 1).
 */
export const BOUNDS: Readonly<Record<ChocolateKind, readonly Bound[]>> = {
  chocolate: [
    least('total dry cocoa', '35'),
    least('cocoa butter', '18'),
    least('dry fat-free cocoa', '14'),
  ],
  chocolate_vermicelli: [
    least('total dry cocoa', '32'),
    least('cocoa butter', '12'),
    least('dry fat-free cocoa', '14'),
  ],
  couverture: [
    least('total dry cocoa', '35'),
    least('cocoa butter', '31'),
    least('dry fat-free cocoa', '2.5'),
  ],
  gianduja: [
    least('total dry cocoa', '32'),
    least('dry fat-free cocoa', '8'),
    most('dry milk solids', '5'),
    least('hazelnuts', '20'),
    most('hazelnuts', '40'),
    most('all nuts', '60'),
  ],
  milk_chocolate: [...MILK, ...MILK_FATS],
  milk_chocolate_vermicelli: [
    least('total dry cocoa', '20'),
    least('dry milk solids', '12'),
    least('cocoa butter and milk fat together', '12'),
  ],
  milk_couverture: [
    ...MILK,
    least('milk fat', '3.5'),
    least('cocoa butter and milk fat together', '31'),
  ],
  milk_gianduja: [
    least('dry milk solids', '10'),
    least('hazelnuts', '15'),
    most('hazelnuts', '40'),
    most('all nuts', '60'),
  ],
  cream_chocolate: [...MILK, least('milk fat', '5.5'), ...MILK_FATS.slice(1)],
  skimmed_milk_chocolate: [...MILK, most('milk fat', '1'), ...MILK_FATS.slice(1)],
  family_milk_chocolate: [
    least('total dry cocoa', '20'),
    least('dry fat-free cocoa', '2.5'),
    least('dry milk solids', '20'),
    least('milk fat', '5'),
    least('cocoa butter and milk fat together', '25'),
  ],
  white_chocolate: [
    least('cocoa butter', '20'),
    least('dry milk solids', '14'),
    least('milk fat', '3.5'),
  ],
  // The law counts cocoa powder, which holds a little water: its dry matter is the safe form.
  powdered_chocolate: [least('total dry cocoa', '32')],
  drinking_chocolate: [least('total dry cocoa', '25')],
};
