import { lazy, Suspense } from 'react';
import type { components } from '../../api/schema';
import { useFormats } from '../../shared/formats/use-formats';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Caution, Fact, Facts, State } from '../../shared/kit/page';
import { Why } from '../../shared/kit/why';
import { AnalysisTables } from './analysis-tables';
import { recipeMessages } from './messages';
import { useAllergenName } from '../../shared/language/allergen-names';
import { usePartName } from '../../shared/language/part-names';

const MakeUpBar = lazy(async () => ({
  default: (await import('../../shared/pictures/make-up-bar')).MakeUpBar,
}));
const WaterScale = lazy(async () => ({
  default: (await import('../../shared/pictures/water-scale')).WaterScale,
}));

export type AnalysisView = components['schemas']['AnalysisView'];

const Water = ({ analysis }: { readonly analysis: AnalysisView }) => {
  const t = useMessages(recipeMessages);
  const { waterActivity: water } = analysis;
  if (water.value === null) {
    return (
      <p>
        <State tone="caution">{t('waterNone')}</State> {water.reason}
      </p>
    );
  }
  const limits = [...new Map(water.mayGrow.map((row) => [row.organism, row])).values()];
  return (
    <WaterScale
      title={t('water')}
      value={water.value}
      error={water.error ?? '0'}
      measured={water.status === 'measured'}
      limits={limits.map((row) => ({
        key: row.organism,
        name: row.organism,
        from: row.leastWaterActivity,
      }))}
    />
  );
};

const Life = ({ analysis }: { readonly analysis: AnalysisView }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const formats = useFormats();
  const { shelfLife: life } = analysis;
  return (
    <Why
      what={
        <>
          {formats.label(t('life'))}{' '}
          <strong>
            {life.days === null ? t('lifeUnstated') : t('lifeStated', { days: life.days })}
          </strong>
          {life.basis !== null && ` (${word(life.basis)})`}
          {life.suggestedDays !== null && ` · ${t('suggestion', { days: life.suggestedDays })}`}
        </>
      }
    >
      <ul>
        {life.limits.map((limit) => (
          <li key={limit.kind + limit.reason}>
            {limit.capDays !== null && <strong>≤ {limit.capDays} </strong>}
            {limit.reason} {limit.rules && <State tone="caution">{t('rules')}</State>}{' '}
            <span className="quiet">{limit.source}</span>
          </li>
        ))}
      </ul>
    </Why>
  );
};

const Allergens = ({ analysis }: { readonly analysis: AnalysisView }) => {
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const allergenName = useAllergenName();
  if (analysis.allergens.length === 0) return <p>{t('noAllergens')}</p>;
  return (
    <ul className="plain-list">
      {analysis.allergens.map((row) => (
        <li key={row.allergen + row.presence}>
          <State
            tone={
              row.presence === 'contains'
                ? 'plain'
                : row.presence === 'unknown'
                  ? 'warn'
                  : 'caution'
            }
          >
            {word(row.presence)}
          </State>{' '}
          <strong>{allergenName(row.allergen)}</strong>{' '}
          <span className="quiet">{t('fromItems', { items: row.from.join(', ') })}</span>
        </li>
      ))}
    </ul>
  );
};

/** Everything that is computed from a recipe while it is written. */
export const Analysis = ({ analysis }: { readonly analysis: AnalysisView }) => {
  const t = useMessages(recipeMessages);
  const formats = useFormats();
  const partName = usePartName();
  const { composition, cost } = analysis;
  return (
    <div className="stack">
      <Facts>
        <Fact name={t('massIn')}>{formats.mass(composition.inputGrams)}</Fact>
        <Fact name={t('massOut')}>{formats.mass(composition.outputGrams)}</Fact>
        <Fact name={t('cost')}>
          {cost.costPerUnit === null ? (
            <span className="quiet">{cost.missing}</span>
          ) : (
            `${formats.cost(cost.costPerUnit)} ${cost.per === 'kg' ? t('perKg') : t('perPc')}`
          )}
        </Fact>
      </Facts>
      <div>
        {analysis.cautions.map((caution) => (
          <Caution key={caution.code + caution.text}>{caution.text}</Caution>
        ))}
      </div>
      <Suspense fallback={null}>
        <MakeUpBar
          title={t('makeUp')}
          csvName="make-up"
          parts={composition.parts.map((part) => ({
            key: part.name,
            name: partName(part.name),
            percent: part.gramsPer100g,
          }))}
        />
        <Water analysis={analysis} />
      </Suspense>
      <Life analysis={analysis} />
      <h3>{t('allergens')}</h3>
      <Allergens analysis={analysis} />
      <AnalysisTables analysis={analysis} />
    </div>
  );
};
