import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { InfusionPlan } from '../../shared/infusions/infusion-plan';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { ChoiceField } from '../../shared/kit/fields';
import { Loaded } from '../../shared/kit/loaded';
import { Page, State } from '../../shared/kit/page';
import { ItemDialog } from '../../shared/items/item-dialog';
import { TraceLink } from '../../shared/starts/trace-link';
import { CompareVersions } from './compare-versions';
import { recipeMessages } from './messages';
import { RecipeEditor } from './recipe-editor';
import { ScaleRecipe } from './scale-recipe';
import { startPage } from '../../shared/batches/place-of-batch';

/** The recipe of an item, version by version. */
const RecipePage = () => {
  const id = useParam('id');
  const t = useMessages(recipeMessages);
  const word = useServiceWords();
  const mayWrite = useMay('maker');
  const item = useRead('/api/items/{id}', { params: { path: { id } } });
  const versions = useRead('/api/items/{itemId}/recipes', { params: { path: { itemId: id } } });
  const [chosen, setChosen] = useState<string>();
  const [asNew, setAsNew] = useState(false);
  const [facts, setFacts] = useState(false);
  const all = [...(versions.data ?? [])].sort((a, b) => b.number - a.number);
  const version = all.find((one) => one.id === chosen) ?? all[0];
  return (
    <Loaded query={item}>
      {(data) => (
        <Page
          title={data.name}
          lead={
            <span className="row">
              {word(data.kind)}
              {version?.frozen === true && !asNew && <State>{t('frozen')}</State>}
            </span>
          }
          actions={
            <>
              {mayWrite && (
                <Button variant="default" onClick={() => setFacts(true)}>
                  {t('weight')}
                </Button>
              )}
              {mayWrite && version !== undefined && !asNew && (
                <Button variant="default" onClick={() => setAsNew(true)}>
                  {t('fromThis')}
                </Button>
              )}
              {version?.frozen === true && !asNew && (
                <TraceLink kind="recipe-version" id={version.id} />
              )}
              {mayWrite && version !== undefined && (
                <Link
                  to={startPage(data.kind)}
                  search={{ kind: data.kind, item: data.id }}
                  className="button-link button-link-main"
                >
                  {t('start')}
                </Link>
              )}
            </>
          }
        >
          {all.length > 0 && !asNew && (
            <div className="narrow section">
              <ChoiceField
                label={t('whichVersion')}
                value={version?.id ?? ''}
                onChange={setChosen}
                choices={all.map((one) => ({
                  value: one.id,
                  label: t('version', { number: one.number }),
                }))}
              />
            </div>
          )}
          <Loaded query={versions}>
            {() => (
              <RecipeEditor
                key={`${version?.id ?? 'first'}-${String(version?.version ?? 0)}-${String(asNew)}`}
                item={data}
                version={version}
                asNew={asNew}
                mayWrite={mayWrite}
                onSaved={(saved) => {
                  setAsNew(false);
                  setChosen(saved.id);
                }}
              />
            )}
          </Loaded>
          {version !== undefined && !asNew && (
            <>
              <ScaleRecipe
                key={`scale-${version.id}`}
                versionId={version.id}
                itemKind={data.kind}
              />
              <InfusionPlan key={`infusion-${version.id}`} lines={version.lines} />
              <CompareVersions key={`compare-${version.id}`} version={version} versions={all} />
            </>
          )}
          {facts && <ItemDialog item={data} kinds={[data.kind]} onClose={() => setFacts(false)} />}
        </Page>
      )}
    </Loaded>
  );
};

export default RecipePage;
