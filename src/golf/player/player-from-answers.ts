import type { Fault } from '#faults/fault.ts'
import { isMinor } from './first-name.ts'
import type { ClubFile, PlayerFile } from './player-file.ts'
import { type Answers, FIELDS, type Field, type FieldId, isAsked } from './player-questions.ts'
import { type AnswerFault, answerFault } from './questions/answer-fault.ts'
import { type KnownCarry, readCarries } from './questions/read-carries.ts'
import { readClubs } from './questions/read-clubs.ts'
import { readChoice, readName, readNumber } from './questions/read-words.ts'
import type { Said } from './said.ts'
import { MOST_CLUBS } from './settings.ts'

/** The player that answers make, or `null` and what is wrong with them: each fault's place is a field. */
export type AnsweredPlayer =
  | { readonly file: PlayerFile; readonly faults: readonly [] }
  | { readonly file: null; readonly faults: readonly Fault[] }

/**
 * A player file from the answers to the ten questions. Only facts and carries are typed into it (name, hand, age, sex,
 * index, clubs), the carries as said and not measured; what else was said stands in `said` and moves the guesses; the
 * rest is left to the prior.
 * `units` is that of lengths without a unit.
 */
export function playerFromAnswers(answers: Answers, units: 'yards' | 'metres'): AnsweredPlayer {
  const faults: Fault[] = []
  const fail = (id: FieldId, { code, message, advice }: AnswerFault): void => {
    faults.push({ severity: 'error', code, message, place: id, advice })
  }
  const take = <Value>(
    id: FieldId,
    read: (text: string, field: Field) => Value | AnswerFault,
  ): Value | undefined => {
    const field = FIELDS.find((one) => one.id === id)
    const text = (answers[id] ?? '').trim()
    if (field === undefined || !isAsked(field, answers)) return undefined
    if (text === '' && field.isNeeded !== true) return undefined
    const value =
      text === '' ? answerFault('MAR-ANSWER-001', 'This cannot be left open.', field.help) : read(text, field)
    if (!isFault(value)) return value
    fail(id, value)
    return undefined
  }

  const age = take('age', readNumber)
  const name = take('name', (text) => readName(text, isMinor(age)))
  const sex = take('sex', readChoice)
  const hand = take('hand', readChoice)
  const handicapIndex = take('handicapIndex', readNumber)
  const usualScore = take('usualScore', readNumber)
  const bag = take('bag', readClubs) ?? []
  const carries = take('carries', (text) => readCarries(text, units)) ?? []
  const shape = take('shape', readChoice)
  const bigMiss = take('bigMiss', readChoice)
  const shares = (['mishits', 'upAndDown', 'halfHoled'] as const).map((id) => take(id, readChoice))
  const names = [...bag, ...carries.map((carry) => carry.name).filter((one) => !bag.includes(one))]

  const isLevelRead = !faults.some(({ place }) => LEVEL_FIELDS.has(place))
  if (isLevelRead && (handicapIndex ?? usualScore ?? carries[0]) === undefined)
    fail(
      'carries',
      answerFault(
        'MAR-ANSWER-009',
        'Nothing says yet how good the player is.',
        'Give one of these: handicap index, usual score, one carry.',
      ),
    )
  if (names.length > MOST_CLUBS && bag.length <= MOST_CLUBS) {
    const message = `With the clubs whose carries are known these are ${names.length}; with the putter a bag holds ${MOST_CLUBS + 1} (Rule 4.1b).`
    fail('carries', answerFault('MAR-ANSWER-006', message, 'Leave some out.'))
  }
  if (faults.length > 0) return { file: null, faults }

  const [mishits, upAndDown, halfHoled] = shares
  const said = withoutBlanks({
    carries: carries.length === 0 ? undefined : carries.map((carry) => carry.name),
    usual_score: usualScore,
    shape,
    big_miss: bigMiss,
    mishit_share: numberOf(mishits),
    up_and_down_share: numberOf(upAndDown),
    half_holed_m: numberOf(halfHoled),
  }) as Said
  return {
    file: {
      name: name ?? '',
      hand: hand === 'left' ? 'left' : 'right',
      ...withoutBlanks({ handicapIndex }),
      sex: sex === 'male' || sex === 'female' ? sex : 'unstated',
      ...withoutBlanks({ age }),
      ...(Object.keys(said).length === 0 ? {} : { said }),
      bag: bag.length === 0 ? 'fill' : 'as-listed',
      clubs: names.map((one) => clubFile(one, carries)),
      shortGame: {},
      putting: {},
    },
    faults: [],
  }
}

/** One of these says how good the player is. */
const LEVEL_FIELDS: ReadonlySet<string> = new Set<FieldId>(['handicapIndex', 'usualScore', 'carries'])

/** What is wrong with the answer to one field, in view of the others; `null` when it can stand. */
export function faultOf(id: FieldId, answers: Answers, units: 'yards' | 'metres'): Fault | null {
  return playerFromAnswers(answers, units).faults.find(({ place }) => place === id) ?? null
}

function clubFile(name: string, carries: readonly KnownCarry[]): ClubFile {
  const known = carries.find((carry) => carry.name === name)
  const carry = known === undefined ? {} : { carry_m: Math.round(known.metres * 10) / 10 }
  return { name, ...carry, shots: 0, lies: {} }
}

function numberOf(text: string | undefined): number | undefined {
  return text === undefined ? undefined : Number(text)
}

/** The fields that have a value. */
function withoutBlanks<Fields extends object>(
  fields: Fields,
): { [Name in keyof Fields]?: NonNullable<Fields[Name]> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as ReturnType<
    typeof withoutBlanks<Fields>
  >
}

function isFault(value: unknown): value is AnswerFault {
  return typeof value === 'object' && value !== null && 'code' in value
}
