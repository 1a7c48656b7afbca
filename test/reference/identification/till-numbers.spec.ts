import { lotUri } from '@api/domain/epcis/identifiers';
import {
  isGtin,
  isWorldwideGtin,
  priceVerifier,
  readTillNumber,
  writeTillNumber,
} from '@api/domain/identification';

describe('restricted circulation numbers', () => {
  // Source: GS1 General Specifications, 7.9.3, four-digit price verifier; from memory.
  it.each([
    ['2875', '9'],
    ['0123', '6'],
  ])('the verifier of %s is %s', (price, verifier) => {
    expect(priceVerifier(price)).toBe(verifier);
  });

  it('come back with item and value, and end in a GS1 check digit', () => {
    const written = writeTillNumber('20IIIIICVVVVK', { item: '417', value: '2875' });
    expect(written).toEqual({ ok: true, value: '2000417928759' });
    expect(isGtin('2000417928759')).toBe(true);
    expect(readTillNumber('20IIIIICVVVVK', '2000417928759')).toEqual({
      ok: true,
      value: { item: '00417', value: '2875' },
    });
  });

  it('catch every single wrong digit of a price', () => {
    for (let price = 0; price <= 9999; price += 7) {
      const text = String(price).padStart(4, '0');
      for (let place = 0; place < 4; place += 1) {
        const wrong = [...text];
        wrong[place] = String((Number(text[place]) + 1) % 10);
        expect(priceVerifier(wrong.join(''))).not.toBe(priceVerifier(text));
      }
    }
  });

  it.each(['50IIIIICVVVVK', '20IIIICVVVVVK', '20IIIIIVVVV'])(
    'refuse the template %s',
    (template) => {
      expect(writeTillNumber(template, { item: '1', value: '1' }).ok).toBe(false);
    },
  );

  it('refuse a value that has no room', () => {
    expect(writeTillNumber('20IIIIICVVVVK', { item: '1', value: '10000' }).ok).toBe(false);
  });

  // Source: GS1 General Specifications, 2.1.11: 02, 04 and 20 to 29 never leave the shop.
  it.each(['02000417928759', '00212345678902', '00412345678906', '02912345678904'])(
    '%s never stands for a trade item, nor in an event that is sent on',
    (gtin) => {
      expect(isWorldwideGtin(gtin)).toBe(false);
      const naming = { baseUri: 'https://workshop.example' };
      expect(lotUri(naming, 'A', gtin)).toBe('https://workshop.example/lots/A');
    },
  );

  it('leaves every other number alone', () => {
    for (const gtin of ['04006381333931', '12345678901231', '00000002345673']) {
      expect(isWorldwideGtin(gtin)).toBe(true);
    }
  });
});
