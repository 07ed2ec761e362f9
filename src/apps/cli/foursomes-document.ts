import type { Foursome } from './foursomes-command.ts'

/** The answer as `foursomes/1`. Strokes; shares of nothing. */
export function foursomesDocument(
  { course, names, holes, split }: Foursome,
  left: readonly { readonly hole: string; readonly message: string }[],
  file: string | undefined,
): object {
  return {
    schema: 'foursomes/1',
    course: course.name,
    players: names,
    odd_tees: names[split.odd],
    strokes: split.strokes,
    otherwise: split.otherwise,
    matters: split.matters,
    holes: holes.map(({ hole, turns }, index) => ({
      ref: hole.ref,
      par: hole.par,
      length_m: hole.lengthMetres,
      turns: turns.map(({ strokes, best, hazard }) => ({
        strokes,
        club: best.shot.club,
        avoid: hazard === null ? null : { what: hazard.area.name ?? hazard.area.ground, side: hazard.side },
      })),
      saves: split.saves[index],
      matters: split.hasSay[index],
    })),
    left_out: left,
    ...(file === undefined ? {} : { file }),
  }
}
