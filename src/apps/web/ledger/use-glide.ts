import { type RefObject, useLayoutEffect, useRef } from 'react'
import { DESK_SETTINGS } from '../settings.ts'

/**
 * Lets the rows of a list glide from where they were to where they are now, each known by its `data-row`. A row on its way
 * goes on from where it is seen. Nothing moves for a reader who likes it still.
 */
export function useGlide(list: RefObject<HTMLElement | null>, order: readonly string[]): void {
  const tops = useRef<ReadonlyMap<string, number>>(new Map())
  const names = order.join('\n')
  // biome-ignore lint/correctness/useExhaustiveDependencies: rows lie elsewhere only when their order is another
  useLayoutEffect(() => {
    const rows = [...(list.current?.querySelectorAll<HTMLElement>('[data-row]') ?? [])]
    const before = tops.current
    tops.current = new Map(rows.map((row) => [row.dataset.row ?? '', row.offsetTop]))
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return
    for (const row of rows) {
      const top = before.get(row.dataset.row ?? '')
      const by = top === undefined ? 0 : top + seenAway(row) - row.offsetTop
      if (Math.abs(by) >= 1)
        row.animate([{ transform: `translateY(${by}px)` }, { transform: 'none' }], {
          duration: DESK_SETTINGS.glideMilliseconds,
          easing: 'ease-out',
        })
    }
  }, [list, names])
}

/** How far from its place a row is seen while it is on its way, CSS pixels. */
function seenAway(row: HTMLElement): number {
  const { transform } = getComputedStyle(row)
  return transform === 'none' ? 0 : new DOMMatrixReadOnly(transform).f
}
