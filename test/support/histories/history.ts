import { randomUUID } from 'node:crypto';
import { type AuditedLot, AuditorsBooks, type AuditedMaking, grams } from './books-of-auditor';
import type { Chance } from './chance';
import type { Answer, Hand } from './http';
import type { ShopItems } from './shop-items';

interface Made {
  readonly outputs: readonly {
    readonly id: string;
    readonly lotCode: string;
    readonly quantity: string;
    readonly massGrams: string;
    readonly role: string;
  }[];
}

const G = 1000n;

/**
 * One random stretch of a workshop's life, booked over HTTP by several hands and written down by the
 * auditor as it is acknowledged: receipts, cooking with steam and strained-out draws, tank charges,
 * casting, rework, packing, sales, returns, waste, samples, counts, corrections, abandoned and open
 * batches, requests sent twice, and hands that reach for one lot at once.
 */
export class History {
  readonly books = new AuditorsBooks();
  private tank: { id: string; lot: string | null; maybe: string | null } | null = null;
  private readonly sales: { id: string; lot: string; left: bigint; leftMg: bigint }[] = [];

  constructor(
    private readonly hands: readonly Hand[],
    private readonly items: ShopItems,
    private readonly chance: Chance,
  ) {}

  async live(steps: number): Promise<void> {
    await this.receive();
    for (let step = 0; step < steps; step += 1) await this.step();
  }

  private async step(): Promise<void> {
    const acts: (() => Promise<void>)[] = [
      () => this.cook(),
      () => this.cook(),
      () => this.charge(),
      () => this.charge(),
      () => this.cast(),
      () => this.cast(),
      () => this.pack(),
      () => this.send(),
      () => this.comeBack(),
      () => this.adjust(),
      () => this.correct(),
      () => this.recount(),
      () => this.abandon(),
      () => this.leaveOpen(),
      () => this.race(),
      () => this.emptyTank(),
    ];
    await this.chance.one(acts)();
  }

  private get hand(): Hand {
    return this.chance.one(this.hands);
  }

  /** Sends a booking once, or twice under one key: the second answer must be the first. */
  private async book<T>(path: string, body: object): Promise<T> {
    const key = randomUUID();
    const { hand } = this;
    const first = await hand.must<T>(hand.post(path, body, key));
    if (this.chance.often(10)) {
      const again = await hand.must<T>(hand.post(path, body, key));
      expect(again).toEqual(first);
    }
    return first;
  }

  private async receive(): Promise<void> {
    const { cream, chocolate, carton, supplierId } = this.items;
    const lines = [cream, chocolate, chocolate, cream, carton].map((itemId) => ({
      itemId,
      supplierLotCode: 'S',
      price: '1.00',
      quantity: itemId === carton ? '40' : grams(BigInt(this.chance.whole(500_000, 3_000_000))),
    }));
    const delivery = await this.book<{ lines: { lotCode: string }[] }>('/deliveries', {
      supplierId,
      lines,
    });
    expect(delivery.lines).toHaveLength(lines.length);
    for (const [index, line] of lines.entries()) {
      const pieces = line.itemId === carton;
      this.books.born({
        code: delivery.lines[index]?.lotCode ?? '',
        pieces,
        item: line.itemId,
        received: true,
        madeMg: pieces ? 0n : mgOf(line.quantity),
        madeQuantity: pieces ? BigInt(line.quantity) : mgOf(line.quantity),
      });
    }
  }

  private stock(items: readonly string[], least: bigint): string[] {
    return [...this.books.lots.values()]
      .filter((lot) => items.includes(lot.item) && lot.onHandQuantity >= least)
      .map((lot) => lot.code);
  }

  private async open(itemId: string): Promise<AuditedMaking> {
    const batch = await this.book<{ id: string; code: string }>('/batches', { itemId });
    const making: AuditedMaking = {
      id: batch.id,
      code: batch.code,
      state: 'open',
      draws: [],
      losses: [],
      outputs: [],
      heels: [],
    };
    this.books.makings.push(making);
    return making;
  }

