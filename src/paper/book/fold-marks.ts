import type { Shape } from '../draw/drawing.ts'
import { FOLD_MARK, RULE } from './settings.ts'

/** Short lines at the edges where a sheet is folded in half both ways: twice folded it fits a pocket. */
export function foldMarks(width: number, height: number): Shape[] {
  const [x, y, mark] = [width / 2, height / 2, FOLD_MARK]
  return [
    {
      kind: 'path',
      steps: [
        ['M', x, 0],
        ['L', x, mark],
        ['M', x, height - mark],
        ['L', x, height],
        ['M', 0, y],
        ['L', mark, y],
        ['M', width - mark, y],
        ['L', width, y],
      ],
      stroke: { paint: 'ink', width: RULE.fine, dash: [3, 2] },
    },
  ]
}
