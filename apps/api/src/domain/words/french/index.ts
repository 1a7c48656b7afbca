import type { Wordings } from '../say';
export const FRENCH: Wordings = new Map<string, string>();