  private async draw(making: AuditedMaking, lot: string, quantity: bigint): Promise<void> {
    const { pieces } = this.books.lot(lot);
    const draw = await this.book<{ id: string; massGrams: string }>(`/batches/${making.id}/draws`, {
      lotCode: lot,
      quantity: pieces ? String(quantity) : grams(quantity),
      role: 'base',
      reason: 'as it came',
    });
    const mg = this.books.take(lot, quantity);
    expect(draw.massGrams).toBe(grams(mg));
    making.draws.push({ id: draw.id, lot, quantity, mg });
  }

  /** Some of one to three lots of the items; nothing when there is too little of all. */
  private async drawSome(making: AuditedMaking, items: readonly string[]): Promise<boolean> {
    const from = this.stock(items, 20n * G);
    if (from.length === 0) return false;
    for (let draws = this.chance.whole(1, 3); draws > 0; draws -= 1) {
      const lot = this.chance.one(from);
      const { onHandQuantity } = this.books.lot(lot);
      if (onHandQuantity < 20n * G) continue;
      const all = this.chance.often(10);
      const part = (onHandQuantity * BigInt(this.chance.whole(5, 50))) / 100n;
      await this.draw(making, lot, all ? onHandQuantity : part);
    }
    return making.draws.length > 0;
  }

  private lose(making: AuditedMaking, kinds: readonly string[]): void {
    const total = making.draws.reduce((sum, draw) => sum + draw.mg, 0n);
    for (const kind of kinds) {
      if (!this.chance.often(50)) continue;
      const mg = (total * BigInt(this.chance.whole(1, 60))) / 1000n;
      if (mg > 0n) making.losses.push({ kind, mg });
    }
    const [first] = making.draws;
    const alone = making.draws.filter((draw) => draw.lot === first?.lot).length === 1;
    if (first && alone && kinds.includes('steam') && this.chance.often(25) && first.mg > 100n) {
      making.losses.push({ kind: 'held_back', mg: first.mg / 3n, lot: first.lot });
    }
  }

  private async finish(
    making: AuditedMaking,
    item: string,
    pieces: number | null,
    reworkOf?: string,
  ): Promise<void> {
    const drawn = making.draws.reduce((sum, draw) => sum + draw.mg, 0n);
    const left = drawn - making.losses.reduce((sum, loss) => sum + loss.mg, 0n);
    const rework = reworkOf !== undefined && pieces === null && left > 100n ? left / 7n : 0n;
    const outputs = [
      { quantity: pieces === null ? grams(left - rework) : String(pieces) },
      ...(rework > 0n ? [{ role: 'rework', itemId: reworkOf, quantity: grams(rework) }] : []),
    ];
    const made = await this.book<Made>(`/batches/${making.id}/finish`, {
      outputs,
      losses: making.losses.map((loss) => ({
        kind: loss.kind,
        massGrams: grams(loss.mg),
        ...(loss.lot === undefined ? {} : { lotCode: loss.lot }),
      })),
      keepTogether: true,
    });
    making.state = 'finished';
    for (const output of made.outputs) {
      const isRework = output.role === 'rework';
      const mg = isRework ? rework : left - rework;
      expect(output.massGrams).toBe(grams(mg));
      making.outputs.push(output.lotCode);
      this.books.born({
        code: output.lotCode,
        pieces: pieces !== null,
        item: isRework ? (reworkOf ?? item) : item,
        received: false,
        madeMg: mg,
        madeQuantity: pieces === null ? mg : BigInt(pieces),
      });
    }
  }

  private async cook(): Promise<void> {
    const { ganache, cream, chocolate } = this.items;
    if (this.stock([cream, chocolate, ganache], 20n * G).length === 0) return;
    const making = await this.open(ganache);
    if (!(await this.drawSome(making, [cream, chocolate, ganache]))) return;
    this.lose(making, ['steam', 'scrapings']);
    await this.finish(making, ganache, null, this.chance.often(30) ? ganache : undefined);
  }

  private async cast(): Promise<void> {
    const { bonbon, ganache, chocolate } = this.items;
    if (this.stock([ganache, chocolate], 20n * G).length === 0) return;
    const making = await this.open(bonbon);
    if (!(await this.drawSome(making, [ganache, chocolate]))) return;
    this.lose(making, ['rejects', 'samples']);
    await this.finish(making, bonbon, this.chance.whole(7, 96));
  }

