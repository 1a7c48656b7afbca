import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { Section } from '../../shared/kit/page';
import { recallMessages } from './messages';
import type { Recall } from './use-recall-step';

type Action = Recall['actions'][number];

const textOf = (value: unknown): string => (typeof value === 'string' ? value : '');

/** What a step of the case was about: whom, which lot, how many. */
const useSubject = (recall: Recall) => {
  const t = useMessages(recallMessages);
  const formats = useFormats();
  const names = new Map(recall.customers.map(({ id, name }) => [id, name]));
  return ({ kind, detail }: Action): string => {
    const who = names.get(textOf(detail['customerId'])) ?? '';
    if (kind === 'held' && Array.isArray(detail['lots'])) {
      return t('heldLots', { count: detail['lots'].length });
    }
    if (kind === 'recovered') {
      const quantity = formats.number(textOf(detail['quantity']));
      const parts = [`${quantity} × ${textOf(detail['lot'])}`, who === '' ? t('counter') : who];
      return parts.join(', ');
    }
    return [who, textOf(detail['text'])].filter((part) => part !== '').join(': ');
  };
};

/** Every step of the case, who took it, and how long after the opening. */
export const RecallRecord = ({ recall }: { readonly recall: Recall }) => {
  const t = useMessages(recallMessages);
  const formats = useFormats();
  const subjectOf = useSubject(recall);
  const said = (kind: string): string => {
    const key = `act_${kind}`;
    return key in recallMessages.messages ? t(key as 'act_note') : kind;
  };
  return (
    <Section title={t('actions')}>
      <ol className="plain-list">
        {recall.actions.map((action, at) => (
          <li key={`${action.at}-${String(at)}`} className="row line">
            <strong>{said(action.kind)}</strong>
            <span>{subjectOf(action)}</span>
            <span className="quiet">
              {action.person} · {formats.instant(action.at)} ·{' '}
              {t('after', { minutes: formats.number((action.afterSeconds / 60).toFixed(1), 1) })}
            </span>
          </li>
        ))}
      </ol>
    </Section>
  );
};
