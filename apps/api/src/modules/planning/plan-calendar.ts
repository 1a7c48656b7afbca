import ical from 'ical-generator';
import { dayToDb } from '../../platform/database/days';
import type { PlanView } from './plan.dto';

const VERB: Readonly<Record<string, string>> = { cook: 'Cook', cast: 'Cast', pack: 'Pack' };

const amountOf = (batch: PlanView['batches'][number]): string => {
  const quantity = batch.quantity.replace(/\.?0+$/, '');
  const unit = batch.step === 'cook' ? 'g' : batch.step === 'cast' ? 'pieces' : 'boxes';
  return batch.trays === null ? `${quantity} ${unit}` : `${quantity} ${unit}, ${batch.trays} trays`;
};

/**
 * The plan as all-day events for anybody's calendar (RFC 5545): what is made on its day and what
 * is to be ordered on the last day for it. Days are days everywhere, so they carry no time zone.
 */
export const planCalendar = (plan: PlanView, workshopName: string): string => {
  const stamp = new Date(plan.madeAt);
  const calendar = ical({ name: `${workshopName}: plan`, prodId: '//Ballotin//plan//EN' });
  for (const batch of plan.batches) {
    calendar.createEvent({
      id: `${plan.id}-${batch.key.replaceAll(/[@/]/g, '-')}`,
      stamp,
      start: dayToDb(batch.day),
      allDay: true,
      summary: `${VERB[batch.step] ?? batch.step} ${batch.itemName}: ${amountOf(batch)}`,
      description: `For ${batch.for.join(', ')}. Latest start ${batch.latestDay}, ready ${batch.readyDay}.`,
    });
  }
  plan.shopping.forEach((order, index) => {
    calendar.createEvent({
      id: `${plan.id}-order-${String(index + 1)}`,
      stamp,
      start: dayToDb(order.orderBy),
      allDay: true,
      summary: `Order from ${order.supplier ?? 'whoever has it'}`,
      description: order.lines.map((line) => `${line.itemName}: ${line.ordered}`).join('\n'),
    });
  });
  return calendar.toString();
};
