/**
 * A scanner on USB types like a keyboard, only faster than a hand. `next` is fed every key with its
 * time and gives the scanned text when Enter ends a burst of at least `LEAST` keys, each within
 * `GAP_MS` of the one before. The numbers are common practice, no source: readers send a key every
 * 1–20 ms, quick typists one every 60 ms.
 */
const GAP_MS = 35;
const LEAST = 4;

/** GS, which ends a field of variable length in a GS1 code; readers send it as Ctrl+] or F8. */
const GROUP_SEPARATOR = '\u001d';

export interface KeyPress {
  readonly key: string;
  readonly ctrl: boolean;
  readonly atMs: number;
}

export interface WedgeState {
  readonly text: string;
  readonly lastMs: number;
}

export const quiet: WedgeState = { text: '', lastMs: Number.NEGATIVE_INFINITY };

const characterOf = ({ key, ctrl }: KeyPress): string | undefined => {
  if (key === GROUP_SEPARATOR || key === 'F8' || (ctrl && key === ']')) return GROUP_SEPARATOR;
  return !ctrl && key.length === 1 ? key : undefined;
};

export const next = (
  state: WedgeState,
  press: KeyPress,
): { readonly state: WedgeState; readonly scanned?: string } => {
  const follows = press.atMs - state.lastMs <= GAP_MS;
  if (press.key === 'Enter' || press.key === 'Tab') {
    return follows && state.text.length >= LEAST
      ? { state: quiet, scanned: state.text }
      : { state: quiet };
  }
  // Shift and other keys that hold no character neither end a burst nor add to it.
  if (press.key === 'Shift' || press.key === 'Control' || press.key === 'Alt') {
    return { state: follows ? { ...state, lastMs: press.atMs } : state };
  }
  const character = characterOf(press);
  if (character === undefined) return { state: quiet };
  return {
    state: { text: (follows ? state.text : '') + character, lastMs: press.atMs },
  };
};

/** True while keys come so fast that no hand types them. */
export const inBurst = (state: WedgeState): boolean => state.text.length >= LEAST;
