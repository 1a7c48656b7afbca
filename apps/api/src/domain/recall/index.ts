export {
  COUNTER,
  changeSinceFrozen,
  effectiveness,
  type Effectiveness,
  type FrozenScope,
  type Recovered,
  type ScopeChange,
  type ScopeLot,
} from './recall-scope';
