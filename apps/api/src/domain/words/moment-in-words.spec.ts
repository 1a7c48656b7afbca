import { inLanguage } from './in-language';
import { momentInWords } from './moment-in-words';
import { say } from './say';

describe('a moment inside a sentence', () => {
  const moment = momentInWords('2027-02-28T23:05:00.000Z', 'Europe/Paris');

  it('is the day and the time of the workshop’s clock, the month in letters', () => {
    expect(inLanguage(moment, 'en')).toBe('1 Mar 2027, 00:05');
  });

  it('is told in the language of the reader, wherever it stands', () => {
    const summer = momentInWords('2026-08-02T06:30:00.000Z', 'Europe/Paris');
    expect(inLanguage(say` until ${summer}`, 'en')).toBe(' until 2 Aug 2026, 08:30');
    expect(inLanguage(summer, 'fr')).toBe('2 août 2026, 08:30');
  });
});
