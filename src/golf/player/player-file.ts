import type { OwnSentence } from './own-sentence.ts'
import type { ClubLies, LieFactors } from './player.ts'
import type { Said } from './said.ts'

/** `player/1` as written: only what the person typed or what was learned; every other number is absent. */
export interface PlayerFile {
  readonly name: string
  readonly hand: 'right' | 'left'
  readonly handicapIndex?: number
  readonly sex: 'male' | 'female' | 'unstated'
  /** Years; matters under 18 while no carry is known. */
  readonly age?: number
  /** What was said and not measured: it moves the guesses. */
  readonly said?: Said
  /** `as-listed`: the clubs are the whole bag. `fill`: complete it. Absent: filled when fewer than eight are listed. */
  readonly bag?: 'as-listed' | 'fill'
  readonly clubs: readonly ClubFile[]
  readonly shortGame: ShortGameFile
  readonly putting: PuttingFile
  /** Sentences of cards that a person wrote. */
  readonly sentences?: readonly OwnSentence[]
  /** Rounds that were learned from, by what tells them apart: none counts twice. */
  readonly learnedRounds?: readonly string[]
}

/** One club of the file: SI metres, degrees, shares. */
export interface ClubFile {
  readonly name: string
  readonly carry_m?: number
  readonly total_m?: number
  readonly direction_sd_deg?: number
  readonly left_share?: number
  readonly right_share?: number
  readonly curve_share?: number
  readonly carry_sd_share?: number
  readonly mishit_share?: number
  readonly mishit_carry_share?: number
  readonly mishit_carry_sd_share?: number
  readonly shots: number
  readonly lies: ClubLies
}

/** The numbers of a club that the prior can fill, by their names in the file. */
export const CLUB_NUMBERS = [
  'carry_m',
  'total_m',
  'direction_sd_deg',
  'left_share',
  'right_share',
  'curve_share',
  'carry_sd_share',
  'mishit_share',
  'mishit_carry_share',
  'mishit_carry_sd_share',
] as const
export type ClubNumber = (typeof CLUB_NUMBERS)[number]

/** What a player's own factors of a lie may be, least and most: beyond them it is a slip of the pen (our assumption). */
export const LIE_FACTOR_RANGES: readonly (readonly [
  factor: Exclude<keyof LieFactors, 'shots'>,
  least: number,
  most: number,
])[] = [
  ['carry', 0.1, 1.2],
  ['direction', 0.5, 5],
  ['distance', 0.5, 5],
  ['mishit', 0, 10],
]

/** The single numbers of the short game that the prior can fill, by their names in the file. */
export const SHORT_GAME_NUMBERS = [
  'strokes_lost',
  'carry_sd_share',
  'direction_sd_deg',
  'poor_share',
] as const
export type ShortGameNumber = (typeof SHORT_GAME_NUMBERS)[number]

interface ShortGameFile extends Partial<Readonly<Record<ShortGameNumber, number>>> {
  /** Roll per carry of a chip by club. */
  readonly roll_per_carry?: Readonly<Record<string, number>>
  /** Short shots of test days that `strokes_lost` was learned from. */
  readonly shots?: number
}

interface PuttingFile {
  readonly direction_sd_deg?: number
  readonly distance_sd_share?: number
  /** Putts of test days that both were learned from. */
  readonly shots?: number
}
