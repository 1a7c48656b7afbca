import { useState } from 'react';
import { useRead } from '../../api/use-api';
import { useMay } from '../../app/session';
import { useParam } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { useServiceWords } from '../../shared/language/words';
import { Loaded } from '../../shared/kit/loaded';
import { useStoppable, Working } from '../../shared/kit/long-work';
import { Caution, Page, Section, State } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { ReasonDialog } from '../../shared/kit/reason-dialog';
import { Changes, StillHere } from './changes-and-stock';
import { recallMessages } from './messages';
import { RecallRecord } from './recall-record';
import { RecallSteps } from './recall-steps';
import { ScopeCustomers, ScopeLots, ScopeSales } from './scope-tables';
import { type Recall, useRecallStep } from './use-recall-step';

const Case = ({ recall }: { readonly recall: Recall }) => {
  const t = useMessages(recallMessages);
  const step = useRecallStep(recall);
  const mayAct = useMay('maker', 'seller') && recall.state !== 'closed';
  const [out, setOut] = useState<ReadonlyMap<string, string>>(new Map());
  const [taking, setTaking] = useState<string>();
  const { working, id, error, run, cancel } = useStoppable('goes-on');
  const tell = (customer: Recall['customers'][number]) =>
    void run((watched) =>
      step(
        '/api/recalls/{code}/notes',
        { kind: 'customer_told', customerId: customer.id },
        t('toldLabel', { name: customer.name }),
        watched,
      ),
    );
  return (
    <>
      <Caution>{recall.caution}</Caution>
      <div className="halves">
        <Section title={t('steps')}>
          <RecallSteps recall={recall} excluded={out} mayAct={mayAct} />
        </Section>
        <div>
          <Changes recall={recall} />
          <RecallRecord recall={recall} />
        </div>
      </div>
      {working && <Working label={t('throughScope')} id={id} onCancel={cancel} />}
      <ProblemNotice error={error} />
      <ScopeCustomers recall={recall} onTold={mayAct && !working ? tell : undefined} />
      <StillHere recall={recall} />
      <ScopeLots
        recall={recall}
        out={out}
        onTakeOut={mayAct && recall.state === 'open' ? (lot) => setTaking(lot.code) : undefined}
      />
      <ScopeSales recall={recall} />
      {taking !== undefined && (
        <ReasonDialog
          title={t('takeOutWhy', { lot: taking })}
          confirm={t('takeOut')}
          onClose={() => setTaking(undefined)}
          onReason={(reason) => {
            setOut(new Map(out).set(taking, reason));
            return Promise.resolve();
          }}
        />
      )}
    </>
  );
};

const RecallPage = () => {
  const code = useParam('code');
  const t = useMessages(recallMessages);
  const word = useServiceWords();
  const recall = useRead('/api/recalls/{code}', { params: { path: { code } } });
  return (
    <Loaded query={recall}>
      {(data) => (
        <Page
          title={`${t('number')} ${data.code}`}
          lead={
            <span className="row">
              <State tone={data.mode === 'real' ? 'warn' : 'plain'}>{t(data.mode)}</State>
              <State>{word(data.state)}</State> {data.reason} · {data.because.join('; ')}
            </span>
          }
        >
          <Case recall={data} />
        </Page>
      )}
    </Loaded>
  );
};

export default RecallPage;
