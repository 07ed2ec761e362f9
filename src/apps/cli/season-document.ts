import type { Finding } from '#golf/round/season.ts'
import { seasonChangeWords } from '#golf/round/season-change-words.ts'
import { seasonWords } from '#golf/round/season-words.ts'
import type { SeasonReport } from './season-command.ts'

/** `season/1`: rounds taken together; strokes a round, positive where more were used than the plan expects. */
export function seasonDocument({
  course,
  player,
  season,
  change,
  withoutDay,
  isQuick,
  faults,
}: SeasonReport): object {
  const { rounds, holes, over, decision, execution, luck, judged, kept } = season
  const aRound = (strokes: number): number => strokes / Math.max(1, rounds)
  const part = ({
    part: name,
    count,
    strokes,
    mean,
    sd,
    low,
    high,
  }: (typeof season.parts)[number]): object => ({
    part: name,
    count,
    strokes_a_round: aRound(strokes),
    low: aRound(low),
    high: aRound(high),
    mean,
    sd,
  })
  return {
    schema: 'season/1',
    course,
    player,
    rounds,
    holes,
    without_day: withoutDay,
    quick: isQuick,
    over,
    decision,
    execution,
    luck,
    choices: { judged, kept },
    choosing: season.choosing.map(({ way, count, strokes }) => ({
      way,
      count,
      strokes_a_round: aRound(strokes),
    })),
    parts: season.parts.map(part),
    sand: season.sand.map(({ where, count, strokes }) => ({
      where,
      count,
      strokes_a_round: aRound(strokes),
    })),
    findings: season.findings.map((finding) => ({
      kind: finding.kind,
      what: nameOf(finding),
      strokes_a_round: finding.strokesARound,
    })),
    gains: season.gains.map(part),
    ...(change === null
      ? {}
      : {
          change: {
            rounds_before: change.roundsBefore,
            changes: change.changes.map(({ low, high, ...one }) => ({
              ...one,
              ...(one.verdict === 'few' ? { low: null, high: null } : { low, high }),
            })),
          },
        }),
    sentences: [...seasonWords(season), ...(change === null ? [] : seasonChangeWords(change))],
    faults,
  }
}

function nameOf(finding: Finding): string {
  return finding.kind === 'choosing' ? finding.choosing.way : finding.part.part
}
