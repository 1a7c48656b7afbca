import { inLanguage } from './in-language';
import { anyOf, CLOSE, inEnglish, named, OPEN, say, sentences, told } from './say';

const wordings = new Map([
  ['Lot {0} is on hold: {1}', '{1} – le lot {0} est bloqué'],
  ['Arrived at {0} °C.', 'Arrivé à {0} °C.'],
  ['open', 'ouvert'],
  ['{0} or {1}', '{0} ou {1}'],
]);

describe('a sentence', () => {
  it('is its English text once the marks are taken away', () => {
    expect(inEnglish(say`Lot ${'A-1'} holds ${3} boxes.`)).toBe('Lot A-1 holds 3 boxes.');
  });

  it('is told in another wording, with its values in the order of that wording', () => {
    const why = say`Arrived at ${'9.5'} °C.`;
    expect(told(say`Lot ${'A-1'} is on hold: ${why}`, wordings)).toBe(
      'Arrivé à 9.5 °C. – le lot A-1 est bloqué',
    );
  });

  it('stays English where nobody has worded it, with the sentences inside it told', () => {
    expect(told(say`It is ${named('open')} now.`, wordings)).toBe('It is ouvert now.');
  });

  it('is told inside other text, and with others around it', () => {
    const both = `1. ${sentences([say`Arrived at ${1} °C.`, say`Arrived at ${2} °C.`])} End`;
    expect(told(both, wordings)).toBe('1. Arrivé à 1 °C. Arrivé à 2 °C. End');
  });

  it('never takes the words of a value for its own', () => {
    const lot = 'X is on hold: Y {0}';
    expect(told(say`Lot ${lot} is on hold: ${'Z'}`, wordings)).toBe(`Z – le lot ${lot} est bloqué`);
  });

  it('loses stray marks and keeps the words', () => {
    expect(told(`${OPEN}${say`Arrived at ${1} °C.`} and ${CLOSE}${CLOSE}more`, wordings)).toBe(
      'Arrived at 1 °C. and more',
    );
    expect(told(`${OPEN}half`, wordings)).toBe('half');
  });

  it('survives being stored as JSON', () => {
    const stored = JSON.parse(JSON.stringify({ why: say`Arrived at ${4} °C.` })) as { why: string };
    expect(told(stored.why, wordings)).toBe('Arrivé à 4 °C.');
  });

  it('lists words', () => {
    expect(inEnglish(anyOf(['a', 'b', 'c']))).toBe('a or b or c');
    expect(told(anyOf(['a', named('open')]), wordings)).toBe('a ou ouvert');
  });
});

describe('inLanguage', () => {
  it('tells French readers French, and spaces it as French is', () => {
    expect(inLanguage(say`Lot ${'A-1'} is on hold: ${'moisissure'}`, 'fr')).toBe(
      'Le lot A-1 est bloqué\u00a0: moisissure',
    );
  });

  it('leaves what people wrote as they wrote it', () => {
    expect(inLanguage('Lot A-1 is on hold.', 'fr')).toBe('Lot A-1 is on hold.');
  });
});
