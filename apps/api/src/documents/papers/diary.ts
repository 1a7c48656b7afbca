import { dayText } from '../kit/formats';
import type { Translated } from '../kit/language';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, heading, titleBlock } from '../kit/sheet-parts';
import { table } from '../kit/table';
import { CAUTIONS } from './cautions.words';

export type DiaryKind = 'reading' | 'cleaning' | 'mould' | 'hold' | 'release' | 'tank' | 'work';

export interface DiaryView {
  readonly from: string;
  readonly to: string;
  readonly days: readonly DiaryDay[];
}

export interface DiaryDay {
  /** `YYYY-MM-DD`. */
  readonly day: string;
  readonly entries: readonly DiaryEntry[];
}

export interface DiaryEntry {
  /** `HH:MM` in the workshop's time zone. */
  readonly time: string;
  readonly kind: DiaryKind;
  readonly subject: string;
  readonly what: string;
  /** Outside its limits, or something is wrong: set in bold. */
  readonly attention: boolean;
  readonly userName: string;
}

interface DiaryWords {
  readonly title: string;
  readonly span: (from: string, to: string) => string;
  readonly time: string;
  readonly kind: string;
  readonly subject: string;
  readonly what: string;
  readonly who: string;
  readonly nothing: string;
  readonly kinds: Readonly<Record<DiaryKind, string>>;
}

const WORDS: Translated<DiaryWords> = {
  en: {
    title: 'Diary',
    span: (from, to) => (from === to ? from : `${from} to ${to}`),
    time: 'Time',
    kind: 'Kind',
    subject: 'Of',
    what: 'What',
    who: 'Who',
    nothing: 'Nothing was recorded in these days.',
    kinds: {
      reading: 'reading',
      cleaning: 'cleaning',
      mould: 'mould check',
      hold: 'on hold',
      release: 'released',
      tank: 'tank emptied',
      work: 'done',
    },
  },
  fr: {
    title: 'Journal',
    span: (from, to) => (from === to ? from : `du ${from} au ${to}`),
    time: 'Heure',
    kind: 'Type',
    subject: 'De',
    what: 'Quoi',
    who: 'Qui',
    nothing: 'Rien n’a été enregistré ces jours-là.',
    kinds: {
      reading: 'relevé',
      cleaning: 'nettoyage',
      mould: 'contrôle moule',
      hold: 'bloqué',
      release: 'libéré',
      tank: 'cuve vidée',
      work: 'fait',
    },
  },
};

/** The day-by-day record that an inspector reads. */
export const diary = (view: DiaryView, context: PaperContext): Promise<Buffer> => {
  const { language } = context;
  const words = WORDS[language];
  const sheet = new Sheet(context, words.title);
  const span = words.span(dayText(view.from, language), dayText(view.to, language));
  titleBlock(sheet, words.title, span);
  caution(sheet, CAUTIONS[language].diary);
  if (view.days.length === 0) sheet.text(words.nothing);
  for (const { day, entries } of view.days) {
    heading(sheet, dayText(day, language));
    table(sheet, {
      columns: [
        { title: words.time, share: 7 },
        { title: words.kind, share: 13 },
        { title: words.subject, share: 22 },
        { title: words.what, share: 44 },
        { title: words.who, share: 14 },
      ],
      rows: entries.map(({ time, kind, subject, what, attention, userName }) => ({
        cells: [time, words.kinds[kind], subject, [{ text: what, strong: attention }], userName],
      })),
    });
  }
  return sheet.finish();
};
