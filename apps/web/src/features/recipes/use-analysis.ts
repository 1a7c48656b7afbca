import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { api, must } from '../../api/client';
import { bodyOf, isAnalysable } from './version-body';
import type { VersionForm } from './version-form';

const PAUSE_MS = 250;

const useSettled = <T>(value: T): T => {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  return settled;
};

/** The analysis of what is being written, once the fingers rest. */
export const useAnalysis = (itemId: string, form: VersionForm) => {
  const settled = useSettled(form);
  const recipe = bodyOf(settled);
  return useQuery({
    queryKey: ['/api/recipes/analysis', itemId, recipe],
    queryFn: ({ signal }) =>
      must(api.POST('/api/recipes/analysis', { body: { itemId, recipe }, signal })),
    enabled: isAnalysable(settled),
    placeholderData: keepPreviousData,
    staleTime: 60_000,
    retry: false,
  });
};
