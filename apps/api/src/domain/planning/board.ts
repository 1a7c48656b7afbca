import type { DayScale } from './days';
import type { Effort } from './effort';
import type { MadeItem, Slice, Supply } from './makings';
import type { PlanProblem } from './problem';
import { thousandthsDown, type Thousandths } from './sizes';

/**
 * The state of a plan while it is built: what is free, what is taken. Every change writes how to
 * undo it, so that a try that fails leaves no trace.
 */
export class Board {
  readonly slices: Slice[] = [];
  readonly supplies = new Map<string, Supply[]>();
  readonly bought: { item: string; quantity: Thousandths; byDay: number; demand: string }[] = [];
  private readonly minutes = new Map<string, number[]>();
  private readonly moulds = new Map<string, number[]>();
  private readonly started = new Map<string, number>();
  private readonly undo: (() => void)[] = [];

  constructor(
    readonly problem: PlanProblem,
    readonly days: DayScale,
    private readonly made: ReadonlyMap<string, MadeItem>,
    readonly effort: Effort,
  ) {
    for (const { resource, minutesPerDay, exceptions } of problem.capacities) {
      const free = Array.from({ length: days.length }, (_, index) =>
        days.isWorking(index) ? (exceptions?.get(days.dayAt(index)) ?? minutesPerDay) : 0,
      );
      this.minutes.set(resource, free);
    }
    for (const [design, count] of problem.moulds) {
      this.moulds.set(design, new Array<number>(days.length).fill(count));
    }
    this.layStock();
    this.layBegun();
  }

  mark(): number {
    return this.undo.length;
  }

  rollBack(mark: number): void {
    while (this.undo.length > mark) this.undo.pop()?.();
  }

  /** What is on the board stays there: no mark that was made before can be rolled back to. */
  settle(): void {
    this.undo.length = 0;
  }

  madeItem(item: string): MadeItem | undefined {
    return this.made.get(item);
  }

  /** Puts an entry on a list that the board keeps, undoably. */
  push<T>(list: T[], entry: T): void {
    list.push(entry);
    this.undo.push(() => list.pop());
  }

  addSupply(item: string, supply: Supply): void {
    const list = this.supplies.get(item) ?? [];
    this.supplies.set(item, list);
    this.push(list, supply);
  }

  setLastDay(thing: { lastDay: number }, lastDay: number): void {
    const before = thing.lastDay;
    thing.lastDay = lastDay;
    this.undo.push(() => (thing.lastDay = before));
  }

  takeFrom(supply: Supply, quantity: Thousandths): void {
    supply.left -= quantity;
    this.undo.push(() => (supply.left += quantity));
  }

  freeMinutes(resource: string, day: number): number {
    return this.minutes.get(resource)?.[day] ?? 0;
  }

  freeMoulds(design: string, day: number, days: number): number {
    const free = this.moulds.get(design);
    if (!free) return 0;
    let least = Infinity;
    for (let at = day; at < Math.min(day + days, free.length); at += 1) {
      least = Math.min(least, free[at] ?? 0);
    }
    return Math.max(0, least);
  }

  hasStarted(item: string, day: number): boolean {
    return (this.started.get(`${item}@${day}`) ?? 0) > 0;
  }

  start(item: string, day: number): void {
    const key = `${item}@${day}`;
    const before = this.started.get(key) ?? 0;
    this.started.set(key, before + 1);
    this.undo.push(() => this.started.set(key, before));
  }

  takeMinutes(resource: string, day: number, minutes: number): void {
    this.lower(this.minutes.get(resource), day, minutes);
  }

  takeMoulds(design: string, day: number, days: number, count: number): void {
    for (let at = day; at < day + days; at += 1) this.lower(this.moulds.get(design), at, count);
  }

  /** Restores the very number that stood there, so that no rounding builds up over many tries. */
  private lower(free: number[] | undefined, at: number, by: number): void {
    const before = free?.[at];
    if (!free || before === undefined) return;
    free[at] = before - by;
    this.undo.push(() => (free[at] = before));
  }

  private layStock(): void {
    for (const { lot, item, quantity, lastDay, held } of this.problem.lots) {
      if (held || !quantity.greaterThan(0)) continue;
      const last = lastDay === undefined ? Infinity : this.days.indexOf(lastDay);
      if (last < 0) continue;
      const left = thousandthsDown(quantity);
      this.addSupply(item, { from: { lot }, left, readyDay: 0, lastDay: last });
    }
  }

  private layBegun(): void {
    for (const { batch, item, quantity, readyDay, lastDay, busy, moulds } of this.problem.begun) {
      this.addSupply(item, {
        from: { batch },
        left: thousandthsDown(quantity),
        readyDay: Math.max(0, this.days.indexOf(readyDay)),
        lastDay: lastDay === undefined ? Infinity : this.days.indexOf(lastDay),
      });
      for (const { resource, day, minutes } of busy) {
        this.takeMinutes(resource, this.days.indexOf(day), minutes);
      }
      if (moulds) {
        this.takeMoulds(moulds.design, 0, this.days.indexOf(moulds.untilDay) + 1, moulds.count);
      }
    }
  }
}
