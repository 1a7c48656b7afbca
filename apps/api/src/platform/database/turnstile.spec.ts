import { Turnstile } from './turnstile';

/** Work that ends when it is told to. */
const held = () => {
  let end: () => void = () => undefined;
  const done = new Promise<void>((resolve) => {
    end = resolve;
  });
  return { done, end };
};

const settle = () => new Promise((resolve) => setImmediate(resolve));

describe('Turnstile', () => {
  it('lets work pass side by side', async () => {
    const turnstile = new Turnstile();
    const [first, second] = [held(), held()];
    const began: string[] = [];
    const passes = [first, second].map((work, index) =>
      turnstile.pass(false, async () => {
        began.push(String(index));
        await work.done;
      }),
    );
    await settle();
    expect(began).toEqual(['0', '1']);
    first.end();
    second.end();
    await Promise.all(passes);
  });

  it('lets one pass alone once those inside have left, and keeps newcomers out until then', async () => {
    const turnstile = new Turnstile();
    const order: string[] = [];
    const [first, alone] = [held(), held()];
    const enter = (name: string, single: boolean, work?: Promise<void>) =>
      turnstile.pass(single, async () => {
        order.push(name);
        await work;
      });
    const passes = [enter('first', false, first.done), enter('alone', true, alone.done)];
    await settle();
    passes.push(enter('newcomer', false), enter('alone too', true));
    await settle();
    expect(order).toEqual(['first']);
    first.end();
    await settle();
    expect(order).toEqual(['first', 'alone']);
    alone.end();
    await Promise.all(passes);
    expect(order.slice(2).sort()).toEqual(['alone too', 'newcomer']);
  });

  it('opens again after work that failed', async () => {
    const turnstile = new Turnstile();
    await expect(turnstile.pass(true, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    await expect(turnstile.pass(false, () => Promise.resolve('in'))).resolves.toBe('in');
  });
});
