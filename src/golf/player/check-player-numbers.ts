import { nearestWord } from '#faults/nearest-word.ts'
import { CLUB_KINDS, clubKind } from './club-names.ts'
import { LIE_NAMES, seenLie } from './lie-names.ts'
import { sentenceFaults } from './own-sentence.ts'
import { parseClubName } from './parse-club-name.ts'
import { type ClubFile, LIE_FACTOR_RANGES, type PlayerFile, type ShortGameNumber } from './player-file.ts'
import { fieldName, type PlayerFault } from './player-shape.ts'
import { SAID_RANGES } from './said.ts'
import { AGE_RANGE, MOST_CARRY_METRES, MOST_CLUBS, TYPED_HANDICAP_RANGE } from './settings.ts'
import { MOST_POOR_SHARE, ROLL_PER_CARRY_RANGE } from './short-game-settings.ts'

const MOST_SHOTS = 1_000_000

/** What each number may be: least, most and the words for it. Bounds are our assumption: beyond them it is a slip of the pen. */
const CLUB_RANGES: readonly (readonly [field: keyof ClubFile, least: number, most: number])[] = [
  ['direction_sd_deg', 0.05, 45],
  ['left_share', 0.05, 5],
  ['right_share', 0.05, 5],
  ['curve_share', -0.5, 0.5],
  ['carry_sd_share', 0.001, 0.6],
  ['mishit_share', 0, 0.9],
  ['mishit_carry_share', 0.05, 1],
  ['mishit_carry_sd_share', 0, 0.6],
  ['shots', 0, MOST_SHOTS],
]
const SHOTS_RANGE = ['shots', 0, MOST_SHOTS] as const
const SHORT_GAME_RANGES: readonly (readonly [number: ShortGameNumber, least: number, most: number])[] = [
  ['strokes_lost', -0.5, 4],
  ['carry_sd_share', 0.005, 0.6],
  ['direction_sd_deg', 0.05, 30],
  ['poor_share', 0, MOST_POOR_SHARE],
]

/** Every number, club and lie of the file that cannot be: in the order of the file. */
export function checkPlayerNumbers(file: PlayerFile): readonly PlayerFault[] {
  const faults: PlayerFault[] = []
  const { handicapIndex } = file
  const [least, most] = TYPED_HANDICAP_RANGE
  if (handicapIndex !== undefined && !(handicapIndex >= least && handicapIndex <= most)) {
    faults.push({
      code: 'MAR-PLAYER-013',
      message: `handicapIndex must be from ${least} (a plus player is negative) to ${most}, not ${handicapIndex}.`,
      field: 'handicapIndex',
    })
  }
  range(faults, 'age', file.age, ...AGE_RANGE)
  for (const number of Object.keys(SAID_RANGES) as (keyof typeof SAID_RANGES)[])
    range(faults, `said.${number}`, file.said?.[number], ...SAID_RANGES[number])
  const clubs = file.clubs
  clubs.forEach((club, index) => {
    faults.push(...clubFaults(club, index, clubs))
  })
  if (clubs.length > MOST_CLUBS) {
    faults.push({
      code: 'MAR-PLAYER-008',
      message: `clubs lists ${clubs.length}: a bag holds ${MOST_CLUBS} and the putter (Rule 4.1b).`,
      field: 'clubs',
    })
  }
  faults.push(...shortGameFaults(file.shortGame))
  range(faults, 'putting.direction_sd_deg', file.putting.direction_sd_deg, 0.05, 20)
  range(faults, 'putting.distance_sd_share', file.putting.distance_sd_share, 0.001, 0.6)
  range(faults, 'putting.shots', file.putting.shots, 0, MOST_SHOTS)
  range(faults, 'shortGame.shots', file.shortGame.shots, 0, MOST_SHOTS)
  faults.push(...sentenceFaults(file.sentences ?? []))
  return faults
}

