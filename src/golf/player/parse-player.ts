import { Failure } from '#faults/failure.ts'
import { checkPlayerNumbers } from './check-player-numbers.ts'
import { pageName } from './first-name.ts'
import { CLUB_NUMBERS, type ClubFile, type PlayerFile, SHORT_GAME_NUMBERS } from './player-file.ts'
import {
  type Marks,
  type PlayerFault,
  playerShape,
  type WrittenClub,
  type WrittenPlayer,
} from './player-shape.ts'

/**
 * A player from the text of a `player/1` file. Numbers marked as guesses are left out, so that they are filled again
 * from what is known: a guess follows when a typed number changes. Of a minor's name only the first is read. Throws a Failure naming the field (`where` is
 * the file) for the first fault of the file, and says how many more there are.
 */
export function parsePlayer(text: string, where: string): PlayerFile {
  const shape = playerShape(jsonOf(text, where))
  if ('faults' in shape) fail(shape.faults, where)
  const file = withoutGuesses(shape.written)
  const faults = checkPlayerNumbers(file)
  if (faults.length > 0) fail(faults, where)
  const isPlaced = file.clubs.some((club) => club.carry_m !== undefined || club.total_m !== undefined)
  if (file.handicapIndex === undefined && file.said?.usual_score === undefined && !isPlaced) {
    const message =
      'The file needs a handicapIndex, or the carry_m of at least one club: nothing can be guessed from neither.'
    throw new Failure('MAR-PLAYER-003', message, where)
  }
  return file
}

function jsonOf(text: string, where: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-PLAYER-001', `The player file is not JSON: ${reason}.`, where)
  }
}

function withoutGuesses(written: WrittenPlayer): PlayerFile {
  const { handicapIndex, age, said, bag, sentences, learnedRounds } = written
  const keepsHandicap = handicapIndex !== undefined && written.guesses?.includes('handicapIndex') !== true
  return {
    name: pageName(written.name, age),
    hand: written.hand,
    ...(keepsHandicap ? { handicapIndex } : {}),
    sex: written.sex ?? 'unstated',
    ...(age === undefined ? {} : { age }),
    ...(said === undefined ? {} : { said }),
    ...(bag === undefined ? {} : { bag }),
    clubs: (written.clubs ?? []).map(clubWithoutGuesses),
    shortGame: shortGameWithoutGuesses(written.shortGame ?? {}),
    putting: {
      ...kept(written.putting ?? {}, ['direction_sd_deg', 'distance_sd_share']),
      ...countOf(written.putting),
    },
    ...(sentences === undefined ? {} : { sentences }),
    ...(learnedRounds === undefined ? {} : { learnedRounds }),
  }
}

function clubWithoutGuesses(club: WrittenClub): ClubFile {
  return { name: club.name, ...kept(club, CLUB_NUMBERS), shots: club.shots ?? 0, lies: club.lies ?? {} }
}

function shortGameWithoutGuesses(written: NonNullable<WrittenPlayer['shortGame']>): PlayerFile['shortGame'] {
  const ladder = written.roll_per_carry ?? {}
  const isKept = (club: string): boolean =>
    written.guess !== true && written.guesses?.includes(`roll_per_carry.${club}`) !== true
  const typed = Object.entries(ladder).filter(([club]) => isKept(club))
  return {
    ...kept(written, SHORT_GAME_NUMBERS),
    ...countOf(written),
    ...(typed.length === 0 ? {} : { roll_per_carry: Object.fromEntries(typed) }),
  }
}

/** How many shots of test days stand behind a part of the file. */
function countOf(part: { readonly shots?: number } | undefined): { readonly shots?: number } {
  return part?.shots === undefined ? {} : { shots: part.shots }
}

/** The numbers of an object that are there and not marked as guesses. */
function kept<Name extends string>(
  from: Readonly<Partial<Record<Name, number>>> & Marks,
  names: readonly Name[],
): Partial<Record<Name, number>> {
  const numbers: Partial<Record<Name, number>> = {}
  for (const name of names) {
    const value: number | undefined = from[name]
    if (value !== undefined && from.guess !== true && from.guesses?.includes(name) !== true)
      numbers[name] = value
  }
  return numbers
}

/** A misspelt field explains a missing one, so unknown fields are told first. */
function fail(faults: readonly PlayerFault[], where: string): never {
  const first = faults.find((fault) => fault.code === 'MAR-PLAYER-004') ?? faults[0]
  if (first === undefined) throw new RangeError('fail needs a fault')
  const more = faults.length - 1
  const rest =
    more === 0 ? '' : ` There ${more === 1 ? 'is 1 more fault' : `are ${more} more faults`} in the file.`
  throw new Failure(first.code, first.message + rest, first.field === '' ? where : `${where}: ${first.field}`)
}