  private async pack(): Promise<void> {
    const { bonbon, carton, box } = this.items;
    const pieces = this.stock([bonbon], 4n);
    const [cartons] = this.stock([carton], 4n);
    if (pieces.length === 0 || cartons === undefined) return;
    const lot = this.books.lot(this.chance.one(pieces));
    const most = lot.onHandQuantity / 4n < 4n ? Number(lot.onHandQuantity / 4n) : 4;
    const boxes = this.chance.whole(1, most);
    const making = await this.open(box);
    await this.draw(making, lot.code, BigInt(boxes) * 4n);
    await this.draw(making, cartons, BigInt(boxes));
    await this.finish(making, box, boxes);
  }

  private async charge(): Promise<void> {
    const { chocolate } = this.items;
    const from = this.stock([chocolate], 50n * G).filter((code) => code !== this.tank?.lot);
    if (from.length === 0) return;
    this.tank ??= {
      id: await this.newTank(),
      lot: null,
      maybe: null,
    };
    const lot = this.books.lot(this.chance.one(from));
    const quantity = lot.onHandQuantity / 3n;
    const charge = await this.book<{ batchId: string; batchCode: string; lotCode: string }>(
      `/tanks/${this.tank.id}/charges`,
      { lots: [{ lotCode: lot.code, quantity: grams(quantity) }] },
    );
    const making: AuditedMaking = {
      id: charge.batchId,
      code: charge.batchCode,
      state: 'finished',
      draws: [{ id: '', lot: lot.code, quantity, mg: this.books.take(lot.code, quantity) }],
      losses: [],
      outputs: [charge.lotCode],
      heels: [],
    };
    const heel = this.tank.lot === null ? undefined : this.books.lot(this.tank.lot);
    if (heel && heel.onHandMg > 0n) {
      const { code, onHandMg: mg } = heel;
      making.draws.push({ id: '', lot: code, quantity: mg, mg: this.books.take(code, mg) });
    } else if (this.tank.maybe !== null) making.heels.push(this.tank.maybe);
    this.books.makings.push(making);
    const madeMg = making.draws.reduce((sum, draw) => sum + draw.mg, 0n);
    this.books.born({
      code: charge.lotCode,
      pieces: false,
      item: chocolate,
      received: false,
      madeMg,
      madeQuantity: madeMg,
    });
    this.tank.lot = charge.lotCode;
    this.tank.maybe = charge.lotCode;
  }

  private async newTank(): Promise<string> {
    const body = {
      name: `Tank ${randomUUID()}`,
      itemId: this.items.chocolate,
      capacityGrams: '90000',
    };
    const { hand } = this;
    return (await hand.must<{ id: string }>(hand.post('/tanks', body))).id;
  }

  private async emptyTank(): Promise<void> {
    if (this.tank?.lot === null || this.tank === null) return;
    const cleaned = this.chance.often(50);
    const lot = this.books.lot(this.tank.lot);
    const outcome = this.chance.often(50) ? 'wasted' : 'kept';
    await this.book(`/tanks/${this.tank.id}/emptyings`, { outcome, cleaned });
    if (outcome === 'wasted' && lot.onHandMg > 0n) {
      const mg = this.books.take(lot.code, lot.onHandQuantity);
      this.books.ends.push({ lot: lot.code, kind: 'wasted', mg });
    }
    this.tank.lot = null;
    if (cleaned) this.tank.maybe = null;
  }

  private async send(): Promise<void> {
    const from = this.stock([this.items.bonbon, this.items.box], 1n);
    if (from.length === 0) return;
    const lot = this.books.lot(this.chance.one(from));
    const quantity = BigInt(this.chance.whole(1, Number(lot.onHandQuantity)));
    const customerId = this.chance.often(50) ? this.items.customerId : null;
    const dispatch = await this.book<{ id: string }>('/dispatches', {
      customerId,
      lines: [{ lotCode: lot.code, quantity: String(quantity) }],
      shortLifeReason: 'agreed',
    });
    const mg = this.books.take(lot.code, quantity);
    const kind = customerId === null ? 'counter' : 'dispatched';
    this.books.ends.push({ lot: lot.code, kind, mg });
    this.sales.push({ id: dispatch.id, lot: lot.code, left: quantity, leftMg: mg });
  }

