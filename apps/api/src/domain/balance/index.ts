export {
  balanceAhead,
  type BatchAccount,
  type LotAccount,
  type ReachBalance,
} from './balance-ahead';
export {
  massBalance,
  type BalanceLine,
  type EndKind,
  type MassBalance,
  type Portion,
  type SourceKind,
} from './mass-balance';
