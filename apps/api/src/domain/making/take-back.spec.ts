import { checkTakeBack, type OutputToTakeBack } from './take-back';

const lot = (change: Partial<OutputToTakeBack> = {}): OutputToTakeBack => ({
  code: 'L-1',
  used: false,
  takenBack: false,
  ...change,
});
const codeOf = (lots: readonly OutputToTakeBack[], replacements: number): string => {
  const result = checkTakeBack(lots, replacements);
  return result.ok ? 'ok' : result.refusal.code;
};

describe('an output that was counted wrongly', () => {
  it('is taken back while nothing rests on it and something takes its place', () => {
    expect(codeOf([lot()], 1)).toBe('ok');
    expect(codeOf([lot(), lot()], 1)).toBe('ok');
    expect(codeOf([], 0)).toBe('ok');
  });

  it('is not, without what came out instead; nor is anything made without it', () => {
    expect(codeOf([lot()], 0)).toBe('output-not-replaced');
    expect(codeOf([], 1)).toBe('output-not-replaced');
  });

  it('is not, once some of it was used, nor twice', () => {
    expect(codeOf([lot({ used: true })], 1)).toBe('output-used');
    expect(codeOf([lot({ takenBack: true })], 1)).toBe('already-reversed');
  });
});