  private async comeBack(): Promise<void> {
    const out = this.sales.filter((sale) => sale.left > 0n);
    if (out.length === 0) return;
    const sale = this.chance.one(out);
    const quantity = BigInt(this.chance.whole(1, Number(sale.left)));
    const outcome = this.chance.often(50) ? 'restocked' : 'wasted';
    await this.book(`/dispatches/${sale.id}/returns`, {
      reason: 'not wanted',
      lines: [{ lotCode: sale.lot, quantity: String(quantity), outcome }],
    });
    const out0 = { onHandMg: sale.leftMg, onHandQuantity: sale.left };
    const mg = this.books.weightOf({ ...this.books.lot(sale.lot), ...out0 }, quantity);
    sale.left -= quantity;
    sale.leftMg -= mg;
    this.books.gains.push({ lot: sale.lot, kind: 'returned-by-customer', mg });
    if (outcome === 'restocked') this.books.putBack(sale.lot, quantity, mg);
    else this.books.ends.push({ lot: sale.lot, kind: 'wasted', mg });
  }

  private async adjust(): Promise<void> {
    const from = [...this.books.lots.values()].filter((lot) => lot.onHandQuantity > 10n);
    if (from.length === 0) return;
    const lot = this.chance.one(from);
    const kind = this.chance.one(['wasted', 'sampled', 'counted']);
    const quantity = lot.onHandQuantity / BigInt(this.chance.whole(4, 9));
    if (quantity === 0n) return;
    const told = kind === 'counted' ? lot.onHandQuantity - quantity : quantity;
    await this.book(`/lots/${lot.code}/adjustments`, {
      kind,
      quantity: lot.pieces ? String(told) : grams(told),
      reason: 'as it was found',
    });
    const mg = this.books.take(lot.code, quantity);
    const end = kind === 'counted' ? 'count-shortage' : kind;
    this.books.ends.push({ lot: lot.code, kind: end, mg });
  }

  /** The wrong lot was scanned: its draw is taken back and drawn again from another. */
  private async correct(): Promise<void> {
    const { cream, chocolate } = this.items;
    const finished = this.books.makings.filter((making) => making.state === 'finished');
    const wrong = finished.flatMap((making) =>
      making.draws
        .filter((draw) => draw.id !== '' && this.books.lot(draw.lot).received && draw.mg > 0n)
        .filter((draw) => !making.losses.some((loss) => loss.lot === draw.lot))
        .map((draw) => ({ making, draw })),
    );
    if (wrong.length === 0) return;
    const { making, draw } = this.chance.one(wrong);
    const right = this.stock([cream, chocolate], draw.quantity).filter(
      (code) => this.books.lot(code).received && code !== draw.lot,
    );
    if (right.length === 0) return;
    const lot = this.chance.one(right);
    const batch = await this.book<{ draws: { id: string; lotCode: string; reversed: boolean }[] }>(
      `/batches/${making.id}/corrections`,
      {
        reason: 'the wrong carton was scanned',
        reversedDrawIds: [draw.id],
        // What a recipe doesn't name has to be accepted; no specification here states an allergen.
        draws: [
          {
            lotCode: lot,
            quantity: grams(draw.quantity),
            role: 'base',
            acceptance: { allergens: [] },
          },
        ],
      },
    );
    const known = new Set(making.draws.map((one) => one.id));
    const added = batch.draws.find(
      (one) => !known.has(one.id) && !one.reversed && one.lotCode === lot,
    );
    this.books.putBack(draw.lot, draw.quantity, draw.mg);
    const mg = this.books.take(lot, draw.quantity);
    making.draws = making.draws.filter((one) => one !== draw);
    making.draws.push({ id: added?.id ?? '', lot, quantity: draw.quantity, mg });
  }

