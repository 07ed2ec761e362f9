import type { ReactElement } from 'react'
import type { Trouble } from '../planning/questions.ts'

/** What went wrong, in words, with its code and place. */
export function TroubleNote(props: { readonly trouble: Trouble }): ReactElement {
  const { code, message, where } = props.trouble
  return (
    <div className="trouble" role="alert">
      <p>{message}</p>
      <p className="trouble-code">{[code, where].filter((part) => part !== '').join(' · ')}</p>
    </div>
  )
}
