import type { Ground } from '#golf/course/ground.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { HoleDrawingOptions } from './hole-drawing-options.ts'
import { rulerOf } from './ruler.ts'

const WORDS: Readonly<Partial<Record<Ground, string>>> = {
  bunker: 'sand',
  'penalty-red': 'red penalty areas',
  'penalty-yellow': 'yellow penalty areas',
  trees: 'trees',
  scrub: 'scrub',
  heavy: 'heavy grass',
  out: 'out of bounds',
}

/** The hole and its marks in sentences, for people who cannot see the drawing. */
export function describeHole(hole: Hole, options: HoleDrawingOptions): string {
  const ruler = rulerOf(options.units)
  const grounds = new Set(hole.areas.map((area) => area.ground))
  const seen = Object.entries(WORDS).flatMap(([ground, word]) =>
    grounds.has(ground as Ground) ? [word] : [],
  )
  const sentences = [
    `Par ${hole.par}, ${ruler.figure(hole.lengthMetres)} ${ruler.word}, drawn to scale with the tee at the bottom.`,
  ]
  if (seen.length > 0) sentences.push(`The survey shows ${seen.join(', ')}.`)
  if (hole.greenFallPercent > 0.05)
    sentences.push(`The green falls ${hole.greenFallPercent.toFixed(1)} per cent.`)
  const { aim, pattern } = options
  const whose = options.playerName === undefined ? '' : ` of ${options.playerName}`
  if (pattern !== undefined)
    sentences.push(
      `The marks${whose} show where the ${pattern.club} finishes: half of the shots inside the inner line, nine in ten inside the outer.`,
    )
  if (aim !== undefined) {
    const offset = Math.round((aim.atMetres * Math.sin((aim.headingDegrees * Math.PI) / 180)) / ruler.metres)
    const side =
      offset === 0
        ? 'straight up the first leg'
        : `${Math.abs(offset)} ${ruler.word} ${offset < 0 ? 'left' : 'right'} of the first leg`
    sentences.push(`The aim is ${side} at ${ruler.figure(aim.atMetres)} ${ruler.word}.`)
  }
  return sentences.join(' ')
}
