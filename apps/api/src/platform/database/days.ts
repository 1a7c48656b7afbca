/** `date` columns come back as midnight UTC; the service speaks `YYYY-MM-DD`. */
export const dayFromDb = (value: Date): string => value.toISOString().slice(0, 10);

export const optionalDayFromDb = (value: Date | null): string | null =>
  value === null ? null : dayFromDb(value);

export const dayToDb = (day: string): Date => new Date(`${day}T00:00:00.000Z`);

export const optionalDayToDb = (day: string | null | undefined): Date | null =>
  day === null || day === undefined ? null : dayToDb(day);
