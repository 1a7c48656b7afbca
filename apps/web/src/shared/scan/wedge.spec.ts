import { next, quiet, type KeyPress, type WedgeState } from './wedge';

const type = (keys: readonly string[], gapMs: number, start: WedgeState = quiet) => {
  let state = start;
  let scanned: string | undefined;
  keys.forEach((key, position) => {
    const press: KeyPress = { key, ctrl: false, atMs: position * gapMs };
    const after = next(state, press);
    state = after.state;
    scanned = after.scanned ?? scanned;
  });
  return scanned;
};

describe('a scanner that types', () => {
  it('is told from a hand by its speed', () => {
    expect(type([...'L2611-04', 'Enter'], 5)).toBe('L2611-04');
    expect(type([...'L2611-04', 'Enter'], 90)).toBeUndefined();
  });

  it('keeps capitals that come with a Shift key of their own', () => {
    expect(type(['Shift', 'L', '2', '6', '1', 'Shift', 'K', 'Enter'], 8)).toBe('L261K');
  });

  it('forgets what a hand typed before the scan', () => {
    const slow = next(quiet, { key: 'x', ctrl: false, atMs: -500 }).state;
    expect(type([...'ABCD', 'Enter'], 5, slow)).toBe('ABCD');
  });

  it('keeps the group separator of a GS1 code, however the reader sends it', () => {
    expect(type([...'10AB', '\u001d', ...'17', 'Enter'], 4)).toBe('10AB\u001d17');
    expect(type([...'10AB', 'F8', ...'17', 'Enter'], 4)).toBe('10AB\u001d17');
  });

  it('takes no stray Enter for a scan', () => {
    expect(type(['a', 'b', 'Enter'], 4)).toBeUndefined();
  });
});
