export { recallSizes, type RecallSize, type SentOut, type StillHere } from './recall-size';
export { splitProposal, type BoxRun, type SlotSupply, type SplitRefusal } from './split-proposal';
