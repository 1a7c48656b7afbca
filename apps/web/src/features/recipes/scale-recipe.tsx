import { useState } from 'react';
import { api, must } from '../../api/client';
import type { components } from '../../api/schema';
import { useAsk } from '../../api/use-ask';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { DecimalField } from '../../shared/kit/decimal-field';
import { OneOf } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Fact, Facts, Section } from '../../shared/kit/page';
import { useSettled } from '../../shared/kit/use-settled';
import { versionMessages } from './version-messages';

type Kind = components['schemas']['ScaleDto']['kind'];
type Stage = components['schemas']['ScaledStageView'];
type Scaled = components['schemas']['ScaledView'];

/** What a kind of item can be scaled to. */
const KINDS: Readonly<Record<string, readonly Kind[]>> = {
  filling: ['grams'],
  piece: ['pieces', 'trays'],
  box: ['boxes'],
};

const useScaled = (versionId: string, kind: Kind, quantity: string) =>
  useAsk({
    queryKey: ['/api/recipes/{id}/scale', versionId, kind, quantity],
    enabled: quantity !== '' && Number(quantity) > 0,
    retry: false,
    queryFn: ({ signal }) =>
      must(
        api.POST('/api/recipes/{id}/scale', {
          params: { path: { id: versionId } },
          body: { kind, quantity },
          signal,
        }),
      ),
  });

const Gives = ({ stage }: { readonly stage: Stage }) => {
  const t = useMessages(versionMessages);
  const formats = useFormats();
  const parts = [
    stage.expectedGrams === null ? '' : formats.mass(stage.expectedGrams),
    stage.expectedPieces === null ? '' : t('goodPieces', { count: stage.expectedPieces }),
    stage.piecesToMake === null ? '' : t('toMake', { count: stage.piecesToMake }),
    stage.trays === null ? '' : t('wholeTrays', { count: stage.trays }),
  ].filter((part) => part !== '');
  if (parts.length === 0) return null;
  return (
    <Facts>
      <Fact name={t('gives')}>{parts.join(' · ')}</Fact>
    </Facts>
  );
};

const StageLines = ({ stage }: { readonly stage: Stage }) => {
  const t = useMessages(versionMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const title = t('stage', { item: stage.itemName, factor: formats.number(stage.factor, 3) });
  return (
    <section aria-label={stage.itemName} className="stack">
      <h3>{title}</h3>
      <Gives stage={stage} />
      <DataTable
        caption={title}
        rows={stage.lines}
        rowKey={(line, position) => line.itemId + line.role + String(position)}
        csvName="scaled"
        columns={[
          {
            key: 'item',
            title: t('component'),
            cell: (line) => line.itemName,
            text: (line) => line.itemName,
          },
          {
            key: 'role',
            title: t('as'),
            cell: (line) => word(line.role),
            text: (line) => line.role,
          },
          {
            key: 'quantity',
            title: t('weighOut'),
            numeric: true,
            cell: (line) => <strong>{formats.quantity(line.quantity, line.unit)}</strong>,
            text: (line) => line.quantity,
          },
          {
            key: 'steps',
            title: t('afterSteps'),
            cell: (line) =>
              line.steps
                .map((step) => t('leaves', { step: step.step, out: formats.mass(step.outGrams) }))
                .join('; '),
            text: (line) =>
              line.steps.map(({ step, outGrams }) => `${step} ${outGrams}`).join('; '),
          },
        ]}
      />
    </section>
  );
};

const FromStore = ({ scaled }: { readonly scaled: Scaled }) => {
  const t = useMessages(versionMessages);
  const formats = useFormats();
  return (
    <section aria-label={t('fromStore')} className="stack">
      <h3>{t('fromStore')}</h3>
      <DataTable
        caption={t('fromStore')}
        rows={scaled.fromStore}
        rowKey={({ itemId }) => itemId}
        csvName="from-store"
        small
        columns={[
          {
            key: 'item',
            title: t('item'),
            cell: (line) => line.itemName,
            text: (line) => line.itemName,
          },
          {
            key: 'quantity',
            title: t('quantity'),
            numeric: true,
            cell: (line) => formats.quantity(line.quantity, line.unit),
            text: (line) => line.quantity,
          },
        ]}
      />
    </section>
  );
};

/** A recipe at another size, through every stage down to the store, with whole trays. */
export const ScaleRecipe = (props: { readonly versionId: string; readonly itemKind: string }) => {
  const t = useMessages(versionMessages);
  const kinds = KINDS[props.itemKind] ?? ['grams'];
  const [kind, setKind] = useState<Kind>(kinds[0] ?? 'grams');
  const [quantity, setQuantity] = useState('');
  const scaled = useScaled(props.versionId, kind, useSettled(quantity));
  return (
    <Section title={t('scaleTitle')}>
      <div className="stack">
        <p className="quiet">{t('scaleLead')}</p>
        {kinds.length > 1 && (
          <OneOf
            label={t('by')}
            value={kind}
            onChange={(next) => setKind(next as Kind)}
            choices={kinds.map((one) => ({ value: one, label: t(one) }))}
          />
        )}
        <div className="narrow">
          <DecimalField
            label={t('by')}
            unit={kind === 'grams' ? 'g' : t(kind)}
            value={quantity}
            onChange={setQuantity}
          />
        </div>
        {quantity !== '' && Number(quantity) > 0 && (
          <Loaded query={scaled}>
            {(data) => (
              <div className="stack">
                {data.stages.map((stage) => (
                  <StageLines key={stage.itemId} stage={stage} />
                ))}
                <FromStore scaled={data} />
              </div>
            )}
          </Loaded>
        )}
      </div>
    </Section>
  );
};
