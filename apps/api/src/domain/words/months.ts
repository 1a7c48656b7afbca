/** Months in letters, so that nobody reads a day the other way round. */
export const MONTHS = {
  en: ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'],
  fr: [
    ...['janv.', 'févr.', 'mars', 'avr.', 'mai', 'juin'],
    ...['juil.', 'août', 'sept.', 'oct.', 'nov.', 'déc.'],
  ],
} as const satisfies Readonly<Record<'en' | 'fr', readonly string[]>>;
