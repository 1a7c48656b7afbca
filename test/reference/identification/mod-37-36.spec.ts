import { checkCharacter } from '@api/domain/identification';
import fc from 'fast-check';

// ISO/IEC 7064 MOD 37,36. The two examples are from memory: the Global Release Identifier of the
// IFPI (GRid Standard, A1-2425G-ABC1234002-M) and the ISAN of ISO 15706 (0000-0000-D07A-0090-Q).
describe('check character of ISO/IEC 7064 MOD 37,36', () => {
  it.each([
    ['A1-2425G-ABC1234002', 'M'],
    ['0000-0000-D07A-0090', 'Q'],
  ])('of %s is %s', (text, check) => {
    expect(checkCharacter(text)).toBe(check);
  });

  const text = fc
    .array(fc.constantFrom(...'0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ'), {
      minLength: 2,
      maxLength: 18,
    })
    .map((array) => array.join(''));

  it('catches every single wrong character', () => {
    fc.assert(
      fc.property(text, fc.nat(), fc.integer({ min: 1, max: 35 }), (code, at, step) => {
        const alphabet = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
        const place = at % code.length;
        const wrong = alphabet.charAt((alphabet.indexOf(code.charAt(place)) + step) % 36);
        const changed = code.slice(0, place) + wrong + code.slice(place + 1);
        expect(checkCharacter(changed)).not.toBe(checkCharacter(code));
      }),
    );
  });
});
