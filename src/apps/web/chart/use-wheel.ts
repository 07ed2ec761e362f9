import { type RefObject, useEffect, useRef } from 'react'
import type { ChartSight } from './use-chart-view.ts'

/** A wheel with the control key, which is also what two fingers on a touch pad send, enlarges about the pointer; without it the page scrolls. */
export function useWheel(place: RefObject<HTMLElement | null>, sight: ChartSight | null): void {
  const latest = useRef(sight)
  latest.current = sight
  useEffect(() => {
    const element = place.current
    if (element === null) return
    const onWheel = (event: WheelEvent): void => {
      if (!event.ctrlKey && !event.metaKey) return
      event.preventDefault()
      const box = element.getBoundingClientRect()
      latest.current?.enlarge(Math.exp(-event.deltaY / PIXELS_PER_E), [
        event.clientX - box.left,
        event.clientY - box.top,
      ])
    }
    element.addEventListener('wheel', onWheel, { passive: false })
    return () => element.removeEventListener('wheel', onWheel)
  }, [place])
}

/** A wheel that turns so many pixels enlarges e times. */
const PIXELS_PER_E = 300
