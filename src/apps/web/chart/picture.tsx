import { type ReactElement, useEffect, useId, useRef } from 'react'
import type { Drawing } from '#paper/draw/drawing.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'

/** The page's own paints: they follow the theme and the printer. */
const PAGE_COLOURS = { ink: 'var(--ink)', paper: 'var(--paper)', spot: 'var(--spot)' } as const

/** A drawing on the page. A decoration is hidden from screen readers because something beside it says the same. */
export function Picture(props: {
  readonly drawing: Drawing
  readonly className?: string
  readonly isDecoration?: boolean
}): ReactElement {
  const { drawing, className, isDecoration = false } = props
  const place = useRef<HTMLDivElement>(null)
  const id = useId().replaceAll(/[^a-zA-Z0-9]/g, '')
  useEffect(() => {
    const text = renderSvg(drawing, { colours: PAGE_COLOURS, idPrefix: `p${id}`, hasPaper: false })
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement
    place.current?.replaceChildren(document.importNode(parsed, true))
  }, [drawing, id])
  return <div ref={place} className={className} aria-hidden={isDecoration || undefined} />
}
