import { net, press, start, type Key, type Weighing } from './weighing';

const keys = (text: string): Key[] =>
  [...text].map((character) => ({ kind: 'character', character }));
const after = (presses: readonly Key[], from: Weighing = start('')): Weighing =>
  presses.reduce(press, from);

describe('weighing on the keypad', () => {
  it('takes the bowl off', () => {
    expect(net(after([...keys('250'), { kind: 'tare' }, ...keys('1250.5')]))).toBe('1000.5');
  });

  it('adds weighings, each less the bowl', () => {
    const twice = after([
      ...keys('200'),
      { kind: 'tare' },
      ...keys('1200'),
      { kind: 'step' },
      ...keys('700'),
      { kind: 'step' },
    ]);
    expect(twice.steps).toEqual(['1000', '500']);
    expect(net(twice)).toBe('1500');
    expect(net(press(twice, { kind: 'remove', position: 0 }))).toBe('500');
  });

  it('keeps grams to the milligram and one point', () => {
    expect(after(keys('12.3.4567')).entry).toBe('12.345');
    expect(net(after(keys('.5')))).toBe('0.5');
  });

  it('is nothing while nothing was typed, whatever the tare', () => {
    expect(net(after([...keys('250'), { kind: 'tare' }]))).toBe('0');
  });
});
