import type { ComponentProps, ReactElement } from 'react'
import type { FormatSection } from '../format/format-section.tsx'
import type { SideView } from '../ledger/side-view.tsx'
import type { LessonStrip } from '../lesson/lesson-strip.tsx'
import type { ReliefSection } from '../relief/relief-section.tsx'
import { LatePart } from './late-part.tsx'

/** Parts of the desk that its first screen does without: each comes when it is first shown. */

const loadFormat = async () => (await import('../format/format-section.tsx')).FormatSection
const loadRelief = async () => (await import('../relief/relief-section.tsx')).ReliefSection
const loadSide = async () => (await import('../ledger/side-view.tsx')).SideView
const loadLesson = async () => (await import('../lesson/lesson-strip.tsx')).LessonStrip

/** What the hole is played for. */
export function LaterFormat(props: ComponentProps<typeof FormatSection>): ReactElement {
  return <LatePart what="what the hole is played for" load={loadFormat} show={props} />
}

/** What the Rules give the ball. */
export function LaterRelief(props: ComponentProps<typeof ReliefSection>): ReactElement {
  return <LatePart what="what the Rules give" load={loadRelief} show={props} />
}

/** A short shot from the side, with the first ball near a green. */
export function LaterSideView(props: ComponentProps<typeof SideView>): ReactElement {
  return <LatePart what="the shot from the side" load={loadSide} show={props} />
}

/** The first lesson, when it is asked for. */
export function LaterLesson(props: ComponentProps<typeof LessonStrip>): ReactElement {
  return <LatePart what="the lesson" load={loadLesson} show={props} />
}
