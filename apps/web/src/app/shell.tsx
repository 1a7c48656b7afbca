import { useQuery } from '@tanstack/react-query';
import { Link, Outlet, useNavigate } from '@tanstack/react-router';
import { lazy, Suspense, useEffect, useState, type ReactNode } from 'react';
import { read } from '../api/client';
import { ProblemError } from '../api/problem';
import { WrittenContext } from '../shared/formats/use-formats';
import { useMessages } from '../shared/language/catalogue';
import { i18n, speak } from '../shared/language/i18n';
import { ProblemNotice } from '../shared/kit/problem-notice';
import { openScansWith } from '../shared/scan/scan-desk';
import { ScanField } from '../shared/scan/scan-field';
import { useWedge } from '../shared/scan/use-scans';
import { ConnectionStrip } from './connection-strip';
import { useHearOfOthers } from './hear-of-others';
import { useKeptAtHand } from './keep-at-hand';
import { appMessages } from './messages';
import { SessionContext, type Session } from './session';
import './shell.css';
import { useWaiting } from './use-waiting';
import { WayOfGoods } from './way-of-goods';

const SwitchPerson = lazy(() => import('../features/access/switch-person'));

const Person = (props: { readonly session: Session; readonly open: boolean }) => {
  const t = useMessages(appMessages);
  const [switching, setSwitching] = useState(false);
  const other = i18n.language === 'fr' ? 'en' : 'fr';
  return (
    <div className={`shell-person ${props.open ? 'shell-nav-open' : ''}`}>
      <button type="button" className="link" lang={other} onClick={() => void speak(other)}>
        {t('language')}
      </button>
      <button type="button" className="link" onClick={() => setSwitching(true)}>
        {props.session.userName}
        <span className="unseen">: {t('switchPerson')}</span>
      </button>
      <Suspense fallback={null}>
        {switching && <SwitchPerson onClose={() => setSwitching(false)} />}
      </Suspense>
    </div>
  );
};

const Signed = ({ session }: { readonly session: Session }) => {
  const t = useMessages(appMessages);
  const navigate = useNavigate();
  const [open, setOpen] = useState(false);
  const waiting = useWaiting();
  useHearOfOthers();
  const workshop = useQuery({
    queryKey: ['/api/workshop', null],
    queryFn: () => read('/api/workshop'),
    staleTime: 60_000,
  });
  useWedge();
  useKeptAtHand();
  useEffect(() => {
    openScansWith((text) => void navigate({ to: '/found', search: { text } }));
  }, [navigate]);
  const { currency = 'EUR', timeZone = 'UTC', name = 'Ballotin' } = workshop.data ?? {};
  return (
    <SessionContext.Provider value={session}>
      <WrittenContext.Provider value={{ currency, timeZone }}>
        <a className="skip" href="#content">
          {t('skip')}
        </a>
        <div className="shell">
          <header className="shell-head">
            <div className="shell-top">
              <Link to="/" className="shell-name">
                {name}
              </Link>
              <button
                type="button"
                className="shell-menu"
                aria-expanded={open}
                onClick={() => setOpen(!open)}
              >
                {t('places')}
              </button>
              <ScanField id="scan" shortcut />
              <Person session={session} open={open} />
            </div>
            <ConnectionStrip userId={session.userId} />
            <div className={`shell-nav ${open ? 'shell-nav-open' : ''}`}>
              <WayOfGoods waiting={waiting} onGo={() => setOpen(false)} />
            </div>
          </header>
          <main id="content" tabIndex={-1}>
            <Outlet />
          </main>
        </div>
      </WrittenContext.Provider>
    </SessionContext.Provider>
  );
};

const SignedOut = lazy(() => import('../features/access/sign-in'));

/** Asks who is signed in; shows the workshop to them, and the door to everybody else. */
export const Shell = (): ReactNode => {
  const session = useQuery({
    queryKey: ['/api/session', null],
    queryFn: () => read('/api/session'),
    retry: (times, error) => !(error instanceof ProblemError) && times < 2,
    staleTime: 60_000,
  });
  if (session.data !== undefined && !(session.error instanceof ProblemError)) {
    return <Signed session={session.data} />;
  }
  if (session.error instanceof ProblemError && session.error.problem.status === 401) {
    return (
      <Suspense fallback={null}>
        <SignedOut />
      </Suspense>
    );
  }
  return session.isError ? (
    <ProblemNotice error={session.error} onRetry={() => void session.refetch()} />
  ) : null;
};
