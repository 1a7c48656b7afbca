import { addExact, isExact, subtractExact } from '../formats/exact';

/** What is on the keypad: weighings that are done, a tare, and the digits being typed. */
export interface Weighing {
  readonly steps: readonly string[];
  readonly tare: string;
  readonly entry: string;
}

export type Key =
  | { readonly kind: 'character'; readonly character: string }
  | { readonly kind: 'backspace' | 'clear' | 'tare' | 'step' }
  | { readonly kind: 'remove'; readonly position: number };

export const start = (value: string): Weighing => ({ steps: [], tare: '0', entry: value });

/** The digits typed so far as a value: an empty keypad and a lone point are nothing. */
const typed = (entry: string): string => {
  const trimmed = entry.endsWith('.') ? entry.slice(0, -1) : entry;
  const value = trimmed.startsWith('.') ? `0${trimmed}` : trimmed;
  return isExact(value) ? value : '0';
};

/** Everything weighed, less the tare of the vessel that stood under each weighing. */
export const net = ({ steps, tare, entry }: Weighing): string =>
  addExact(...steps, typed(entry) === '0' ? '0' : subtractExact(typed(entry), tare));

const append = (entry: string, character: string): string => {
  if (character === '.' && entry.includes('.')) return entry;
  const longer = entry === '0' && character !== '.' ? character : entry + character;
  const [, fraction = ''] = longer.split('.');
  return fraction.length > 3 || longer.length > 12 ? entry : longer;
};

export const press = (weighing: Weighing, key: Key): Weighing => {
  switch (key.kind) {
    case 'character':
      return { ...weighing, entry: append(weighing.entry, key.character) };
    case 'backspace':
      return { ...weighing, entry: weighing.entry.slice(0, -1) };
    case 'clear':
      return { ...weighing, entry: '' };
    case 'tare':
      return { ...weighing, tare: typed(weighing.entry), entry: '' };
    case 'step':
      return typed(weighing.entry) === '0'
        ? weighing
        : {
            ...weighing,
            steps: [...weighing.steps, subtractExact(typed(weighing.entry), weighing.tare)],
            entry: '',
          };
    case 'remove':
      return { ...weighing, steps: weighing.steps.filter((_, at) => at !== key.position) };
  }
};
