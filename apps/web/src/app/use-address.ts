import { useParams, useSearch } from '@tanstack/react-router';

/** A part of the address that the route always has. */
export const useParam = (name: string): string => {
  const params: Readonly<Record<string, string | undefined>> = useParams({ strict: false });
  return params[name] ?? '';
};

/** A search parameter, or nothing. */
export const useSearchText = (name: string): string | undefined => {
  const search: Readonly<Record<string, string | undefined>> = useSearch({ strict: false });
  return search[name];
};
