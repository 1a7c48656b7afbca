import { MONTHS } from '../months';
import type { Wording } from './wording';

export const months: Wording = Object.fromEntries(
  MONTHS.en.map((month, position) => [month, MONTHS.fr[position] ?? month]),
);
