import { isDatabaseAway } from './away';
import { isConflict } from './conflicts';

describe('an error of the database', () => {
  it.each([
    ['the adapter could not connect', { cause: { kind: 'DatabaseNotReachable' } }],
    ['the server is shutting down', { cause: { originalCode: '57P01', kind: 'postgres' } }],
    [
      'the server is starting',
      { meta: { driverAdapterError: { cause: { originalCode: '57P03' } } } },
    ],
    ['the transaction lost its connection', { code: 'P2028' }],
    ['the driver’s plain words', new Error('Connection terminated unexpectedly')],
  ])('says that the database is away: %s', (_name, error) => {
    expect(isDatabaseAway(error)).toBe(true);
  });

  it.each([
    ['a rule was broken', { cause: { originalCode: '23514', kind: 'postgres' } }],
    ['it lost against another', { code: 'P2034' }],
    ['a fault of ours', new TypeError('undefined is not a function')],
  ])('does not say so when %s', (_name, error) => {
    expect(isDatabaseAway(error)).toBe(false);
  });

  it.each([
    ['the client says so', { code: 'P2034' }],
    ['the server could not serialize', { cause: { originalCode: '40001' } }],
    ['a deadlock was broken', { cause: { originalCode: '40P01' } }],
    ['only what came after the conflict was heard', { cause: { originalCode: '25P02' } }],
  ])('is worth another attempt when %s', (_name, error) => {
    expect(isConflict(error)).toBe(true);
  });
});
