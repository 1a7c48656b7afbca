import { useState } from 'react';
import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useList } from '../../api/use-list';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages, useWords } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { ChoiceField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Section, State } from '../../shared/kit/page';
import { useItems } from '../../shared/pickers/item-picker';
import { versionMessages } from './version-messages';

type Version = components['schemas']['RecipeVersionView'];
type Comparison = components['schemas']['ComparisonView'];
type LineChange = components['schemas']['LineChangeView'];

const Lines = ({ comparison }: { readonly comparison: Comparison }) => {
  const t = useMessages(versionMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const items = useItems().rows;
  const unitOf = (id: string): string => items.find((item) => item.id === id)?.unit ?? 'g';
  const shown = (line: LineChange, quantity: string, percent: string | null): string => {
    const amount = formats.quantity(quantity, unitOf(line.itemId));
    return percent === null ? amount : `${amount} · ${formats.percent(percent)}`;
  };
  return (
    <DataTable
      caption={t('compareTitle')}
      rows={comparison.lines}
      rowKey={(line) => line.itemId + line.role}
      csvName="comparison"
      columns={[
        {
          key: 'item',
          title: t('component'),
          cell: (line) => (
            <>
              <strong>{line.itemName}</strong> <span className="quiet">{word(line.role)}</span>
            </>
          ),
          text: (line) => line.itemName,
        },
        {
          key: 'before',
          title: t('version', { number: comparison.beforeNumber }),
          numeric: true,
          cell: (line) =>
            line.kind === 'added' ? '–' : shown(line, line.beforeQuantity, line.beforePercent),
          text: (line) => line.beforeQuantity,
        },
        {
          key: 'after',
          title: t('version', { number: comparison.afterNumber }),
          numeric: true,
          cell: (line) =>
            line.kind === 'removed' ? '–' : shown(line, line.afterQuantity, line.afterPercent),
          text: (line) => line.afterQuantity,
        },
        {
          key: 'kind',
          title: t('change'),
          cell: (line) =>
            line.kind === 'same' ? t('same') : <State tone="caution">{t(line.kind)}</State>,
          text: (line) => line.kind,
        },
      ]}
    />
  );
};

const OtherFields = ({ comparison }: { readonly comparison: Comparison }) => {
  const t = useMessages(versionMessages);
  const field = useWords(versionMessages);
  const word = useServiceWords();
  const designs = useList('/api/mould-designs').rows;
  if (comparison.fields.length === 0) return <p className="quiet">{t('noOther')}</p>;
  const shown = (name: string, value: string | null): string => {
    if (value === null || value === '') return '–';
    if (name === 'mouldDesignId') return designs.find(({ id }) => id === value)?.name ?? '–';
    return word(value);
  };
  return (
    <DataTable
      caption={t('otherFields')}
      rows={comparison.fields}
      rowKey={(row) => row.field}
      columns={[
        {
          key: 'field',
          title: t('otherFields'),
          cell: (row) => field(row.field),
          text: (row) => field(row.field),
        },
        {
          key: 'before',
          title: t('version', { number: comparison.beforeNumber }),
          cell: (row) => shown(row.field, row.before),
          text: (row) => row.before ?? '',
        },
        {
          key: 'after',
          title: t('version', { number: comparison.afterNumber }),
          cell: (row) => shown(row.field, row.after),
          text: (row) => row.after ?? '',
        },
      ]}
    />
  );
};

const Compared = (props: { readonly before: string; readonly after: string }) => {
  const comparison = useRead('/api/recipes/{id}/comparison/{otherId}', {
    params: { path: { id: props.before, otherId: props.after } },
  });
  return (
    <Loaded query={comparison}>
      {(data) => (
        <>
          <Lines comparison={data} />
          <OtherFields comparison={data} />
        </>
      )}
    </Loaded>
  );
};

/** Two versions of a recipe side by side: the older on the left. */
export const CompareVersions = (props: {
  readonly version: Version;
  readonly versions: readonly Version[];
}) => {
  const { version } = props;
  const t = useMessages(versionMessages);
  const [other, setOther] = useState('');
  const others = props.versions.filter(({ id }) => id !== version.id);
  const chosen = others.find(({ id }) => id === other);
  if (others.length === 0) return null;
  const [older, newer] =
    chosen !== undefined && chosen.number < version.number ? [chosen, version] : [version, chosen];
  return (
    <Section title={t('compareTitle')}>
      <div className="narrow section">
        <ChoiceField
          label={t('compareWith')}
          value={chosen?.id ?? ''}
          empty="–"
          onChange={setOther}
          choices={others.map(({ id, number }) => ({ value: id, label: t('version', { number }) }))}
        />
      </div>
      {newer !== undefined && <Compared before={older.id} after={newer.id} />}
    </Section>
  );
};
