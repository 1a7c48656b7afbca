/** No-break spaces in the French manner, so that a sign never begins a line. */
export const spaced = (text: string): string =>
  text.replace(/ (?=[:;?!»%])/g, '\u00a0').replace(/« /g, '«\u00a0');
