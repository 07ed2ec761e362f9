import { type ComponentProps, type LazyExoticComponent, lazy, type ReactElement, Suspense } from 'react'
import type { FormatSection } from '../format/format-section.tsx'
import type { SideView } from '../ledger/side-view.tsx'
import type { LessonStrip } from '../lesson/lesson-strip.tsx'
import type { ReliefSection } from '../relief/relief-section.tsx'

/** Parts of the desk that its first screen does without: each comes when it is first shown. */

const Format: LazyExoticComponent<typeof FormatSection> = lazy(() =>
  import('../format/format-section.tsx').then((part) => ({ default: part.FormatSection })),
)
const Relief: LazyExoticComponent<typeof ReliefSection> = lazy(() =>
  import('../relief/relief-section.tsx').then((part) => ({ default: part.ReliefSection })),
)
const Side: LazyExoticComponent<typeof SideView> = lazy(() =>
  import('../ledger/side-view.tsx').then((part) => ({ default: part.SideView })),
)
const Lesson: LazyExoticComponent<typeof LessonStrip> = lazy(() =>
  import('../lesson/lesson-strip.tsx').then((part) => ({ default: part.LessonStrip })),
)

/** What the hole is played for. */
export function LaterFormat(props: ComponentProps<typeof FormatSection>): ReactElement {
  return (
    <Suspense fallback={null}>
      <Format {...props} />
    </Suspense>
  )
}

/** What the Rules give the ball. */
export function LaterRelief(props: ComponentProps<typeof ReliefSection>): ReactElement {
  return (
    <Suspense fallback={null}>
      <Relief {...props} />
    </Suspense>
  )
}

/** A short shot from the side, with the first ball near a green. */
export function LaterSideView(props: ComponentProps<typeof SideView>): ReactElement {
  return (
    <Suspense fallback={null}>
      <Side {...props} />
    </Suspense>
  )
}

/** The first lesson, when it is asked for. */
export function LaterLesson(props: ComponentProps<typeof LessonStrip>): ReactElement {
  return (
    <Suspense fallback={null}>
      <Lesson {...props} />
    </Suspense>
  )
}
