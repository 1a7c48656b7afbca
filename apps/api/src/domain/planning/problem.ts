import type { Decimal } from '../units';

/** What is in the store, as planning sees it: reservations of others are taken off already. */
export interface PlanLot {
  readonly lot: string;
  readonly item: string;
  readonly quantity: Decimal;
  /** Best-before or use-by; absent: keeps. */
  readonly lastDay?: string;
  /** Held, refused or not specified: never used. */
  readonly held: boolean;
}

/** So much of an item, ready to leave on a day, with so many days of life left on that day. */
export interface Demand {
  readonly id: string;
  readonly item: string;
  readonly quantity: Decimal;
  readonly dueDay: string;
  readonly minLifeDays: number;
  /** Money that one missing unit loses; decides who goes short. Absent: zero. */
  readonly valuePerUnit?: Decimal;
}

/** Minutes of people, a tank or another thing that has only so many minutes a day. */
export interface ResourceUse {
  readonly resource: string;
  /** Once per item and day, however much of it is made. */
  readonly minutesFixed: number;
  /** Per gram of a filling, per filled cavity, per box. */
  readonly minutesPerUnit: number;
}

export interface PlanLine {
  readonly component: string;
  /** Per gram of a filling, per filled cavity, per box; step losses included. */
  readonly quantityPerUnit: Decimal;
}

export interface PlanRecipe {
  readonly step: 'cook' | 'cast' | 'pack';
  readonly lines: readonly PlanLine[];
  /** Good out of made: pieces after rejects. One for a filling. */
  readonly goodRatio: Decimal;
  /** A cast makes whole trays only. */
  readonly tray?: {
    readonly design: string;
    readonly cavities: number;
    /** Days on which the mould is taken, the day of casting included: 1 when unmoulded that day. */
    readonly occupiedDays: number;
  };
  readonly uses: readonly ResourceUse[];
  /** Days to wait before it can be used: 1 when it crystallises, cools or sets overnight. */
  readonly restDays: number;
  /** Life from the day of making; absent: no limit of its own. */
  readonly lifeDays?: number;
}

export interface PlanItem {
  readonly id: string;
  /** Its own date caps the date of what is made from it. */
  readonly capsDate: boolean;
  /** Days from ordering to having it, for what is bought. */
  readonly leadDays: number;
  readonly recipe?: PlanRecipe;
}

export interface Capacity {
  readonly resource: string;
  readonly minutesPerDay: number;
  /** Days that differ: a helper before the feast, a machine at the mechanic's. */
  readonly exceptions?: ReadonlyMap<string, number>;
}

/** A batch that is open on the bench: what it will give, and what it still takes up. */
export interface BegunBatch {
  readonly batch: string;
  readonly item: string;
  readonly quantity: Decimal;
  readonly readyDay: string;
  readonly lastDay?: string;
  readonly busy: readonly {
    readonly resource: string;
    readonly day: string;
    readonly minutes: number;
  }[];
  readonly moulds?: { readonly design: string; readonly count: number; readonly untilDay: string };
}

export interface WorkCalendar {
  /** Monday = 1 … Sunday = 7. */
  readonly closedWeekdays: readonly number[];
  readonly closedDays: readonly string[];
  /** Closed by the rule above, but open all the same. */
  readonly openDays: readonly string[];
}

export interface PlanProblem {
  readonly today: string;
  /** Calendar days looked at, today included. */
  readonly horizonDays: number;
  readonly calendar: WorkCalendar;
  readonly items: ReadonlyMap<string, PlanItem>;
  readonly lots: readonly PlanLot[];
  readonly demands: readonly Demand[];
  readonly capacities: readonly Capacity[];
  /** Clean and sound trays of each design. */
  readonly moulds: ReadonlyMap<string, number>;
  readonly begun: readonly BegunBatch[];
}
