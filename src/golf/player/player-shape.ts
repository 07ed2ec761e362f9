import * as z from 'zod/mini'
import type { FaultCode } from '#faults/codes.ts'
import { nearestWord } from '#faults/nearest-word.ts'
import { SENTENCE_PARTS, SENTENCE_READERS } from './own-sentence.ts'
import { CLUB_NUMBERS, type ClubFile, type PlayerFile, SHORT_GAME_NUMBERS } from './player-file.ts'
import { BIG_MISSES, SHAPES } from './said.ts'

/** A `player/1` document as it stands, before what is marked as a guess is taken out. */
export type WrittenPlayer = Omit<PlayerFile, 'clubs' | 'shortGame' | 'putting' | 'sex'> & {
  readonly sex?: PlayerFile['sex']
  readonly clubs?: readonly WrittenClub[]
  readonly shortGame?: PlayerFile['shortGame'] & Marks
  readonly putting?: PlayerFile['putting'] & Marks
  readonly guesses?: readonly string[]
}
export type WrittenClub = Omit<ClubFile, 'shots' | 'lies'> & {
  readonly shots?: number
  readonly lies?: ClubFile['lies']
} & Marks

/** `guess: true` marks every number beside it as the prior's; `guesses` names some of them. */
export interface Marks {
  readonly guess?: boolean
  readonly guesses?: readonly string[]
}

/** One thing wrong with a player file. */
export interface PlayerFault {
  readonly code: FaultCode
  readonly message: string
  /** The field: `clubs[3].carry_m`; empty for the whole file. */
  readonly field: string
}

/** The document with its field names and kinds checked, or what is wrong with it; what numbers may be is checked elsewhere. */
export function playerShape(
  json: unknown,
): { readonly written: WrittenPlayer } | { readonly faults: readonly PlayerFault[] } {
  const result = playerSchema.safeParse(json, { reportInput: true })
  // The cast only tells the compiler that an optional field is absent, never undefined: JSON has no undefined.
  if (result.success) return { written: result.data as WrittenPlayer }
  return { faults: result.error.issues.flatMap(faultsOfIssue) }
}

/** The field's name as a person would point at it: `clubs[3].carry_m`. */
export function fieldName(path: readonly PropertyKey[]): string {
  return path.reduce<string>(
    (name, step) =>
      typeof step === 'number' ? `${name}[${step}]` : name === '' ? String(step) : `${name}.${String(step)}`,
    '',
  )
}

const number = z.optional(z.number())
const marks = { guess: z.optional(z.boolean()) }
const lieShape = { carry: number, direction: number, distance: number, mishit: number, shots: number }
const clubShape = {
  name: z.string(),
  carry_m: number,
  total_m: number,
  direction_sd_deg: number,
  left_share: number,
  right_share: number,
  curve_share: number,
  carry_sd_share: number,
  mishit_share: number,
  mishit_carry_share: number,
  mishit_carry_sd_share: number,
  shots: number,
  lies: z.optional(z.record(z.string(), z.union([z.boolean(), z.strictObject(lieShape)]))),
  ...marks,
  guesses: z.optional(z.array(z.enum(CLUB_NUMBERS))),
}
const shortGameShape = {
  strokes_lost: number,
  carry_sd_share: number,
  direction_sd_deg: number,
  poor_share: number,
  roll_per_carry: z.optional(z.record(z.string(), z.number())),
  shots: number,
  ...marks,
  guesses: z.optional(
    z.array(z.union([z.enum(SHORT_GAME_NUMBERS), z.templateLiteral(['roll_per_carry.', z.string()])])),
  ),
}
const puttingShape = {
  direction_sd_deg: number,
  distance_sd_share: number,
  shots: number,
  ...marks,
  guesses: z.optional(z.array(z.enum(['direction_sd_deg', 'distance_sd_share']))),
}
const saidShape = {
  carries: z.optional(z.array(z.string())),
  usual_score: number,
  shape: z.optional(z.enum(SHAPES)),
  big_miss: z.optional(z.enum(BIG_MISSES)),
  mishit_share: number,
  up_and_down_share: number,
  half_holed_m: number,
}
const sentenceShape = {
  course: z.string(),
  hole: z.string(),
  reader: z.enum(SENTENCE_READERS),
  part: z.enum(SENTENCE_PARTS),
  club: z.optional(z.string()),
  words: z.string(),
  under: z.string(),
  units: z.enum(['yards', 'metres']),
}
const playerFields = {
  schema: z.literal('player/1'),
  name: z.string().check(z.regex(/\S/)),
  hand: z.enum(['right', 'left']),
  handicapIndex: number,
  sex: z.optional(z.enum(['male', 'female', 'unstated'])),
  age: number,
  said: z.optional(z.strictObject(saidShape)),
  bag: z.optional(z.enum(['as-listed', 'fill'])),
  clubs: z.optional(z.array(z.strictObject(clubShape))),
  shortGame: z.optional(z.strictObject(shortGameShape)),
  putting: z.optional(z.strictObject(puttingShape)),
  sentences: z.optional(z.array(z.strictObject(sentenceShape))),
  learnedRounds: z.optional(z.array(z.string())),
  guesses: z.optional(z.array(z.enum(['handicapIndex']))),
}
const playerSchema = z.strictObject(playerFields)

function faultsOfIssue(issue: z.core.$ZodIssue): readonly PlayerFault[] {
  const field = fieldName(issue.path)
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownField(issue.path, key))
  if (field === 'schema') {
    return [{ code: 'MAR-PLAYER-002', message: 'The file must say "schema": "player/1".', field }]
  }
  if (issue.input === undefined && field !== '') {
    return [{ code: 'MAR-PLAYER-003', message: `${field} is missing.`, field }]
  }
  if (issue.code === 'invalid_union') {
    // A lie: either true or false, or factors; what is written in braces is told of as factors.
    const asFactors =
      typeof issue.input === 'object' && issue.input !== null ? issue.errors.at(-1) : undefined
    const inside = (asFactors ?? []).flatMap((inner) =>
      faultsOfIssue({ ...inner, path: [...issue.path, ...inner.path] } as z.core.$ZodIssue),
    )
    const message = `${field} must be true or false, or the player's own factors in braces.`
    return inside.length > 0 ? inside : [{ code: 'MAR-PLAYER-005', message, field }]
  }
  const wanted = wantedBy(issue)
  return [
    { code: 'MAR-PLAYER-005', message: `${field === '' ? 'The file' : field} must be ${wanted}.`, field },
  ]
}

function unknownField(path: readonly PropertyKey[], key: string): PlayerFault {
  const known =
    path[0] === 'clubs'
      ? path[2] === 'lies'
        ? lieShape
        : clubShape
      : path[0] === 'putting'
        ? puttingShape
        : path[0] === 'shortGame'
          ? shortGameShape
          : path[0] === 'said'
            ? saidShape
            : path[0] === 'sentences'
              ? sentenceShape
              : playerFields
  const meant = nearestWord(key, Object.keys(known))
  const hint = meant === null ? `Known here: ${Object.keys(known).join(', ')}.` : `Did you mean ${meant}?`
  const field = fieldName([...path, key])
  return { code: 'MAR-PLAYER-004', message: `${field} is not a field of player/1. ${hint}`, field }
}

const WANTED_KINDS: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'text in quotes',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object in braces',
  record: 'an object in braces',
}

function wantedBy(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_type') return WANTED_KINDS[issue.expected] ?? issue.expected
  if (issue.code === 'invalid_value')
    return `one of ${issue.values.map((value) => `"${String(value)}"`).join(', ')}`
  return 'text that is not empty'
}
