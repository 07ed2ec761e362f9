import type { ReactElement } from 'react'

/** Sentences, a line each; what stands twice is said once. */
export function Lines({ of }: { readonly of: readonly string[] }): ReactElement {
  return (
    <ul className="after-lines">
      {[...new Set(of)].map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}
