import { Button } from '@mantine/core';
import { useState } from 'react';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { State } from '../../shared/kit/page';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { useAllergenName } from '../../shared/language/allergen-names';
import { labelMessages } from './messages';

type Declaration = components['schemas']['DeclarationView'];
type Contact = components['schemas']['ContactView'];
type Decision = 'state' | 'leave_out';

const Contacts = ({ declaration }: { readonly declaration: Declaration }) => {
  const t = useMessages(labelMessages);
  const formats = useFormats();
  const allergenName = useAllergenName();
  const may = useMay('maker');
  const book = useBooking();
  const [open, setOpen] = useState<{ contact: Contact; decision: Decision }>();
  const code = declaration.lotCode;
  if (declaration.contacts.length === 0) return null;
  return (
    <>
      <h3>{t('contacts')}</h3>
      <ul className="plain-list">
        {declaration.contacts.map((contact) => (
          <li key={contact.allergen} className="row line">
            <strong>{allergenName(contact.allergen)}</strong>
            <State tone={contact.verdict === 'below' ? 'plain' : 'warn'}>
              {t(contact.verdict)}
            </State>
            {contact.proteinMgPerKg !== null && (
              <span>{formats.number(contact.proteinMgPerKg, 2)} mg/kg</span>
            )}
            <span className="quiet">{contact.sources.join(', ')}</span>
            {may &&
              (['state', 'leave_out'] as const).map((decision) => (
                <Button
                  key={decision}
                  variant="default"
                  onClick={() => setOpen({ contact, decision })}
                >
                  {t(decision)}
                </Button>
              ))}
          </li>
        ))}
      </ul>
      {open !== undefined && (
        <ReasonDialog
          title={t('decideTitle', { allergen: allergenName(open.contact.allergen) })}
          confirm={t(open.decision)}
          onClose={() => setOpen(undefined)}
          onReason={(reason) =>
            book({
              path: '/api/lots/{code}/contact-decisions',
              at: { code },
              body: { allergen: open.contact.allergen, decision: open.decision, reason },
              label: t('bookLabel', { code }),
              lane: `label-${code}`,
            })
          }
        />
      )}
    </>
  );
};

/** Only where the two differ: a list that is the same twice says nothing. */
const AsDesigned = ({ list }: { readonly list: Declaration['lists'][number] }) => {
  const t = useMessages(labelMessages);
  const made = list.runs.map(({ text }) => text).join('');
  if (list.asDesigned === '' || list.asDesigned === made) return null;
  return (
    <details>
      <summary>{t('designed')}</summary>
      <p lang={list.language}>{list.asDesigned}</p>
    </details>
  );
};

/** The ingredient lists as they will print, with allergens emphasised. */
export const Declaration = ({ declaration }: { readonly declaration: Declaration }) => {
  const t = useMessages(labelMessages);
  const allergenName = useAllergenName();
  const formats = useFormats();
  return (
    <div className="stack">
      {declaration.lists.map((list) => (
        <div key={list.language}>
          <p lang={list.language} className="sheet">
            {list.runs.map((run, at) =>
              run.emphasis === 'none' ? (
                <span key={String(at)}>{run.text}</span>
              ) : (
                <strong key={String(at)}>{run.text}</strong>
              ),
            )}
          </p>
          <AsDesigned list={list} />
        </div>
      ))}
      <p>
        {formats.label(t('allergens'))}{' '}
        <strong>{declaration.allergens.map(allergenName).join(', ')}</strong>
      </p>
      <Contacts declaration={declaration} />
    </div>
  );
};
