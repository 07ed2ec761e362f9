import { capital } from '#golf/strategy/capital.ts'
import type { Choosing } from './choosing.ts'
import type { StruckPart } from './part-results.ts'
import type { Finding, Season } from './season.ts'

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
  sand: 'sand beside the green',
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
export function findingWords(finding: Finding): string {
  const cost = strokesARound(finding.strokesARound)
  if (finding.kind === 'choosing') {
    const { way, count } = finding.choosing
    return `${capital(CHOOSING_WORDS[way])} cost ${cost}, over ${count} strokes. That is a matter of choosing, not of striking.`
  }
  return `${capital(PART_WORDS[finding.part.part])}: ${cost} more than your profile lets expect. That is more than chance.`
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
      : findings.slice(0, MOST_FINDINGS).map(findingWords)
  const better = gains.map(
    ({ part, strokes }) =>
      `${capital(PART_WORDS[part])}: ${strokesARound(strokes / rounds)} better than your profile says. Let the profile learn from these rounds.`,
  )
  return [keptWords, ...cost, ...named, ...better]
}

const MOST_FINDINGS = 3
