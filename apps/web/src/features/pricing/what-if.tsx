import { Button } from '@mantine/core';
import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { sentWith } from '../../api/watched';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { OneOf, TextField } from '../../shared/kit/fields';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { priceMessages } from './messages';

type Answer = components['schemas']['WhatIfView'];
type Outcome = components['schemas']['OutcomeView'];
type Kind = 'ingredient' | 'wage';

const Outcomes = ({ answer }: { readonly answer: Answer }) => {
  const t = useMessages(priceMessages);
  const formats = useFormats();
  const [before, after] = answer.scenarios;
  const old = new Map((before?.outcomes ?? []).map((row) => [row.itemId, row]));
  const percent = (value: string | null | undefined): string =>
    value === null || value === undefined ? '–' : formats.percent(value);
  return (
    <>
      <DataTable
        caption={t('whatIf')}
        rows={after?.outcomes ?? []}
        rowKey={(row: Outcome) => row.itemId}
        csvName="what-if"
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (row) => row.itemName,
            text: (row) => row.itemName,
          },
          {
            key: 'cost',
            title: t('cost'),
            numeric: true,
            cell: (row) =>
              `${formats.money(old.get(row.itemId)?.cost ?? '0')} → ${formats.money(row.cost)}`,
            text: (row) => row.cost,
          },
          {
            key: 'change',
            title: t('change'),
            numeric: true,
            cell: (row) => formats.money(row.costChange),
            text: (row) => row.costChange,
          },
          {
            key: 'margin',
            title: t('margin'),
            numeric: true,
            cell: (row) =>
              row.marginPercent === null
                ? '–'
                : `${percent(old.get(row.itemId)?.marginPercent)} → ${percent(row.marginPercent)}`,
            text: (row) => row.marginPercent ?? '',
          },
          {
            key: 'keep',
            title: t('keep'),
            numeric: true,
            cell: (row) =>
              row.netToKeepMargin === null ? '–' : formats.money(row.netToKeepMargin),
            text: (row) => row.netToKeepMargin ?? '',
          },
        ]}
      />
      {answer.skipped.length > 0 && (
        <details>
          <summary>
            {t('skipped')} ({answer.skipped.length})
          </summary>
          <ul>
            {answer.skipped.map((row) => (
              <li key={row.itemId}>
                {formats.label(row.itemName)} {row.reason}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
};

/** What happens to cost and margin when couverture goes up by a third, or wages by a tenth. */
export const WhatIf = ({ list }: { readonly list: 'counter' | 'trade' }) => {
  const t = useMessages(priceMessages);
  const [kind, setKind] = useState<Kind>('ingredient');
  const [nameContains, setName] = useState('couverture');
  const [percent, setPercent] = useState('33.3');
  const [answer, setAnswer] = useState<Answer>();
  const { working, id, error, run, cancel } = useStoppable();
  const reckon = () =>
    run(async (watched) => {
      const change = kind === 'ingredient' ? { kind, nameContains, percent } : { kind, percent };
      const name = t('scenario', {
        what: kind === 'ingredient' ? nameContains : t('wage'),
        percent,
      });
      const body = { list, scenarios: [{ name, changes: [change] }] };
      setAnswer(await must(api.POST('/api/what-if', { body, ...sentWith(watched) })));
    });
  return (
    <Section title={t('whatIf')}>
      <p className="quiet">{t('whatIfLead')}</p>
      <form
        className="columns columns-end"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void reckon();
        }}
      >
        <OneOf
          label={t('what')}
          value={kind}
          onChange={(next) => setKind(next as Kind)}
          choices={[
            { value: 'ingredient', label: t('ingredient') },
            { value: 'wage', label: t('wage') },
          ]}
        />
        {kind === 'ingredient' && (
          <TextField label={t('contains')} value={nameContains} onChange={setName} />
        )}
        <DecimalField label={t('by')} unit="%" value={percent} onChange={setPercent} />
        <Button type="submit" disabled={working}>
          {t('reckon')}
        </Button>
      </form>
      {working && <Working label={t('reckoning')} id={id} onCancel={cancel} />}
      <ProblemNotice error={error} />
      {answer !== undefined && <Outcomes answer={answer} />}
    </Section>
  );
};
