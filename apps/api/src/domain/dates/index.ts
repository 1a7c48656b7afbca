export {
  dateMark,
  lotMark,
  lotMarkRequired,
  machineDayOf,
  promisedDay,
  shortestForm,
  type DateAsk,
  type DateForm,
} from './date-mark';
