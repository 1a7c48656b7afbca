import { useSearch } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import type { Formats } from '../formats/use-formats';

export type Start = components['schemas']['RecallStartDto'];
export type StartKind = Start['kind'];

/** Where a trace or a recall starts, as a person fills it in and as an address keeps it: in days. */
export interface StartForm {
  readonly kind: StartKind;
  readonly text: string;
  readonly id: string;
  /** YYYY-MM-DD, or empty. */
  readonly from: string;
  readonly to: string;
}

export const EMPTY_START: StartForm = { kind: 'text', text: '', id: '', from: '', to: '' };

const BY_TEXT = new Set<StartKind>(['text', 'lot', 'mould']);
const IN_A_WINDOW = new Set<StartKind>(['tank', 'place']);

export const isByText = ({ kind }: StartForm): boolean => BY_TEXT.has(kind);

export const hasWindow = ({ kind }: StartForm): boolean => IN_A_WINDOW.has(kind);

/** Whether enough is filled in to ask. A window without an end would be another question. */
export const isWhole = (form: StartForm): boolean => {
  if (isByText(form)) return form.text.trim() !== '';
  return form.id !== '' && (!hasWindow(form) || (form.from !== '' && form.to !== ''));
};

/** The question to the service: days become moments by the workshop's clock. */
export const startOf = (form: StartForm, formats: Formats): Start => ({
  kind: form.kind,
  ...(isByText(form) ? { text: form.text.trim() } : { id: form.id }),
  ...(form.from === '' ? {} : { from: formats.dayBegins(form.from) }),
  ...(form.to === '' ? {} : { to: formats.dayEnds(form.to) }),
});

/** The filled-in parts, for the address of a page. */
export const searchOf = (form: StartForm): Record<string, string> =>
  Object.fromEntries(Object.entries(form).filter(([, value]) => value !== ''));

/** The start that the address of this page names. */
export const useStartInAddress = (): StartForm => {
  const search: Readonly<Record<string, string | undefined>> = useSearch({ strict: false });
  const { kind = 'text', text = '', id = '', from = '', to = '' } = search;
  return { kind: kind as StartKind, text, id, from, to };
};
