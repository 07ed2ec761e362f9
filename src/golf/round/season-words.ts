import { capital } from '#golf/strategy/capital.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import { QUICK_WORDS } from '#golf/strategy/rough-words.ts'
import type { Choosing } from './choosing.ts'
import type { PartResult, StruckPart } from './part-results.ts'
import type { SandPlace } from './sand-places.ts'
import type { Finding, Season } from './season.ts'
import type { SeasonChange } from './season-change.ts'
import { NAMED_STROKES } from './settings.ts'

/** A season, with what is told beside it. */
export interface ToldSeason {
  readonly season: Season
  /** Rounds whose day is not known: held against a calm, normal day. */
  readonly withoutDay: number
  readonly isQuick: boolean
  /** What changed against the season before, `null` where its rounds were not given. */
  readonly change: SeasonChange | null
}

/** Ways of choosing that are not the plan's. */
const CHOOSING_WORDS: Readonly<Record<Choosing, string>> = {
  'longer-from-tee': 'a longer club off the tee than the plan',
  'shorter-from-tee': 'a shorter club off the tee than the plan',
  'line-from-tee': 'another line off the tee than the plan',
  'longer-approach': 'more club on the way to the green than the plan',
  'shorter-approach': 'less club on the way to the green than the plan',
  'toward-flag': 'aiming nearer the flag than the plan',
  'away-from-flag': 'aiming further from the flag than the plan',
  'club-near-green': 'another club near the green than the plan',
}

const PART_WORDS: Readonly<Record<StruckPart, string>> = {
  tee: 'strokes off the tee',
  approach: 'strokes to the green',
  recovery: 'strokes out of trees and scrub',
  around: 'chips and pitches from grass',
  sand: 'strokes from sand',
  'holing-putts': 'holing the first putt',
  'three-putts': 'three-putts',
}

/** A way of choosing in words. */
export function choosingWords(way: Choosing): string {
  return CHOOSING_WORDS[way]
}

/** A part of the game in words. */
export function partWords(part: StruckPart): string {
  return PART_WORDS[part]
}

/** Strokes a round in a sentence: to a twentieth of a stroke, as everywhere in sentences. */
export function strokesARound(strokes: number): string {
  const size = Math.max(0.05, Math.round(Math.abs(strokes) * 20) / 20)
  return `${size.toFixed(2)} ${size > 1 ? 'strokes' : 'of a stroke'} a round`
}

/** What a finding costs, one sentence to the player. */
function findingWords(finding: Finding, season: Season): string {
  const cost = strokesARound(finding.strokesARound)
  if (finding.kind === 'choosing') {
    const { way, count } = finding.choosing
    return `${capital(CHOOSING_WORDS[way])} cost ${cost}, over ${count} strokes. That is a matter of choosing, not of striking.`
  }
  const { part } = finding.part
  const where = part === 'sand' ? sandWords(season) : ''
  return `${capital(PART_WORDS[part])}: ${cost} more than your profile lets expect. That is more than chance.${where}`
}

/** Where the sand lies that costs: only with enough strokes of both, else one of them is hearsay. */
function sandWords({ sand, rounds }: Season): string {
  if (sand.some(({ count }) => count < NAMED_STROKES)) return ''
  const told = sand.map(
    ({ where, count, strokes }) =>
      `${costText(Math.round((20 * strokes) / rounds) / 20)} a round ${SAND_WORDS[where]} (${count} strokes)`,
  )
  return ` Of it ${told.join(', ')}.`
}

const SAND_WORDS: Readonly<Record<SandPlace['where'], string>> = {
  'beside-green': 'beside the green',
  further: 'from further away',
}

/** The season as a player is told of it: the plan kept, what choices cost, what stands out, what got better. */
export function seasonWords(season: Season): string[] {
  const { rounds, judged, kept, decision, findings, gains } = season
  const count = rounds === 1 ? 'one round' : `${rounds} rounds`
  const keptWords =
    judged === 0
      ? 'No choice could be judged: the clubs were not logged.'
      : `In ${count} you kept to the plan, or to what is too close to it to call, in ${Math.floor((100 * kept) / judged)} of 100 choices.`
  const cost =
    judged === 0
      ? []
      : [
          decision < 0.025
            ? 'Your choices cost next to nothing.'
            : `Your choices cost ${strokesARound(decision)}.`,
        ]
  const named =
    findings.length === 0
      ? ['Nothing stands out that is more than chance.']
      : findings.slice(0, MOST_FINDINGS).map((finding) => findingWords(finding, season))
  return [keptWords, ...cost, ...named, ...gains.map((gain) => gainWords(gain, rounds))]
}

function gainWords({ part, strokes }: PartResult, rounds: number): string {
  return `${capital(PART_WORDS[part])}: ${strokesARound(strokes / rounds)} better than your profile says. Let the profile learn from these rounds.`
}

/** How the parts of the game were struck, in one sentence: what stands out most, or that nothing does. */
export function struckWords(season: Season): string {
  const { findings, gains, rounds } = season
  const [gain] = gains
  const finding = findings.find(({ kind }) => kind === 'part')
  if (finding !== undefined) return findingWords(finding, season)
  return gain === undefined
    ? 'How each part of the game was struck: nothing stands out that is more than chance.'
    : gainWords(gain, rounds)
}

const MOST_FINDINGS = 3

/** Where no choice departed from the plan. */
export const ALL_AS_PLANNED = 'Every choice that can be judged was the plan’s.'

/** What a season was held against, and how its words are to be taken. */
export function seasonBasis({ withoutDay, isQuick, change }: Omit<ToldSeason, 'season'>): string[] {
  return [
    ...(withoutDay > 0
      ? [
          `${withoutDay} of the rounds${change === null ? '' : ' of both seasons'} have no day file of their date: they are held against the plan for a calm, normal day.`,
        ]
      : []),
    ...(isQuick ? [QUICK_WORDS] : []),
    'A part stands out when even the low end of its interval is a loss: of players whose profile is right, one in twenty is told of one.',
    ...(change === null
      ? []
      : [
          'Both seasons are held against the same profile; of players who did not change one in twenty is told of a change.',
        ]),
  ]
}
