import { parseDecimal } from '../../shared/formats/numbers';
import { readWeights } from './pack-weights';

const french = (text: string) => parseDecimal(text, 'fr-FR');

describe('weights of packs', () => {
  it('are read one a line or between semicolons, with the comma of the reader', () => {
    expect(readWeights('100,5\n99; 101,25\n\n', french)).toEqual({
      weights: ['100.5', '99', '101.25'],
      unread: [],
    });
  });

  it('name what is no weight instead of leaving it out', () => {
    expect(readWeights('100\nabout 99\n-3\n0', french)).toEqual({
      weights: ['100', '99'],
      unread: ['about', '-3', '0'],
    });
  });
});
