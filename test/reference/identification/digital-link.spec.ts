import { readBracketed, readDigitalLink, writeDigitalLink } from '@api/domain/identification';

// Source: gs1/gs1-syntax-engine, commit 50657dbd, src/c-lib/dl.c, unit tests (Apache-2.0).

const link = (bracketed: string, stem?: string): string | undefined => {
  const elements = readBracketed(bracketed);
  if (!elements.ok) throw new Error(elements.refusal.detail);
  const uri = writeDigitalLink(elements.value, stem);
  return uri.ok ? uri.value : undefined;
};

describe('writing a GS1 Digital Link', () => {
  it.each([
    ['(01)12312312312326(21)abc123', undefined, 'https://id.gs1.org/01/12312312312326/21/abc123'],
    [
      '(01)12312312312326(22)ABC(10)DEF(21)GHI(95)INT',
      'https://example.com',
      'https://example.com/01/12312312312326/22/ABC/10/DEF/21/GHI?95=INT',
    ],
    [
      '(21)XYZ(01)12312312312333(10)ABC123(99)XYZ',
      'https://example.com/',
      'https://example.com/01/12312312312333/10/ABC123/21/XYZ?99=XYZ',
    ],
    [
      '(01)12312312312333(10)A+B(99)C+D',
      'https://example.com',
      'https://example.com/01/12312312312333/10/A%2BB?99=C%2BD',
    ],
  ])('%s on %s', (bracketed, stem, uri) => {
    expect(link(bracketed, stem)).toBe(uri);
  });

  it('needs a primary key', () => {
    expect(link('(99)XYZ789')).toBeUndefined();
  });
});

describe('reading a GS1 Digital Link', () => {
  it.each([
    'https://a/01/12312312312333',
    'https://example.com/some/stem/01/12312312312333/10/ABC?15=270228',
    'HTTPS://example.com/01/12312312312333',
    'https://a/01/02112345678900',
    'https://a/00/006141411234567890',
    'https://example.com/01/12312312312333?utm_source=x',
  ])('takes %s', (uri) => {
    expect(readDigitalLink(uri).ok).toBe(true);
  });

  it('takes the rightmost key', () => {
    const read = readDigitalLink('https://a/01/12312312312326/01/12312312312333');
    expect(read).toEqual({ ok: true, value: [{ ai: '01', value: '12312312312333' }] });
  });

  it.each([
    ['HtTp://example.com/01/12312312312333', 'mixed case of the scheme'],
    ['https://00/006141411234567890', 'no domain'],
    ['https://example.com/gtin/12312312312333', 'an alias for (01)'],
    ['https://a/01/2112345678900', 'a GTIN-13 without padding'],
    ['https://a/01/12312312312333/10/%00', 'an encoded NUL'],
    ['https://a/01/12312312312333/10/', 'an empty lot'],
    ['https://a/01/12312312312333?89=1', 'an unknown identifier in the query'],
    ['https://a/01/12312312312333/21/A/10/B', 'qualifiers out of order'],
    ['https://a/01/12312312312334', 'a wrong check digit'],
    ['https://a/b', 'no key'],
    ['https://a/01/12312312312333/10/%GG', 'a broken percent sign'],
  ])('refuses %s: %s', (uri) => {
    expect(readDigitalLink(uri)).toMatchObject({
      ok: false,
      refusal: { code: 'digital-link-not-valid' },
    });
  });

  it.each([
    '(01)12312312312326(22)ABC(10)DEF(21)GHI(95)INT',
    '(01)12312312312326(10)A/B+C%D\\(x)(15)270228',
  ])('gives back what was written: %s', (bracketed) => {
    const elements = readBracketed(bracketed);
    expect(readDigitalLink(link(bracketed) ?? '')).toEqual(elements);
  });
});
