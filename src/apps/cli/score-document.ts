import { matchWords } from '#golf/rules/match-state.ts'
import type { ScoreAnswer } from './score-command.ts'

/** `score/1`: strokes, points, or +1, 0 and −1 against par; `null` where a ball has no score. */
export function scoreDocument({ course, competition, card, faults }: ScoreAnswer): object {
  const { play, by, limit } = competition
  return {
    schema: 'score/1',
    course,
    play,
    by,
    maximum: by === 'maximum' ? limit : null,
    allowance_percent: card.allowance,
    sides: card.sides.map(({ balls, holes, total }) => ({
      balls: balls.map((ball) => ({
        players: ball.players.map(({ name }) => name),
        tee: ball.tee,
        playing_handicap: ball.playingHandicap,
        received: ball.received,
        holes: ball.holes.map(({ ref, par, strokeIndex, gross, received, counts }) => ({
          ref,
          par,
          stroke_index: strokeIndex,
          gross,
          received,
          counts,
        })),
      })),
      holes: holes.map(({ ref, counts, by: of }) => ({ ref, counts, balls: of })),
      total,
    })),
    match: card.match && { ...card.match, words: matchWords(card.match) },
    faults,
  }
}
