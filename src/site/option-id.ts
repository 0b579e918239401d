/** Names of the ways in which a survey can be answered. @inline */
export type BaseOptionId = 'as-wanted' | 'with-limiter' | 'lower-setting' | 'larger-supply-fuse' | 'three-phase-supply';

/** The same, or one of them with the remedies that were applied: `as-wanted+main-bonding`. @inline */
export type OptionId = BaseOptionId | `${BaseOptionId}+${string}`;