function shortGameFaults(shortGame: PlayerFile['shortGame']): readonly PlayerFault[] {
  const faults: PlayerFault[] = []
  for (const [number, least, most] of SHORT_GAME_RANGES)
    range(faults, `shortGame.${number}`, shortGame[number], least, most)
  for (const [club, roll] of Object.entries(shortGame.roll_per_carry ?? {})) {
    const field = `shortGame.roll_per_carry.${club}`
    const name = nameFault(club, field)
    if (name !== null) faults.push(name)
    range(faults, field, roll, ...ROLL_PER_CARRY_RANGE)
  }
  return faults
}

function clubFaults(club: ClubFile, index: number, clubs: readonly ClubFile[]): readonly PlayerFault[] {
  const at = (field: string): string => fieldName(['clubs', index, field])
  const faults: PlayerFault[] = []
  const name = nameFault(club.name, at('name'))
  if (name !== null) faults.push(name)
  if (clubs.findIndex((other) => other.name === club.name) < index) {
    faults.push({
      code: 'MAR-PLAYER-007',
      message: `${at('name')}: ${club.name} is listed twice.`,
      field: at('name'),
    })
  }
  for (const field of ['carry_m', 'total_m'] as const) {
    const metres = club[field]
    if (metres !== undefined && !(metres > 0)) {
      faults.push({
        code: 'MAR-PLAYER-010',
        message: `${at(field)} must be more than 0 metres, not ${metres}.`,
        field: at(field),
      })
    }
    if (metres !== undefined && metres > MOST_CARRY_METRES) {
      const message = `${at(field)} is ${metres} metres; more than ${MOST_CARRY_METRES} is taken for a slip. Distances here are metres.`
      faults.push({ code: 'MAR-PLAYER-011', message, field: at(field) })
    }
  }
  if (club.carry_m !== undefined && club.total_m !== undefined && club.total_m < club.carry_m) {
    const message = `${at('total_m')} (${club.total_m}) is shorter than the carry (${club.carry_m}): a stock shot on a level fairway does not come back.`
    faults.push({ code: 'MAR-PLAYER-012', message, field: at('total_m') })
  }
  for (const [field, least, most] of CLUB_RANGES) {
    const value = club[field]
    range(faults, at(field), typeof value === 'number' ? value : undefined, least, most)
  }
  for (const [lie, said] of Object.entries(club.lies)) {
    if (typeof said === 'object')
      for (const [factor, least, most] of [...LIE_FACTOR_RANGES, SHOTS_RANGE])
        range(faults, `${at('lies')}.${lie}.${factor}`, said[factor], least, most)
    if (seenLie(lie) !== null) continue
    const meant = nearestWord(lie, LIE_NAMES)
    const hint = meant === null ? `Known lies: ${LIE_NAMES.join(', ')}.` : `Did you mean ${meant}?`
    faults.push({
      code: 'MAR-PLAYER-014',
      message: `${at('lies')}: ${lie} is not a lie. ${hint}`,
      field: at('lies'),
    })
  }
  return faults
}

function nameFault(name: string, field: string): PlayerFault | null {
  if (clubKind(name) !== null) return null
  if (/putter/i.test(name)) {
    return {
      code: 'MAR-PLAYER-009',
      message: `${field}: the putter is not among the clubs; its spreads stand in "putting".`,
      field,
    }
  }
  const meant = meantClub(name)
  const hint =
    meant === null
      ? `Known: ${CLUB_KINDS.map((kind) => kind.name).join(', ')}, and wedges by loft such as 52-wedge.`
      : `Did you mean ${meant}?`
  return {
    code: 'MAR-PLAYER-006',
    message: `${field}: "${name}" is not a club known by name. ${hint}`,
    field,
  }
}

/** The club meant by another spelling, else the name that is nearest by its letters. */
function meantClub(name: string): string | null {
  const spelled = parseClubName(name)
  if (spelled.kind === 'club') return spelled.name
  return nearestWord(
    name,
    CLUB_KINDS.map((kind) => kind.name),
  )
}

function range(
  faults: PlayerFault[],
  field: string,
  value: number | undefined,
  least: number,
  most: number,
): void {
  if (value === undefined || (value >= least && value <= most)) return
  faults.push({
    code: 'MAR-PLAYER-013',
    message: `${field} must be from ${least} to ${most}, not ${value}.`,
    field,
  })
}
