/** A copy of the record that lacks the named fields. */
export const without = <T extends object, K extends keyof T>(
  record: T,
  ...names: readonly K[]
): Omit<T, K> =>
  Object.fromEntries(
    Object.entries(record).filter(([name]) => !names.includes(name as K)),
  ) as unknown as Omit<T, K>;
