/** Digits then capitals: the character's place is its value (ISO/IEC 7064, MOD 37,36). */
const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/**
 * The check character of ISO/IEC 7064 MOD 37,36, a hybrid system over 36 characters. It catches
 * every single wrong character and nearly every swap of two neighbours. Marks between characters
 * (hyphens, points) don't count.
 * @throws RangeError when nothing is left to check.
 */
export const checkCharacter = (text: string): string => {
  const characters = [...text.toUpperCase()].filter((character) => ALPHABET.includes(character));
  if (characters.length === 0) throw new RangeError('There is nothing to check.');
  let product = 36;
  for (const character of characters) {
    const total = (product + ALPHABET.indexOf(character)) % 36;
    product = ((total === 0 ? 36 : total) * 2) % 37;
  }
  return ALPHABET.charAt((37 - product) % 36);
};
