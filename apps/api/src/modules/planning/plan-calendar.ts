import ical from 'ical-generator';
import { inLanguage, type ReaderLanguage } from '../../domain/words/in-language';
import { allOf, say, type Sentence } from '../../domain/words/say';
import { dayToDb } from '../../platform/database/days';
import type { PlanView } from './plan.dto';

type Planned = PlanView['batches'][number];

const withoutZeros = (quantity: string): string => quantity.replace(/\.?0+$/, '');

const amountOf = ({ step, quantity, trays }: Planned): Sentence => {
  const amount = withoutZeros(quantity);
  const said =
    step === 'cook'
      ? say`${amount} g`
      : step === 'cast'
        ? say`${amount} pieces`
        : say`${amount} boxes`;
  return trays === null ? said : say`${said}, ${trays} trays`;
};

const summaryOf = (batch: Planned): Sentence => {
  const { itemName, step } = batch;
  const amount = amountOf(batch);
  if (step === 'cook') return say`Cook ${itemName}: ${amount}`;
  return step === 'cast' ? say`Cast ${itemName}: ${amount}` : say`Pack ${itemName}: ${amount}`;
};

/**
 * The plan as all-day events for anybody's calendar (RFC 5545): what is made on its day and what
 * is to be ordered on the last day for it. Days are days everywhere, so they carry no time zone.
 * Each text is told before it goes in: the format folds long lines, also inside a sentence.
 */
export const planCalendar = (
  plan: PlanView,
  workshopName: string,
  language: ReaderLanguage,
): string => {
  const tell = (text: string): string => inLanguage(text, language);
  const stamp = new Date(plan.madeAt);
  const calendar = ical({
    name: tell(say`${workshopName}: plan`),
    prodId: `//Ballotin//plan//${language.toUpperCase()}`,
  });
  for (const batch of plan.batches) {
    const { latestDay, readyDay } = batch;
    calendar.createEvent({
      id: `${plan.id}-${batch.key.replaceAll(/[@/]/g, '-')}`,
      stamp,
      start: dayToDb(batch.day),
      allDay: true,
      summary: tell(summaryOf(batch)),
      description: tell(
        say`For ${allOf(batch.for)}. Latest start ${latestDay}, ready ${readyDay}.`,
      ),
    });
  }
  plan.shopping.forEach((order, index) => {
    calendar.createEvent({
      id: `${plan.id}-order-${String(index + 1)}`,
      stamp,
      start: dayToDb(order.orderBy),
      allDay: true,
      summary: tell(say`Order from ${order.supplier ?? say`whoever has it`}`),
      description: order.lines
        .map((line) => tell(say`${line.itemName}: ${withoutZeros(line.ordered)}`))
        .join('\n'),
    });
  });
  return calendar.toString();
};
