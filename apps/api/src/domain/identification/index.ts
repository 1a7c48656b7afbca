export type { IdentificationRefusal } from './refusals';
export {
  checkDigit,
  isGln,
  isGtin,
  isSscc,
  toEan13,
  toGtin14,
  withCheckDigit,
} from './check-digits';
export { fitsLotElement, LONGEST_LOT_CODE } from './character-sets';
export { applicationIdentifier, needsSeparator } from './application-identifiers';
export { checkElement, checkTogether, type Element } from './element';
export {
  GROUP_SEPARATOR,
  readBracketed,
  readElements,
  readMessage,
  writeElements,
  type ElementString,
} from './element-strings';
export { fullYear, readGs1Date, writeGs1Date } from './gs1-dates';
export { GS1_STEM, readDigitalLink, writeDigitalLink } from './digital-link';
export { readGs1Facts, type Gs1Facts } from './gs1-facts';
export {
  checkTillTemplate,
  DEFAULT_TILL_TEMPLATE,
  isRestrictedNumber,
  isWorldwideGtin,
  priceVerifier,
  readTillNumber,
  writeTillNumber,
  type TillNumber,
} from './till-numbers';
export { checkCharacter } from './mod-37-36';
export {
  asTypedCode,
  checkCodePattern,
  codeStem,
  DEFAULT_LOT_PATTERN,
  isCodeOf,
  nextCode,
  sequenceOf,
  thingPattern,
  THING_PREFIXES,
  type NumberedCode,
  type Thing,
} from './code-patterns';
export { recogniseScan, type Recognised, type ScanContext } from './scan';
