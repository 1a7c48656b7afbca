import {
  Choice,
  Day,
  DecimalText,
  Flag,
  ListOf,
  Money,
  Text,
  Whole,
  Wholes,
} from '../../platform/dto';

const weekdays = { min: 1, max: 7, description: 'Monday = 1 … Sunday = 7' } as const;

export class DayMinutesDto {
  @Day()
  day: string;

  @Whole({ max: 100_000 })
  minutes: number;
}

export class SeasonDto {
  @Text({ max: 80 })
  name: string;

  @Day()
  fromDay: string;

  @Day()
  toDay: string;

  @DecimalText({ places: 4, description: '2 means twice an ordinary day' })
  factor: string;
}

/** How the workshop works, for planning. */
export class PlanningSettingsDto {
  @Whole({ min: 1, max: 120, description: 'Calendar days that a plan looks ahead' })
  horizonDays: number;

  @Wholes(weekdays)
  closedWeekdays: number[];

  @ListOf(() => DayMinutesDto, {
    max: 200,
    description: 'Days with other minutes of people than usual: 0 closes, more opens',
  })
  dayMinutes: DayMinutesDto[];

  @Whole({ max: 100_000, description: 'Minutes of all people on a working day' })
  peopleMinutesPerDay: number;

  @Whole({ max: 1440, description: 'Minutes a day that a melting tank can work; 0: not planned' })
  tankMinutesPerDay: number;

  @DecimalText({ places: 2, description: 'Minutes of the tank for one tray' })
  tankMinutesPerTray: string;

  @Whole({ min: 1, max: 30, description: 'Days a cast keeps its mould, the day itself included' })
  mouldDays: number;

  @Money({ nullable: true, description: 'What one more tray would cost' })
  mouldPrice: string | null;

  @Money({ nullable: true, description: 'What an hour beyond the usual costs' })
  extraHourPrice: string | null;

  @Whole({ min: 1, max: 720, description: 'Hours that a reservation holds' })
  reservationHours: number;

  @Wholes({ ...weekdays, description: 'Days on which the counter sells' })
  counterWeekdays: number[];

  @Whole({ max: 120, description: 'Days of counter sales to plan for; 0: orders only' })
  forecastDays: number;

  @ListOf(() => SeasonDto, { max: 60 })
  seasons: SeasonDto[];
}

export class PlanningSettingsView extends PlanningSettingsDto {
  @Whole({ description: 'Of the workshop: for If-Match' })
  version: number;
}

export class ForecastQuery {
  @Day({ optional: true })
  fromDay?: string;

  @Whole({ optional: true, fromQuery: true, min: 1, max: 120 })
  days?: number;
}

export class ForecastDayView {
  @Day()
  day: string;

  @DecimalText({ places: 2 })
  expected: string;

  @Text({ nullable: true })
  season: string | null;
}

export class ForecastView {
  @DecimalText({ places: 2, description: 'Of an ordinary open day' })
  level: string;

  @Whole()
  observedDays: number;

  @Flag({ description: 'Too little was seen: a guess' })
  thin: boolean;

  @ListOf(() => ForecastDayView)
  days: ForecastDayView[];

  @Choice(['ratio_to_mean'])
  method: string;
}
