import type { Role } from '../../platform/requests/request-context';
import type { ScanActionName, ScanActionView } from './scan.dto';
import { named, say } from '../../domain/words/say';

/** Who may do what; the owner may do all, the auditor only what reads. */
const DOERS: Readonly<Record<ScanActionName, readonly Role[]>> = {
  open: ['maker', 'seller', 'auditor'],
  trace: ['maker', 'seller', 'auditor'],
  tag: ['maker', 'seller', 'auditor'],
  sheet: ['maker', 'seller', 'auditor'],
  note: ['maker', 'seller', 'auditor'],
  draw: ['maker', 'seller'],
  adjust: ['maker', 'seller'],
  hold: ['maker', 'seller'],
  move: ['maker', 'seller'],
  finish: ['maker', 'seller'],
  read: ['maker', 'seller'],
  clean: ['maker', 'seller'],
  recall: ['maker', 'seller'],
  dispatch: ['seller'],
  label: ['seller'],
  complain: ['seller'],
  receive: ['maker'],
  charge: ['maker'],
  empty: ['maker'],
  inspect: ['maker'],
  use_mould: ['maker'],
  release: [],
};

/** An action, and why the state of things forbids it; null when nothing does. */
export type Wanted = readonly [action: ScanActionName, because: string | null];

/** Actions that make no sense at all for a thing are left out by the caller; these are explained. */
export const actionsFor = (wanted: readonly Wanted[], role: Role): ScanActionView[] =>
  wanted.map(([action, because]) => {
    const mayDo = role === 'owner' || DOERS[action].includes(role);
    const reason = mayDo ? because : say`The role ${named(role)} may not do this.`;
    return { action, possible: reason === null, because: reason };
  });
