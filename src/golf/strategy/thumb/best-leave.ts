import { TOO_CLOSE_STROKES } from '../settings.ts'
import type { BestLeave } from '../thumb.ts'

/** What to leave, from expected strokes by what is left, far to near: nearer is better but where the list says so. */
export function bestLeave(strokes: BestLeave['strokes']): BestLeave {
  return {
    strokes,
    worseThanLonger: strokes.flatMap((here, index) => {
      const longer = strokes
        .slice(0, index)
        .reduce<typeof here | null>(
          (least, one) => (least && least.strokes < one.strokes ? least : one),
          null,
        )
      const cost = longer ? here.strokes - longer.strokes : 0
      return longer && cost >= TOO_CLOSE_STROKES
        ? [{ leave_m: here.leave_m, longer_m: longer.leave_m, cost }]
        : []
    }),
  }
}
