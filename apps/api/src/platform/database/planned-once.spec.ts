import { PlannedOnce } from './planned-once';

const long = (mark: string): string => `SELECT '${mark}' ${'-'.repeat(1000)}`;

describe('statements that are planned once', () => {
  it('keep their name, each its own', () => {
    const { nameOf } = new PlannedOnce();
    const name = nameOf({ sql: long('a') });
    expect(name).not.toBe('');
    expect(nameOf({ sql: long('b') })).not.toBe(name);
    expect(nameOf({ sql: long('a') })).toBe(name);
  });

  it('are long ones only', () => {
    expect(new PlannedOnce().nameOf({ sql: 'SELECT 1' })).toBe('');
  });

  it('are not ever more', () => {
    const { nameOf } = new PlannedOnce();
    const names = Array.from({ length: 200 }, (_, place) => nameOf({ sql: long(String(place)) }));
    expect(names.filter((name) => name !== '')).toHaveLength(100);
    expect(nameOf({ sql: long('0') })).toBe(names[0]);
  });
});