  /** A lot was counted wrongly: it is taken back, and what did come out is booked in its place. */
  private async recount(): Promise<void> {
    const moved = new Set([...this.books.ends, ...this.books.gains].map(({ lot }) => lot));
    for (const { draws } of this.books.makings) for (const { lot } of draws) moved.add(lot);
    const whole = this.books.makings.flatMap((making) =>
      making.state !== 'finished' || making.draws.some(({ id }) => id === '')
        ? []
        : making.outputs.filter((code) => !moved.has(code)).map((code) => ({ making, code })),
    );
    if (whole.length === 0) return;
    const { making, code } = this.chance.one(whole);
    const old = this.books.lot(code);
    const { hand } = this;
    const batch = await hand.must<Made>(hand.get(`/batches/${making.id}`));
    const id = batch.outputs.find(({ lotCode }) => lotCode === code)?.id;
    const part = old.madeMg / 3n;
    const outputs = old.pieces
      ? [{ quantity: String(old.madeQuantity + 1n) }]
      : [old.madeMg - part, part].map((mg) => ({
          quantity: grams(mg),
          ...this.as(batch, code, old),
        }));
    if (!old.pieces && part === 0n) return;
    const after = await this.book<Made>(`/batches/${making.id}/corrections`, {
      reason: 'counted wrongly',
      reversedOutputIds: [id],
      outputs,
    });
    this.books.lots.delete(code);
    making.outputs.splice(making.outputs.indexOf(code), 1);
    const before = new Set(batch.outputs.map(({ lotCode }) => lotCode));
    for (const output of after.outputs.filter(({ lotCode }) => !before.has(lotCode))) {
      making.outputs.push(output.lotCode);
      const quantity = old.pieces ? BigInt(parseInt(output.quantity, 10)) : mgOf(output.quantity);
      this.books.born({
        ...old,
        code: output.lotCode,
        madeMg: old.pieces ? old.madeMg : quantity,
        madeQuantity: quantity,
      });
    }
  }

  private as({ outputs }: Made, code: string, { item }: AuditedLot): object {
    const isRework = outputs.find(({ lotCode }) => lotCode === code)?.role === 'rework';
    return isRework ? { role: 'rework', itemId: item } : {};
  }

  private async leaveOpen(): Promise<void> {
    const { ganache, cream, chocolate } = this.items;
    if (this.stock([cream, chocolate], 20n * G).length === 0) return;
    await this.drawSome(await this.open(ganache), [cream, chocolate]);
  }

  private async abandon(): Promise<void> {
    const making = this.books.makings.find((one) => one.state === 'open' && one.draws.length > 0);
    if (!making) return;
    const [back, ...rest] = making.draws;
    if (!back) return;
    await this.book(`/batches/${making.id}/abandon`, {
      reason: 'it split',
      returnedDrawIds: [back.id],
    });
    this.books.putBack(back.lot, back.quantity, back.mg);
    making.draws = rest;
    making.state = 'abandoned';
    const lost = rest.reduce((sum, draw) => sum + draw.mg, 0n);
    if (lost > 0n) making.losses.push({ kind: 'other', mg: lost });
  }

  /** All hands reach for one lot at once; some find too little left, and none books it twice. */
  private async race(): Promise<void> {
    const { ganache, cream, chocolate } = this.items;
    const from = this.stock([cream, chocolate], 20n * G);
    if (from.length === 0) return;
    const lot = this.books.lot(this.chance.one(from));
    const quantity = (lot.onHandQuantity * BigInt(this.chance.whole(30, 60))) / 100n;
    const benches: { hand: Hand; making: AuditedMaking }[] = [];
    for (const hand of this.hands) benches.push({ hand, making: await this.open(ganache) });
    const body = { lotCode: lot.code, quantity: grams(quantity), role: 'base', reason: 'quick' };
    const answers = await Promise.all(
      benches.map(({ hand, making }): Promise<Answer> =>
        hand.post(`/batches/${making.id}/draws`, body),
      ),
    );
    for (const [index, { status, body: answer }] of answers.entries()) {
      expect([201, 409]).toContain(status);
      if (status !== 201) continue;
      const mg = this.books.take(lot.code, quantity);
      const { id } = answer as { id: string };
      benches[index]?.making.draws.push({ id, lot: lot.code, quantity, mg });
    }
    expect(answers.some((answer) => answer.status === 201)).toBe(true);
  }
}

const mgOf = (gramsText: string): bigint => BigInt(gramsText.replace('.', ''));
