import { Link } from '@tanstack/react-router';
import type { components } from '../../api/schema';
import { useList } from '../../api/use-list';
import { unitOfMeasure } from '../../shared/formats/measures';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { DataTable } from '../../shared/kit/data-table';
import { Fact, Facts, Section } from '../../shared/kit/page';
import { recipeMessages } from './messages';

type Version = components['schemas']['RecipeVersionView'];
type Step = Version['steps'][number];

const ITEM = '/goods-in/items/$id';
const RECIPE = '/recipes/$id';

const Lines = ({ version }: { readonly version: Version }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const formats = useFormats();
  return (
    <DataTable
      caption={t('lines')}
      rows={version.lines}
      rowKey={(_line, at) => String(at)}
      csvName={`${version.itemName} ${String(version.number)}`}
      small
      columns={[
        {
          key: 'item',
          title: t('component'),
          cell: (line) => (
            <>
              <Link
                to={line.itemKind === 'ingredient' || line.itemKind === 'packaging' ? ITEM : RECIPE}
                params={{ id: line.itemId }}
              >
                {line.itemName}
              </Link>
              {line.note !== null && <div className="quiet">{line.note}</div>}
            </>
          ),
          text: (line) => line.itemName,
        },
        {
          key: 'quantity',
          title: t('quantity'),
          numeric: true,
          cell: (line) => `${formats.number(line.quantity)} ${line.unit}`,
          text: (line) => line.quantity,
        },
        {
          key: 'role',
          title: t('role'),
          cell: (line) => word(line.role),
          text: (line) => line.role,
        },
      ]}
    />
  );
};

const Gives = ({ version }: { readonly version: Version }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const isPiece = version.itemKind === 'piece';
  const designs = useList('/api/mould-designs', {}, isPiece).rows;
  const mould = designs.find(({ id }) => id === version.mouldDesignId)?.name;
  const { yieldGrams, yieldPieces, shelfLifeDays, shelfLifeBasis, labourMinutes } = version;
  const life = [
    shelfLifeDays === null ? t('lifeUnstated') : t('lifeStated', { days: shelfLifeDays }),
    shelfLifeBasis === null ? '' : word(shelfLifeBasis),
  ];
  return (
    <>
      <Facts>
        {yieldGrams !== null && <Fact name={t('yieldGrams')}>{formats.mass(yieldGrams)}</Fact>}
        {yieldPieces !== null && (
          <Fact name={t('yieldPieces')}>{formats.number(String(yieldPieces))}</Fact>
        )}
        {mould !== undefined && <Fact name={t('mould')}>{mould}</Fact>}
        <Fact name={t('life')}>{life.filter(Boolean).join(', ')}</Fact>
        <Fact name={t('dateKind')}>{word(version.dateKind)}</Fact>
        <Fact name={t('afterThawShort')}>
          {version.lifeAfterThawDays === null
            ? t('notFrozen')
            : t('lifeStated', { days: version.lifeAfterThawDays })}
        </Fact>
        {labourMinutes !== null && (
          <Fact name={t('work')}>
            {[`${formats.number(labourMinutes, 1)} min`, version.labourRole]
              .filter(Boolean)
              .join(', ')}
          </Fact>
        )}
      </Facts>
      {version.shelfLifeDocument !== null && (
        <p className="quiet">
          {formats.label(t('document'))} {version.shelfLifeDocument}
        </p>
      )}
      {version.note !== null && <p className="text">{version.note}</p>}
    </>
  );
};

const StepSheet = ({ step }: { readonly step: Step }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const limits = ({ low, high }: NonNullable<Step['checks']>[number]): string => {
    const from = low === null || low === undefined ? '' : formats.number(low);
    const to = high === null || high === undefined ? '' : formats.number(high);
    if (from !== '' && to !== '') return t('range', { low: from, high: to });
    return from === '' ? `≤ ${to}` : `≥ ${from}`;
  };
  return (
    <li className="line">
      <strong>{step.title}</strong>
      {step.text !== undefined && <div>{step.text}</div>}
      {(step.checks ?? []).map((check, at) => (
        <div key={String(at)}>
          ✓ {word(check.measure)} {limits(check)} {unitOfMeasure(check.measure)}
        </div>
      ))}
      {step.restHours !== null && step.restHours !== undefined && (
        <div className="quiet">
          {formats.label(t('restHours'))} {formats.number(step.restHours)} h
        </div>
      )}
    </li>
  );
};

/** A version as it is read: one that was used never changes, so nothing here looks like a field. */
export const VersionSheet = ({ version }: { readonly version: Version }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const formats = useFormats();
  return (
    <>
      <Section title={t('lines')}>
        <Lines version={version} />
      </Section>
      <Section title={t('yield')}>
        <Gives version={version} />
      </Section>
      {version.expectedLosses.length > 0 && (
        <Section title={t('losses')}>
          <ul className="plain-list">
            {version.expectedLosses.map((loss, at) => (
              <li key={String(at)} className="row line">
                <strong>{loss.step}</strong> {word(loss.kind)}
                <span>{formats.percent(loss.percent)}</span>
              </li>
            ))}
          </ul>
        </Section>
      )}
      {version.steps.length > 0 && (
        <Section title={t('steps')}>
          <ol className="plain-list">
            {version.steps.map((step, at) => (
              <StepSheet key={String(at)} step={step} />
            ))}
          </ol>
        </Section>
      )}
    </>
  );
};
