import { Button } from '@mantine/core';
import { fieldErrors, ProblemError } from '../../api/problem';
import type { components } from '../../api/schema';
import { useBooking } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useMessages } from '../../shared/language/catalogue';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { Section } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { Findings } from './findings';
import { wishesOf, type LabelForm, type Taken } from './label-wishes';
import { labelMessages } from './messages';
import { PrintFields } from './print-form';

type View = components['schemas']['DeclarationView'];

interface Props {
  readonly declaration: View;
  readonly form: LabelForm;
  readonly onForm: (form: LabelForm) => void;
  readonly taken: readonly Taken[];
  readonly onTake: (decision: Taken) => void;
}

/** What was checked, what is wanted, and the button that puts it on record. */
export const Printing = ({ declaration, form, onForm, taken, onTake }: Props) => {
  const t = useMessages(labelMessages);
  const book = useBooking();
  const mayPrint = useMay('maker', 'seller');
  const { working, id, error, run, cancel } = useStoppable('goes-on');
  const code = declaration.lotCode;
  const print = () =>
    run((watched) =>
      book(
        {
          path: '/api/lots/{code}/label-runs',
          at: { code },
          body: wishesOf(form, taken),
          label: t('bookLabel', { code }),
          lane: `label-${code}`,
        },
        watched,
      ),
    );
  const errors = error instanceof ProblemError ? fieldErrors(error.problem) : {};
  const spoken = declaration.lists.map(({ language }) => language);
  return (
    <>
      <Section title={t('findings')}>
        <Findings findings={declaration.findings} taken={taken} onTake={onTake} />
      </Section>
      <Section title={t('print')}>
        <div className="stack">
          <PrintFields value={form} errors={errors} spoken={spoken} onChange={onForm} />
          <ProblemNotice error={error} />
          {working && <Working label={t('printing')} id={id} onCancel={cancel} />}
          {mayPrint && !working && (
            <div className="row">
              <Button size="lg" disabled={Number(form.copies) < 1} onClick={() => void print()}>
                {t('print')}
              </Button>
            </div>
          )}
        </div>
      </Section>
    </>
  );
};
