import { type LazyExoticComponent, lazy, type ReactElement, Suspense, useState } from 'react'
import type { Reader } from '../desk/desk.ts'
import { Section } from '../ledger/section.tsx'
import type { Situation } from '../planning/use-planning.ts'
import type { GoingCurves } from './going-curves.tsx'

const Curves: LazyExoticComponent<typeof GoingCurves> = lazy(() =>
  import('./going-curves.tsx').then((part) => ({ default: part.GoingCurves })),
)

/** Go or lay up along the hole; worked out only when it is asked for, since it takes as long as a plan. */
export function GoingSection(props: {
  readonly situation: Situation
  readonly reader: Reader
}): ReactElement {
  const [isOpen, setOpen] = useState(false)
  return (
    <Section title="Go or lay up" className="going">
      <button type="button" className="quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {isOpen ? 'Put the curves away' : 'Draw both as curves'}
      </button>
      {isOpen && (
        <Suspense fallback={<p className="silent">Reckoning.</p>}>
          <Curves {...props} />
        </Suspense>
      )}
    </Section>
  )
}
