import { Decimal } from '../units';
import { textProblem, tidyText } from './text';
import { inEnglish, say, type Sentence } from '../words/say';

/** What is wrong with one place of untrusted JSON, by RFC 6901 pointer. */
export interface Problem {
  readonly pointer: string;
  /** In English, for logs and programs. */
  readonly message: string;
  readonly said: Sentence;
}

/** Problems as the reader of an answer is told them. */
export const saidProblems = (
  problems: readonly Problem[],
): { readonly pointer: string; readonly message: Sentence }[] =>
  problems.map(({ pointer, said }) => ({ pointer, message: said }));

const FIGURE = /^\d{1,9}(\.\d{1,6})?$/;

/**
 * Reads untrusted JSON and gathers every problem instead of stopping at the first. Values that are
 * wrong come back as the given fallback; the caller looks at `problems` before it uses anything.
 */
export class JsonReader {
  constructor(
    private readonly value: unknown,
    readonly pointer: string,
    readonly problems: Problem[],
  ) {}

  problem(said: Sentence): void {
    this.problems.push({ pointer: this.pointer, message: inEnglish(said), said });
  }

  get isMissing(): boolean {
    return this.value === undefined || this.value === null;
  }

  /** Fields of an object; a field that isn't in `known` is a problem. */
  fields<K extends string>(known: readonly K[]): (name: K) => JsonReader {
    const value = this.value;
    const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
    if (!isObject) this.problem(say`must be an object`);
    const entries = new Map<string, unknown>(isObject ? Object.entries(value) : []);
    for (const name of entries.keys()) {
      if (!(known as readonly string[]).includes(name))
        this.child(name, 0).problem(say`is unknown`);
    }
    return (name) => this.child(name, entries.get(name));
  }

  list(most: number): JsonReader[] {
    if (this.isMissing) return [];
    if (!Array.isArray(this.value)) {
      this.problem(say`must be a list`);
      return [];
    }
    if (this.value.length > most) {
      this.problem(say`must have at most ${most} entries`);
      return [];
    }
    return this.value.map((entry: unknown, index) => this.child(String(index), entry));
  }

  text(): string {
    if (typeof this.value !== 'string') {
      this.problem(say`must be a text`);
      return '';
    }
    const tidy = tidyText(this.value);
    const problem = /\p{Cc}/u.test(this.value) ? textProblem(this.value) : textProblem(tidy);
    if (problem) this.problem(problem);
    return tidy;
  }

  flag(): boolean {
    if (this.isMissing) return false;
    if (typeof this.value !== 'boolean') this.problem(say`must be true or false`);
    return this.value === true;
  }

  /** A decimal text that isn't negative and at most `most`. */
  figure(most: number): Decimal {
    if (typeof this.value !== 'string' || !FIGURE.test(this.value)) {
      this.problem(say`must be a decimal text such as "12.5", not negative`);
      return new Decimal(0);
    }
    const figure = new Decimal(this.value);
    if (figure.greaterThan(most)) this.problem(say`must be at most ${most}`);
    return figure;
  }

  figureOrNull(most: number): Decimal | null {
    return this.isMissing ? null : this.figure(most);
  }

  oneOf<T extends string>(allowed: readonly T[]): T | null {
    const found = allowed.find((entry) => entry === this.value);
    if (found === undefined) this.problem(say`must be one of ${allowed.join(', ')}`);
    return found ?? null;
  }

  child(name: string, value: unknown): JsonReader {
    const step = name.replaceAll('~', '~0').replaceAll('/', '~1');
    return new JsonReader(value, `${this.pointer}/${step}`, this.problems);
  }
}
