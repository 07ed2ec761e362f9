import { type RefObject, useLayoutEffect, useState } from 'react'

/** Size of an element in whole tens of CSS pixels, so that a drawing is not made anew for every pixel. */
export function useSize(element: RefObject<HTMLElement | null>): { width: number; height: number } | null {
  const [size, setSize] = useState<{ width: number; height: number } | null>(null)
  useLayoutEffect(() => {
    const watched = element.current
    if (watched === null) return
    const measure = (): void => {
      const width = Math.floor(watched.clientWidth / 10) * 10
      const height = Math.floor(watched.clientHeight / 10) * 10
      setSize((before) => (before?.width === width && before.height === height ? before : { width, height }))
    }
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(watched)
    return () => observer.disconnect()
  }, [element])
  return size
}
