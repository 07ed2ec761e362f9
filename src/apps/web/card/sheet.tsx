import type { ReactElement } from 'react'
import type { OwnSentence, SentenceReader } from '#golf/player/own-sentence.ts'
import { adviceWords } from '#paper/book/advice.ts'
import type { BookFacts } from '#paper/book/book-facts.ts'
import { adviceOf, type ChangedSentence } from '#paper/book/own-words.ts'
import type { RowPlace } from '#paper/book/page.ts'
import type { Paper } from '#paper/book/settings.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { SentenceEditor } from './sentence-editor.tsx'
import { SheetFrame } from './sheet-frame.tsx'
import type { Writing } from './use-writing.ts'

/** One sheet as it leaves the printer. Over the row of each hole lies a button that opens its sentences in their place. */
export function Sheet(props: {
  readonly drawing: Drawing
  readonly rows: readonly RowPlace[]
  readonly paper: Paper
  /** With every sentence as it is written now. */
  readonly facts: BookFacts
  readonly changed: readonly ChangedSentence[]
  readonly whose: SentenceReader
  readonly units: 'yards' | 'metres'
  readonly isOwn: (ref: string) => boolean
  readonly writing: Writing
  readonly onWrite: (sentence: OwnSentence, writing: number) => void
  readonly onDrop: (sentence: OwnSentence, writing: number) => void
}): ReactElement {
  const { drawing, rows, paper, facts, whose, writing } = props
  const { width, height } = drawing
  const across = (points: number): string => `${(100 * points) / width}%`
  const down = (points: number): string => `${(100 * points) / height}%`
  const changed = new Set(props.changed.map(({ sentence }) => sentence.hole))
  return (
    <SheetFrame drawing={drawing} paper={paper}>
      {rows.map((row) => {
        const one = facts.holes.find(({ hole }) => hole.ref === row.ref)
        if (one === undefined) return null
        const advice = adviceOf(whose, one, facts)
        const place = {
          left: across(row.left),
          top: down(row.top),
          width: across(row.width),
          height: down(row.height),
        }
        const mark = changed.has(row.ref) ? 'row-changed' : props.isOwn(row.ref) ? 'row-own' : ''
        return (
          <div key={row.ref}>
            <button
              type="button"
              className={`row-button ${mark}`.trim()}
              style={place}
              aria-expanded={writing.ref === row.ref}
              aria-label={`Hole ${row.ref}: ${[advice.club, adviceWords(advice)].filter((each) => each !== '').join(': ')} Write it anew`}
              onClick={() => (writing.ref === row.ref ? writing.end() : writing.begin(row.ref))}
            />
            {writing.ref === row.ref && (
              <SentenceEditor
                key={writing.number}
                one={one}
                facts={facts}
                whose={whose}
                units={props.units}
                style={{ left: across(row.left), top: down(row.top + row.height) }}
                onWrite={(sentence) => props.onWrite(sentence, writing.number)}
                onDrop={(sentence) => props.onDrop(sentence, writing.number)}
                onDone={writing.end}
              />
            )}
          </div>
        )
      })}
    </SheetFrame>
  )
}
