import type { ReactElement, ReactNode } from 'react'
import type { Paper } from '#paper/book/settings.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { Picture } from '../chart/picture.tsx'

/** One sheet as it leaves the printer, and what lies over it. */
export function SheetFrame(props: {
  readonly drawing: Drawing
  readonly paper: Paper
  readonly children?: ReactNode
}): ReactElement {
  const { drawing, paper, children } = props
  const { width, height, title } = drawing
  return (
    // A sheet wider than the screen is carried sideways within its own frame.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it is carried by keys too (WCAG 2.2, 2.1.1).
    <section className="sheet-frame" aria-label={title} tabIndex={0}>
      <div
        className="sheet"
        data-page={`${paper}-${width > height ? 'wide' : 'tall'}`}
        style={{ minWidth: width, aspectRatio: `${width} / ${height}` }}
      >
        <Picture drawing={drawing} className="sheet-picture" />
        {children}
      </div>
    </section>
  )
}
