import { Button } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { type ComponentType, useCallback, useEffect, useState } from 'react';
import { useMessages } from '../shared/language/catalogue';
import { Page } from '../shared/kit/page';
import { appMessages } from './messages';

export type LoadScreen = () => Promise<{ readonly default: ComponentType }>;

const TRY_EVERY_MS = 2_000;

const serviceAnswers = async (): Promise<boolean> => {
  try {
    // Not a GET, which the worker would answer from what it kept.
    return (await fetch('/api/health', { method: 'HEAD', cache: 'no-store' })).ok;
  } catch {
    return false;
  }
};

/** A screen whose code is not on this device: says so, and comes as soon as it can be fetched. */
const LateScreen = ({ load }: { readonly load: LoadScreen }) => {
  const t = useMessages(appMessages);
  const [Screen, setScreen] = useState<ComponentType>();
  const fetchAgain = useCallback(async (): Promise<boolean> => {
    try {
      const loaded = await load();
      setScreen(() => loaded.default);
      return true;
    } catch {
      return false;
    }
  }, [load]);
  useEffect(() => {
    // The network says that it is there a little before it carries anything.
    const timer = setInterval(() => {
      if (navigator.onLine && Screen === undefined) void fetchAgain();
    }, TRY_EVERY_MS);
    return () => clearInterval(timer);
  }, [fetchAgain, Screen]);
  if (Screen !== undefined) return <Screen />;
  // Some browsers remember that a script could not be fetched until the page is made anew.
  const tryAgain = async (): Promise<void> => {
    if (!(await fetchAgain()) && (await serviceAnswers())) location.reload();
  };
  return (
    <Page title={t('notHere')}>
      <p className="text">{t('notHereWhy')}</p>
      <div className="row">
        <Button onClick={() => void tryAgain()}>{t('tryAgain')}</Button>
        <Link to="/" className="button-link">
          {t('backToToday')}
        </Link>
      </div>
    </Page>
  );
};

/** Loads a screen; without a connection it loads one that says so instead. */
export const orLate =
  (load: LoadScreen): LoadScreen =>
  async () => {
    try {
      return await load();
    } catch (cause) {
      // The service is there but this script is not: the app was renewed, and is loaded anew.
      if (navigator.onLine && (await serviceAnswers())) throw cause;
      return { default: () => <LateScreen load={load} /> };
    }
  };
