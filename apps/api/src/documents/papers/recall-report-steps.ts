import { Decimal, roundTo } from '../../domain/units';
import { instantText, numberText } from '../kit/formats';
import type { PaperLanguage } from '../kit/language';
import type { Sheet } from '../kit/sheet';
import type { RecallReportView } from './recall-report-view';
import { RECALL_REPORT_WORDS } from './recall-report.words';
import { section } from './recall-tables';

const minutes = (seconds: number, language: PaperLanguage): string =>
  numberText(roundTo(new Decimal(seconds).dividedBy(60), 1).toFixed(1), language);

/** What was done in the case, by whom, and how long after its opening. */
export const stepSection = (sheet: Sheet, view: RecallReportView): void => {
  const { language, timeZone } = sheet.context;
  const words = RECALL_REPORT_WORDS[language];
  section(
    sheet,
    words.steps,
    view.steps.map((step) => ({
      cells: [
        instantText(step.at, timeZone, language),
        minutes(step.afterSeconds, language),
        [
          { text: words.stepOf[step.kind] ?? step.kind, strong: true },
          ...(step.note === '' ? [] : [{ text: `\n${step.note}` }]),
        ],
        step.person,
      ],
    })),
    [
      { title: words.at, share: 24 },
      { title: words.after, share: 14, align: 'right' as const },
      { title: words.step, share: 44 },
      { title: words.person, share: 18 },
    ],
  );
};
