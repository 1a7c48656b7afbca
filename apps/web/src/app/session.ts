import { createContext, useContext } from 'react';
import type { components } from '../api/schema';

export type Session = components['schemas']['SessionView'];
export type Role = 'owner' | 'maker' | 'seller' | 'auditor';

export const SessionContext = createContext<Session | undefined>(undefined);

/** Who is signed in. Only screens inside the shell ask, and the shell shows them to nobody else. */
export const useSession = (): Session => {
  const session = useContext(SessionContext);
  if (session === undefined) throw new Error('asked who is signed in outside the shell');
  return session;
};

/** Whether the person may book what these roles book; the owner always may. */
export const useMay = (...roles: readonly Role[]): boolean => {
  const { role } = useSession();
  return role === 'owner' || roles.includes(role);
};
