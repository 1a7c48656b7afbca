/** No-break spaces in the French manner, so that a sign never begins a line. */
export const spaced = (wording: string): string =>
  wording
    .replace(/ (?=[:;?!»%])/g, '\u00a0')
    .replace(/« /g, '«\u00a0')
    .replace(/([\d}]) (?=(?:°C|g|kg|mg|mm|cm|mol|jours|mois)(?![\p{L}]))/gu, '$1\u00a0');
