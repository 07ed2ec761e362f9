import { type Context, createContext, type ReactElement, useContext, useEffect, useId, useRef } from 'react'
import type { Drawing } from '#paper/draw/drawing.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'

/** The page's own paints: they follow the theme and the printer. */
const PAGE_COLOURS = { ink: 'var(--ink)', paper: 'var(--paper)', spot: 'var(--spot)' } as const

/** How drawings are engraved for this reader; for the printer as they are. */
export interface Engraving {
  /** How many times as heavy the lines of every drawing are. */
  readonly lineWeight: number
  /** How many times as large the figures of a chart are, whose place on the screen does not grow with the print. */
  readonly chartTypeScale: number
}

export const AS_DRAWN: Engraving = { lineWeight: 1, chartTypeScale: 1 }

export const EngravedFor: Context<Engraving> = createContext(AS_DRAWN)

interface PictureProps {
  readonly drawing: Drawing
  readonly className?: string
  readonly isDecoration?: boolean
}

/** A drawing on the page. A decoration is hidden from screen readers because something beside it says the same. */
export function Picture(props: PictureProps & { readonly typeScale?: number }): ReactElement {
  const { drawing, className, isDecoration = false, typeScale = 1 } = props
  const place = useRef<HTMLDivElement>(null)
  const { lineWeight } = useContext(EngravedFor)
  const id = useId().replaceAll(/[^a-zA-Z0-9]/g, '')
  useEffect(() => {
    const text = renderSvg(drawing, {
      colours: PAGE_COLOURS,
      idPrefix: `p${id}`,
      hasPaper: false,
      lineWeight,
      typeScale,
    })
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement
    place.current?.replaceChildren(document.importNode(parsed, true))
  }, [drawing, id, lineWeight, typeScale])
  return <div ref={place} className={className} aria-hidden={isDecoration || undefined} />
}

/** One layer of a chart, over all of it. */
export function ChartLayer({ className = '', ...props }: PictureProps): ReactElement {
  const { chartTypeScale } = useContext(EngravedFor)
  return <Picture {...props} className={`chart-layer ${className}`.trim()} typeScale={chartTypeScale} />
}
