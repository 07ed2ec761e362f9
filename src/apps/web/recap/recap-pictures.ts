import type { RoundRecap } from '#golf/round/recap-round.ts'
import { recapWaterfall } from '#paper/book/recap-facts.ts'
import { drawWaterfall } from '#paper/draw/draw-waterfall.ts'
import type { WallPicture } from '../wall/wall.tsx'

/** A drawing fills the wall, so a small sheet is large type. */
const WIDTH = 340

/** A round for the wall: first what kind of thing made the score, then which part of the game. */
export function recapPictures(recap: RoundRecap): readonly WallPicture[] {
  const { value, decision, execution, luck, score } = recap
  const steps = [
    { name: 'choices', strokes: decision },
    { name: 'how it was struck', strokes: execution },
    { name: 'luck', strokes: luck },
  ]
  return [
    {
      words: 'From plan to score: what was chosen, how it was struck, and luck.',
      picture: drawWaterfall({ expected: value, steps, score }, WIDTH),
    },
    {
      words: 'The same with each part of the game by itself.',
      picture: drawWaterfall(recapWaterfall(recap), WIDTH),
    },
  ]
}
