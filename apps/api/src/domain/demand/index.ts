export {
  forecastCounter,
  observedSeasonFactor,
  type CounterSale,
  type Forecast,
  type ForecastBasis,
  type ForecastDay,
  type Season,
} from './forecast';
