import type { ReactElement } from 'react'

/** Says what is waited for; shown only when the wait is long enough to be noticed. */
export function WaitingFor(props: { readonly what: string }): ReactElement {
  return (
    <p className="waiting-for" role="status">
      Fetching {props.what}.
    </p>
  )
}
