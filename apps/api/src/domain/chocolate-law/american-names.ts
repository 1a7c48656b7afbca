/** Names with a standard of identity in 21 CFR 163. */
export const AMERICAN_CHOCOLATES = [
  'sweet_chocolate', 'semisweet_chocolate', 'milk_chocolate', 'skim_milk_chocolate',
  'white_chocolate',
] as const; // prettier-ignore
export type AmericanChocolate = (typeof AMERICAN_CHOCOLATES)[number];
